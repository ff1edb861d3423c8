/** Declares the part of the package highs that is used here, since its own types are those of another module than Node loads. */
declare module 'highs' {
  export interface ModelData {
    readonly numCols: number;
    readonly numRows: number;
    readonly sense: 1 | -1;
    readonly colCost: readonly number[];
    readonly colLower: readonly number[];
    readonly colUpper: readonly number[];
    readonly integrality: readonly number[];
    readonly rowLower: readonly number[];
    readonly rowUpper: readonly number[];
    readonly matrix: {
      readonly format: 'csr';
      readonly numRows: number;
      readonly numCols: number;
      readonly starts: readonly number[];
      readonly indices: readonly number[];
      readonly values: readonly number[];
    };
  }

  export interface Model {
    readonly options: { set(values: Readonly<Record<string, boolean | number | string>>): unknown };
    readonly info: { get(name: string): number | bigint };
    setSolution(solution: { readonly colValue: readonly number[] }): unknown;
    /** Holds the thread until it is done. */
    run(): { readonly modelStatus: number };
    getSolution(): { readonly colValue: Float64Array };
  }

  export interface Highs {
    readonly infinity: number;
    readonly constants: {
      readonly objectiveSense: { readonly maximize: 1 | -1 };
      readonly variableType: { readonly integer: number };
    };
    /** The model is released when the operation has ended. */
    withModel<Result>(source: ModelData, operation: (model: Model) => Result): Result;
  }

  export default function loadHighs(): Promise<Highs>;
}
