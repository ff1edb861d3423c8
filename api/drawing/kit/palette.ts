/** Names the inks of charts, which differ clearly in lightness for readers who see no colours. */

export const INKS = {
  /** Text, frames, entered points. */
  ink: '#1d2433',
  /** The pump. */
  deep: '#1c3f7c',
  /** The system, what is needed, what falls short. */
  rust: '#a8481a',
  /** What else is drawn. */
  sea: '#2c8f86',
  /** Fills behind the others. */
  haze: '#c9d6e8',
  /** Ticks' names and notes. */
  slate: '#4a5364',
  /** Lines to read figures off. */
  grid: '#dfe3ea',
  paper: '#ffffff',
} as const;

export type Ink = keyof typeof INKS;

/** How a line is drawn; dashes in px. */
export interface LineStyle {
  readonly ink: Ink;
  readonly width: number;
  readonly dash?: string;
}
