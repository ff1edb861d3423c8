/** A kind of question, of which as many are asked as it says. */
import type { Asker } from './asker.ts';

/** How one question of a kind is known. */
export interface Numbered {
  /** From 0. */
  readonly place: number;
  /** Begins the labels of its lines. */
  readonly label: string;
}

export interface Kind {
  readonly name: string;
  readonly count: number;
  /** Whether one application answers all of them, which leave nothing in it. */
  readonly isShared: boolean;
  readonly ask: (asker: Asker, numbered: Numbered) => Promise<void>;
}
