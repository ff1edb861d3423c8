/** Where the baseline of a loop may begin, as far as it is stored. */
import type { Missing } from '../../store/versions.ts';

/** Instants [ms]; null: there was none. */
export interface BaselineStart {
  /** As a caller requested. */
  readonly requestedFrom: number | null;
  /** When pipework, pump or its points last changed, after readings had been taken. */
  readonly changedAt: number | null;
}

export interface BaselineOperations {
  get(loop: string): Promise<BaselineStart>;
  /** `from` null: nothing is requested any more. */
  request(request: {
    readonly loop: string;
    readonly from: number | null;
  }): Promise<{ readonly outcome: 'written' } | Missing>;
}

export type CopiedBaseline = BaselineStart & { readonly loop: string };
