/** Finds the next larger size of a pipe's own series. */
import { PIPE_SIZES, type PipeSize, seriesOf } from './pipe-sizes.ts';

/**
 * The next larger size of the series that a pipe name belongs to; null for the largest of a series and for a name
 * that the table does not have.
 */
export function largerPipe(name: string): PipeSize | null {
  const series = PIPE_SIZES.filter((size) => seriesOf(size.name) === seriesOf(name));
  const place = series.findIndex((size) => size.name === name);
  return place < 0 ? null : (series[place + 1] ?? null);
}
