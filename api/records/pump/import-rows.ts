/** Makes pumps of the rows of a table, several rows a pump. */

import { failed, type Result, success } from '../../../curves/result.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { PumpFit } from '../../../models/pump/pump-model.ts';
import { FULL_SETTING } from '../../fields/full-setting.ts';
import { enteredKey } from '../../fields/key-field.ts';
import { FAULTS_MAX, LIST_MAX } from '../../fields/limits.ts';
import { withLine } from '../../http/csv-body.ts';
import { csvColumns } from '../../http/csv-columns.ts';
import { type CsvColumns, type CsvRows, GIVEN_COLUMNS } from '../../http/csv-rows.ts';
import { bodyErrors } from '../../http/issue-errors.ts';
import { invalidRequest, type Problem, type ProblemError, problem } from '../../http/problem.ts';
import { pauseAfter } from '../../threads/pause.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { fitPumpOrProblem } from './fit.ts';
import { pumpInput } from './schema.ts';

/** Of all pumps in one table. */
export const PUMP_ROWS_MAX = 5_000;

const ONE = { required: false } as const;

const COLUMNS = csvColumns(pumpInput, {
  name: { required: true, isText: true },
  key: { required: false, isText: true },
  flow: { ...ONE, at: 'headPoints.flow' },
  head: { ...ONE, at: 'headPoints.head' },
  setting: { ...ONE, at: 'headPoints.setting' },
  power: { ...ONE, at: 'powerPoints.power' },
  standbyPower: ONE,
  settingMin: { ...ONE, at: 'settings.min' },
  settingMax: { ...ONE, at: 'settings.max' },
  settingStep: { ...ONE, at: 'settings.step' },
  ratedSpeed: ONE,
  price: ONE,
  expectedLifeYears: ONE,
});

/** Those that the service gives are taken from its own list and ignored, as in a body in JSON. */
export const PUMP_COLUMNS: CsvColumns = { ...COLUMNS, ...GIVEN_COLUMNS };

type Column = keyof typeof COLUMNS;

/** Columns of the pump itself: any of its rows may state them, all alike. */
const ONCE = [
  'key',
  'standbyPower',
  'settingMin',
  'settingMax',
  'settingStep',
  'ratedSpeed',
  'price',
  'expectedLifeYears',
] as const satisfies readonly Column[];

type Row = Readonly<Partial<Record<string, number | string>>>;

interface PlacedRow {
  readonly row: Row;
  readonly place: number;
}

export interface FittedPump {
  readonly document: Pump;
  readonly fit: PumpFit;
  readonly key: string | null | undefined;
  /** Of the first of its rows that state a key. */
  readonly keyPlace: number;
}

function byName(rows: readonly Row[]): readonly (readonly PlacedRow[])[] {
  const groups = new Map<string, PlacedRow[]>();
  for (const [place, row] of rows.entries()) {
    const name = String(row.name ?? '');
    const group = groups.get(name) ?? [];
    group.push({ row, place });
    groups.set(name, group);
  }
  return [...groups.values()];
}

function rowFault({ row, place }: PlacedRow): ProblemError | undefined {
  if (row.name === undefined) return { pointer: `/${place}/name`, detail: 'is required' };
  if (row.head !== undefined && row.flow === undefined)
    return { pointer: `/${place}/flow`, detail: 'is required beside head' };
  const saysSomething = [row.head, row.power, ...ONCE.map((column) => row[column])].some(
    (value) => value !== undefined,
  );
  return saysSomething ? undefined : { pointer: `/${place}`, detail: 'has neither head nor power' };
}

/** What the pump itself is said to be, and the places of rows that say otherwise. */
function statedOnce(group: readonly PlacedRow[]) {
  const stated = new Map<string, PlacedRow>();
  const faults: ProblemError[] = [];
  for (const column of ONCE) {
    for (const placed of group) {
      const value = placed.row[column];
      if (value === undefined) continue;
      const first = stated.get(column) ?? placed;
      stated.set(column, first);
      if (first.row[column] !== value)
        faults.push({
          pointer: `/${placed.place}/${column}`,
          detail: `differs from row ${first.place} of the same pump`,
        });
    }
  }
  return { stated, faults };
}

const filled = (members: Readonly<Record<string, number | string | undefined>>): object =>
  Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined));

