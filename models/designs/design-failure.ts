/** Names what can be wrong with the question for a design. */
import type { DocumentPath } from '../loop/document-path.ts';
import type { LoopFailure } from '../network/compiled-loop.ts';
import type { Unsolved } from '../network/solve-failure.ts';

/** `path` is in the document of the loop; limit and actual are counts [-]. */
export type DesignFailure =
  | LoopFailure
  | Unsolved
  | { readonly code: 'too-many-runs'; readonly limit: number; readonly actual: number }
  | { readonly code: 'too-many-candidates'; readonly limit: number; readonly actual: number }
  /** A candidate size that the list of prices lacks. */
  | { readonly code: 'no-pipe-price'; readonly path: DocumentPath }
  | { readonly code: 'requirement-missing'; readonly path: DocumentPath; readonly outlet: string }
  /** A reach without a nozzle, whose flow would follow from the size that is to be chosen. */
  | { readonly code: 'requirement-by-size'; readonly path: DocumentPath; readonly outlet: string }
  /** No outlet requires a flow above 0. */
  | { readonly code: 'no-requirement' }
  /** A valve is shut before an outlet that requires a flow. */
  | { readonly code: 'outlet-shut-off'; readonly path: DocumentPath; readonly outlet: string };
