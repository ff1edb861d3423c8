/** Declares the part of ml-regression 6.3.0 that is in use, since the package carries no types of its own. */
declare module 'ml-regression' {
  export class MultivariateLinearRegression {
    constructor(
      rows: number[][],
      values: number[][],
      options: { readonly intercept: boolean; readonly statistics: boolean },
    );
    /** One row a column of the input, one entry a column of the values. */
    readonly weights: number[][];
  }
}