/** The pump as a body in JSON would state it, and the row and column behind each of its members. */
function drafted(group: readonly PlacedRow[], stated: ReadonlyMap<string, PlacedRow>) {
  const heads = group.filter(({ row }) => row.head !== undefined);
  const powers = group.filter(({ row }) => row.power !== undefined);
  const one = (column: Column) => stated.get(column)?.row[column];
  const settings = filled({ min: one('settingMin'), max: one('settingMax'), step: one('settingStep') });
  const draft = {
    name: group[0]?.row.name,
    ...filled({ key: one('key') }),
    headPoints: heads.map(({ row: { flow, head, setting } }) => filled({ flow, head, setting })),
    powerPoints: powers.map(({ row: { flow, power, setting = FULL_SETTING } }) =>
      filled({ flow, power, setting }),
    ),
    settings,
    ...filled({
      standbyPower: one('standbyPower'),
      ratedSpeed: one('ratedSpeed'),
      price: one('price'),
      expectedLifeYears: one('expectedLifeYears'),
    }),
  };
  return { draft, heads, powers };
}

const SETTING_COLUMNS: Readonly<Record<string, Column>> = {
  min: 'settingMin',
  max: 'settingMax',
  step: 'settingStep',
};

/** A fault of a pump, named by its row and column. */
function inTable(
  error: ProblemError,
  group: readonly PlacedRow[],
  { heads, powers }: { heads: readonly PlacedRow[]; powers: readonly PlacedRow[] },
): ProblemError {
  const [member = '', index, field] = (error.pointer ?? '').split('/').slice(1);
  const first = group[0]?.place ?? 0;
  const points = member === 'headPoints' ? heads : powers;
  if (member === 'headPoints' || member === 'powerPoints') {
    const column = field ?? (member === 'headPoints' ? 'head' : 'power');
    const place =
      (index === undefined ? undefined : points[Number(index)]?.place) ?? points[0]?.place ?? first;
    return { ...error, pointer: `/${place}/${column}` };
  }
  const column = member === 'settings' ? (SETTING_COLUMNS[index ?? ''] ?? 'settingMin') : member;
  const place = group.find(({ row }) => row[column] !== undefined)?.place ?? first;
  return { ...error, pointer: `/${place}/${column}` };
}

function pumpOf(
  group: readonly PlacedRow[],
  context: SchemaContext,
): Result<FittedPump, readonly ProblemError[]> {
  const { stated, faults } = statedOnce(group);
  const wrong = [...group.flatMap((row) => rowFault(row) ?? []), ...faults];
  if (wrong.length > 0) return failed(wrong);
  const { draft, ...points } = drafted(group, stated);
  const read = pumpInput(context).safeParse(draft);
  const placed = (errors: readonly ProblemError[]) => errors.map((error) => inTable(error, group, points));
  if (!read.success) return failed(placed(bodyErrors(read.error.issues, draft)));
  const fit = fitPumpOrProblem(read.data);
  if (!fit.ok) return failed(placed(fit.failure.errors ?? []));
  const keyPlace = stated.get('key')?.place ?? 0;
  return success({ document: read.data, fit: fit.value, key: enteredKey(draft), keyPlace });
}

/** At the second of two pumps of one key. */
function sharedKeys(pumps: readonly FittedPump[]): readonly ProblemError[] {
  const seen = new Set<string>();
  return pumps.flatMap(({ key, keyPlace }) => {
    if (typeof key !== 'string') return [];
    const isShared = seen.has(key);
    seen.add(key);
    return isShared ? [{ pointer: `/${keyPlace}/key`, detail: 'is that of another pump of the table' }] : [];
  });
}

/** In the order in which their names first appear; faults are named by row and column. */
export async function pumpsOfRows(
  { rows, lines }: CsvRows,
  context: SchemaContext,
): Promise<Result<readonly FittedPump[], Problem>> {
  if (rows.length > PUMP_ROWS_MAX) {
    const facts = { limit: PUMP_ROWS_MAX, actual: rows.length };
    return failed(problem('limit-exceeded', `The table has more than ${PUMP_ROWS_MAX} rows.`, facts));
  }
  const groups = byName(rows);
  if (groups.length > LIST_MAX) {
    const facts = { limit: LIST_MAX, actual: groups.length };
    return failed(problem('limit-exceeded', `The table has ${groups.length} pumps.`, facts));
  }
  if (groups.length === 0) return failed(problem('missing-body', 'The table has no rows.'));
  const pumps: FittedPump[] = [];
  const errors: ProblemError[] = [];
  for (const [place, group] of groups.entries()) {
    if (errors.length >= FAULTS_MAX) break;
    const pump = pumpOf(group, context);
    if (pump.ok) pumps.push(pump.value);
    else errors.push(...pump.failure.map((error) => withLine(error, lines)));
    await pauseAfter(place + 1);
  }
  errors.push(...sharedKeys(pumps).map((error) => withLine(error, lines)));
  if (errors.length > 0) return failed(invalidRequest(errors));
  return success(pumps);
}
