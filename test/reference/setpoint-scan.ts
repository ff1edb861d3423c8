/** The setpoint where nothing is feasible, and the fallback over phases, by tables of every setting. */
export interface Row {
  readonly setting: number;
  readonly movesWater: boolean;
  /** [m3/s] */
  readonly flow: number;
  /** By outlet [m3/s]. */
  readonly outletFlows: readonly number[];
  /** Reasons of the conditions that the setting does not meet. */
  readonly broken: ReadonlySet<string>;
}

const ANIMALS = ['outlet-above-maximum', 'screen-velocity'];
const PUMP = ['pump-above-maximum', 'npsh'];
/** In the order in which answers give reasons. */
const UPPER = [...ANIMALS, ...PUMP];

/** Of a selection; NPSH is not enforced. */
const CONDITIONS = [
  'efficiency-impossible',
  'not-enough-head',
  'outside-data',
  'outlet-above-maximum',
  'screen-velocity',
  'pump-below-minimum',
  'pump-above-maximum',
];

export type Scanned =
  | { readonly feasible: true; readonly setting: number }
  | {
      readonly feasible: false;
      readonly setting: number;
      readonly reason: string;
      readonly step: number;
      readonly limitedBy: readonly string[];
    };

const keeps = (row: Row, limits: readonly string[]): boolean =>
  !row.movesWater || limits.every((limit) => !row.broken.has(limit));

/** Rows that count: those that move water, where any does. */
const counted = (rows: readonly Row[]): readonly Row[] => {
  const moving = rows.filter(({ movesWater }) => movesWater);
  return moving.length > 0 ? moving : rows;
};

/** The rule in the words of its four steps; `rows` by rising setting. */
export function scanned(rows: readonly Row[]): Scanned {
  const first = rows.find(({ broken }) => CONDITIONS.every((reason) => !broken.has(reason)));
  if (first !== undefined) return { feasible: true, setting: first.setting };
  const reason = CONDITIONS.find((one) => rows.every(({ broken }) => broken.has(one))) ?? 'no-setting';
  const candidates = counted(rows);
  const served = candidates.filter((row) => row.movesWater && !row.broken.has('not-enough-head'));
  const chosen: readonly (readonly [number, Row | undefined])[] = [
    [1, served.find((row) => keeps(row, UPPER))],
    [2, candidates.findLast((row) => keeps(row, UPPER))],
    [3, served.find((row) => keeps(row, ANIMALS))],
    [4, candidates.findLast((row) => keeps(row, ANIMALS))],
    [4, candidates[0]],
  ];
  const [step, row] = chosen.find(([, found]) => found !== undefined) ?? [];
  if (step === undefined || row === undefined) throw new Error('no settings');
  const next = rows[rows.indexOf(row) + 1];
  const limitedBy = next === undefined ? [] : UPPER.filter((limit) => !keeps(next, [limit]));
  return { feasible: false, setting: row.setting, reason, step, limitedBy };
}

/** A phase as the fallback sees it. */
export interface ScannedPhase {
  readonly name: string;
  readonly rows: readonly Row[];
  /** Its own settings, both of a pulse. */
  readonly own: readonly number[];
  /** Whether a setting gives what the phase requires. */
  readonly isMet: (setting: number) => boolean;
}

export interface ScannedFallback {
  readonly setting: number;
  readonly requiredFlowsMet: boolean;
  readonly phasesBelowRequired: readonly string[];
}

const rowAt = ({ rows }: ScannedPhase, setting: number): Row => {
  const row = rows.find((one) => one.setting === setting);
  if (row === undefined) throw new Error(`${setting} is not on the grid`);
  return row;
};

/** The limits that some setting of a phase keeps. */
const keepable = ({ rows }: ScannedPhase): readonly string[] =>
  UPPER.filter((limit) => counted(rows).some((row) => keeps(row, [limit])));

export function scannedFallback(phases: readonly ScannedPhase[]): ScannedFallback {
  const highest = Math.max(...phases.flatMap(({ own }) => own));
  const settings = (phases[0]?.rows ?? []).map(({ setting }) => setting);
  const breaksNone = (setting: number) =>
    phases.every((phase) => keeps(rowAt(phase, setting), keepable(phase)));
  const moves = (setting: number) =>
    phases.every(
      (phase) => rowAt(phase, setting).movesWater || phase.own.every((own) => !rowAt(phase, own).movesWater),
    );
  const setting = breaksNone(highest)
    ? highest
    : (settings.findLast((one) => one < highest && breaksNone(one) && moves(one)) ??
      settings.find(moves) ??
      Math.min(...settings));
  const below = phases.filter(({ isMet }) => !isMet(setting)).map(({ name }) => name);
  return { setting, requiredFlowsMet: below.length === 0, phasesBelowRequired: below };
}
