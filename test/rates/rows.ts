/** All rows of the table of rates, by their subject. */
import { calibrationRows } from './calibration-rows.ts';
import { causeRows, detectionRows, meterRows } from './fault-rows.ts';
import { healthyRows } from './healthy-rows.ts';
import { shortfallRows, waitingRows } from './outlook-rows.ts';
import type { RateRow, Size } from './row.ts';
import { cleaningRows, entriesRows, nextReadingRows, stoppedRows } from './service-rows.ts';

export interface Subject {
  readonly name: string;
  readonly rows: (size: Size) => readonly RateRow[];
  /** Loops a row; fewer where a row looks at each of them many times. */
  readonly loops: number;
}

export const SUBJECTS: readonly Subject[] = [
  { name: 'Healthy loops reported in a year', rows: healthyRows, loops: 60 },
  { name: 'Clogs found', rows: detectionRows, loops: 60 },
  { name: 'Causes', rows: causeRows, loops: 30 },
  { name: 'Meters that drift', rows: meterRows, loops: 20 },
  { name: 'Calibration', rows: calibrationRows, loops: 60 },
  { name: 'Shortfall', rows: shortfallRows, loops: 20 },
  { name: 'Waiting', rows: waitingRows, loops: 20 },
  { name: 'Cleanings', rows: cleaningRows, loops: 40 },
  { name: 'Stopped pumps', rows: stoppedRows, loops: 40 },
  { name: 'Next reading', rows: nextReadingRows, loops: 20 },
  { name: 'Entries', rows: entriesRows, loops: 40 },
];
