/** Checks the references in the copy of a site: each id is there once, and each reference leads to one. */
import { type PathPart, toPointer } from '../../http/json-pointer.ts';
import type { ProblemError } from '../../http/problem.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { TariffRecord } from '../../records/tariff/kind.ts';
import type { KindsOfRecords } from './kinds.ts';
import type { CopiedDocuments } from './kinds-schema.ts';
import type { CopiedRecord } from './read.ts';

export interface NamedRecords {
  readonly site: SiteRecord;
  readonly tariffs: readonly TariffRecord[];
  readonly pumps: readonly PumpRecord[];
  readonly loops: readonly LoopRecord[];
  readonly schedules: readonly ScheduleRecord[];
  readonly maintenanceTasks: readonly KindsOfRecords['maintenanceTasks'][];
  readonly completions: readonly KindsOfRecords['completions'][];
  readonly readings: readonly KindsOfRecords['readings'][];
  readonly baselines: readonly KindsOfRecords['baselines'][];
  readonly calibrations: readonly CopiedRecord<CopiedDocuments['calibrations']>[];
}

interface Name {
  readonly id: string | null | undefined;
  readonly at: readonly PathPart[];
}

/** `is there twice` at the second of two that have the same name. */
function twice(names: readonly Name[]): readonly ProblemError[] {
  const seen = new Set<string>();
  return names.flatMap(({ id, at }) => {
    if (id === null || id === undefined) return [];
    const isThere = seen.has(id);
    seen.add(id);
    return isThere ? [{ pointer: toPointer(at), detail: 'is there twice' }] : [];
  });
}

function unknown(
  known: readonly { readonly id: string }[],
  noun: string,
  names: readonly Name[],
): readonly ProblemError[] {
  const ids = new Set(known.map(({ id }) => id));
  return names.flatMap(({ id, at }) =>
    id === null || id === undefined || ids.has(id)
      ? []
      : [{ pointer: toPointer(at), detail: `names no ${noun} of the document` }],
  );
}

const each = <Item>(
  kind: string,
  items: readonly Item[],
  id: (item: Item) => string | null | undefined,
  ...member: readonly string[]
): readonly Name[] => items.map((item, place) => ({ id: id(item), at: [kind, place, ...member] }));

function repeated(named: NamedRecords): readonly ProblemError[] {
  const { tariffs, pumps, loops, schedules, maintenanceTasks, completions, calibrations } = named;
  const byId = { tariffs, pumps, loops, schedules, maintenanceTasks, completions };
  const ofTask = ({ document: { task, at } }: KindsOfRecords['completions']) => `${task} ${at}`;
  const inUse = calibrations.map(({ document }, place) => ({ ...document, at: ['calibrations', place] }));
  return [
    ...Object.entries(byId).flatMap(([kind, records]) =>
      twice(each<{ id: string }>(kind, records, ({ id }) => id, 'id')),
    ),
    ...Object.entries({ tariffs, pumps, loops, maintenanceTasks }).flatMap(([kind, records]) =>
      twice(each<{ key?: string }>(kind, records, ({ key }) => key, 'key')),
    ),
    ...twice(each('completions', completions, ofTask, 'at')),
    ...twice(each('baselines', named.baselines, (one) => one.document.loop, 'loop')),
    ...twice(inUse.map(({ loop, sequence, at }) => ({ id: `${loop} ${sequence}`, at: [...at, 'sequence'] }))),
    ...twice(inUse.flatMap((one) => (one.inUse ? [{ id: one.loop, at: [...one.at, 'inUse'] }] : []))),
  ];
}

function looseEnds(named: NamedRecords): readonly ProblemError[] {
  const { site, tariffs, pumps, loops, schedules, maintenanceTasks, completions, readings, calibrations } =
    named;
  const siteTariff = { id: site.document.tariff, at: ['site', 'tariff'] };
  return [
    ...unknown(tariffs, 'tariff', [
      siteTariff,
      ...each('schedules', schedules, (one) => one.document.tariff, 'tariff'),
    ]),
    ...unknown(pumps, 'pump', [
      ...each('loops', loops, (one) => one.document.installed?.pump, 'installed', 'pump'),
      ...each('maintenanceTasks', maintenanceTasks, (one) => one.document.pump, 'pump'),
    ]),
    ...unknown(loops, 'loop', [
      ...each('schedules', schedules, (one) => one.id, 'id'),
      ...each('maintenanceTasks', maintenanceTasks, (one) => one.document.loop, 'loop'),
      ...each('readings', readings, (one) => one.document.loop, 'loop'),
      ...each('calibrations', calibrations, (one) => one.document.loop, 'loop'),
      ...each('baselines', named.baselines, (one) => one.document.loop, 'loop'),
    ]),
    ...unknown(
      maintenanceTasks,
      'check',
      each('completions', completions, (one) => one.document.task, 'task'),
    ),
  ];
}

/** The database takes readings in the order of time. */
const unordered = ({ readings }: NamedRecords): readonly ProblemError[] =>
  readings.flatMap(({ document }, place) => {
    const falling = document.readings.findIndex(
      ({ time }, i) => time <= (document.readings[i - 1]?.time ?? -Infinity),
    );
    if (falling < 0) return [];
    return [
      {
        pointer: toPointer(['readings', place, 'readings', falling, 'time']),
        detail: 'must be after the one before',
      },
    ];
  });

/** Each fault at its place in the document. */
export const referenceFaults = (named: NamedRecords): readonly ProblemError[] => [
  ...repeated(named),
  ...looseEnds(named),
  ...unordered(named),
];
