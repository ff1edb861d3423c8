import { describe, expect, it } from 'vitest';
import type { Loop, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import {
  missingFrom,
  STARTER_TASKS_MAX,
  type StarterSet,
  type StarterTask,
  starterSet,
} from '../../../models/maintenance/starter-set.ts';
import type { Pump } from '../../../models/pump/pump.ts';

const bulkheads = (count: number): RunElement => ({ fitting: 'bulkhead', count });

const loop = (facts: Partial<PipeworkLoop> = {}): PipeworkLoop => ({
  name: 'flume',
  water: { temperature: 25, salinity: 35 },
  pumpElevation: 0,
  staticHead: 0,
  frictionMultiplier: 1,
  suction: [],
  discharge: { run: [], outlet: { name: 'end' } },
  ...facts,
});

const pump = (facts: Partial<Pump> = {}): Pump => ({
  name: 'Canister 250',
  headPoints: [],
  powerPoints: [],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 0,
  ...facts,
});

function setOf(of: Loop, installed: Pump | null = null) {
  const set = starterSet(of, installed);
  if (!set.ok) throw new Error(set.failure.code);
  return set.value;
}

const codesOf = ({ cautions }: StarterSet) => cautions.map(({ code }) => code);

const ofKind = (tasks: readonly StarterTask[], kind: string) => tasks.filter((task) => task.kind === kind);

describe('the starter set of a loop', () => {
  it('has an inspection for each bulkhead of its own pipework, wherever it stands', () => {
    const { tasks } = setOf(
      loop({
        suction: [{ fitting: 'bulkhead' }, { pipe: 'sch80 2', length: 1 }],
        discharge: {
          run: [{ fitting: 'union' }],
          branches: [
            { run: [bulkheads(2)], outlet: { name: 'left' } },
            { run: [{ fitting: 'elbow-90' }], branches: [{ run: [bulkheads(1)], outlet: { name: 'a' } }] },
          ],
        },
      }),
    );
    expect(ofKind(tasks, 'bulkhead-inspection').map(({ name: title }) => title)).toEqual([
      'Inspect bulkhead 1 for weeping (/suction)',
      'Inspect bulkhead 2 for weeping (/discharge/branches/0/run)',
      'Inspect bulkhead 3 for weeping (/discharge/branches/0/run)',
      'Inspect bulkhead 4 for weeping (/discharge/branches/1/branches/0/run)',
    ]);
    expect(ofKind(tasks, 'union-check')).toMatchObject([{ name: 'Check the union for tightness' }]);
  });

  it('has no more of a bare loop than the test of its residual-current device', () => {
    expect(setOf(loop()).tasks.map(({ kind }) => kind)).toEqual(['residual-current-test']);
  });

  it('has the cleaning of its screens, by their count', () => {
    const screen = { shape: 'cylinder', diameter: 0.06, length: 0.5, openFraction: 0.35, count: 3 } as const;
    const { tasks } = setOf(loop({ intake: { lossCoefficient: 0.5, screen } }));
    expect(tasks[0]).toMatchObject({
      name: 'Clean the 3 intake screens',
      kind: 'screen-cleaning',
      minutes: 30,
      every: { weeks: 1 },
    });
  });

  it.each([
    [{ everyMonths: 6, minutes: 45, parts: 20 }, 1, { every: { months: 6 }, minutes: 45, parts: 20 }],
    [{ everyMonths: 12, minutes: 45, parts: 20 }, 3, { every: { months: 12 }, minutes: 135, parts: 60 }],
    [{ everyMonths: 0.5, minutes: 1, parts: 0 }, 1, { every: { days: 15 } }],
    [{ everyMonths: 0.1, minutes: 1, parts: 0 }, 1, { every: { days: 3 } }],
    [{ everyMonths: 1200, minutes: 1, parts: 0 }, 1, { every: { months: 120 } }],
    [undefined, 1, { every: { months: 6 }, minutes: 45, parts: 0 }],
  ])('has the wet-end service that its pump states: %j, %i pumps', (service, count, expected) => {
    const installed = { pump: 'p', count, setting: 80 };
    const set = setOf(loop({ installed }), pump({ service }));
    expect(set.tasks[0]).toMatchObject({ kind: 'wet-end-service', ...expected });
    expect(codesOf(set).includes('service-assumed')).toBe(service === undefined);
  });

  it('says that the pipework of a loop known by its curve is not known', () => {
    const { name, water, pumpElevation, frictionMultiplier } = loop();
    const byCurve: Loop = {
      name,
      water,
      pumpElevation,
      frictionMultiplier,
      systemCurve: { points: [{ flow: 0.002, head: 2 }] },
      outlets: [],
    };
    const set = setOf(byCurve);
    expect(set.tasks.map(({ kind }) => kind)).toEqual(['residual-current-test']);
    expect(codesOf(set)).toEqual(['upkeep-common-practice', 'fittings-unknown']);
  });

  it('says that it is common practice', () => {
    expect(codesOf(setOf(loop()))).toEqual(['upkeep-common-practice']);
  });

  it('keeps every title within what a title may have, however deep the branch', () => {
    let branch: PipeworkLoop['discharge'] = { run: [bulkheads(1)], outlet: { name: 'end' } };
    for (let depth = 0; depth < 30; depth += 1) branch = { run: [], branches: [branch] };
    const set = setOf(loop({ discharge: branch }), pump({ name: 'x'.repeat(120) }));
    for (const { name: title } of set.tasks) expect(title.length).toBeLessThanOrEqual(120);
  });

  it('refuses more bulkheads than it makes checks of', () => {
    const many = STARTER_TASKS_MAX + 1;
    expect(starterSet(loop({ suction: [bulkheads(many)] }), null)).toEqual({
      ok: false,
      failure: { code: 'too-many-tasks', limit: STARTER_TASKS_MAX, actual: many },
    });
  });
});

describe('what a loop lacks of a set', () => {
  const { tasks } = setOf(
    loop({ suction: [bulkheads(2)], installed: { pump: 'p', count: 1, setting: 80 } }),
    pump(),
  );

  it('is all where it has nothing, and nothing where it has all', () => {
    expect(missingFrom([], tasks)).toEqual(tasks);
    expect(missingFrom(tasks, tasks)).toEqual([]);
  });

  it('is not what it has under another title', () => {
    const renamed = tasks.map(({ kind }) => ({ kind, name: `mine: ${kind}` }));
    expect(missingFrom(renamed, tasks)).toEqual([]);
  });

  it('is the inspections of bulkheads that came since', () => {
    const more = setOf(loop({ suction: [bulkheads(3)] })).tasks;
    expect(missingFrom(tasks, more).map(({ name: title }) => title)).toEqual([
      'Inspect bulkhead 3 for weeping (/suction)',
    ]);
  });

  it('is not made smaller by checks that the set does not know', () => {
    expect(missingFrom([{ kind: 'other', name: 'Feed the fish' }], tasks)).toEqual(tasks);
  });
});
