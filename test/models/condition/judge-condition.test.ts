/** What is answered of loops whose faults are known. */
import { describe, expect, it } from 'vitest';
import type { Condition } from '../../../models/condition/judge-condition.ts';
import { CLOGS, type Fault } from '../../../models/condition/metered-loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { BANK, FLUME, PAIR } from '../../rates/stations.ts';
import { answerOn, type Case, dayOfRecord, readingsOf } from '../../rates/year.ts';

const PLAIN = { flow: 0.02, power: 0.01 } as const;
const PRESSURES = { ...PLAIN, pressures: 0.02 } as const;

const growing =
  (perMonth: number, from = 28) =>
  (day: number) =>
    Math.max(0, day - from) * (perMonth / 30);

const caseOf = (facts: Partial<Case>): Case => ({ site: FLUME, noise: PLAIN, days: 120, ...facts });

function answer(
  facts: Partial<Case>,
  day: number,
  { seed = 1, events = [] as Parameters<typeof answerOn>[2]['events'] } = {},
) {
  const one = caseOf(facts);
  return answerOn(one, readingsOf(one, seed), { day, events: events ?? [] });
}

const named = ({ causes }: Condition) => causes.map(({ signature: { cause } }) => cause);
const probabilityOf = ({ causes }: Condition, wanted: string) =>
  causes.find(({ signature: { cause } }) => cause === wanted)?.probability ?? 0;

describe('a loop that does not change', () => {
  it('forms a baseline for four weeks, and is as expected then', () => {
    expect(answer({}, 20).verdict).toBe('baseline-forming');
    const found = answer({}, 60);
    expect(found).toMatchObject({
      verdict: 'as-expected',
      causes: [],
      course: null,
      shortfall: null,
      waiting: null,
    });
    expect(found.baselines?.current).toMatchObject({ startedBy: 'first-reading', complete: true });
  });

  it('has entries that agree, or differ where they were wrong, and no change', () => {
    expect(answer({}, 60).entries).toMatchObject({ verdict: 'agree', differences: [], slip: null });
    const wrong = answer({ actual: () => ({ power: 1.15 }) }, 60);
    expect(wrong.verdict).toBe('as-expected');
    expect(wrong.entries.verdict).toBe('differ');
    const [first] = wrong.entries.differences;
    expect(first?.gauge.measure).toBe('power');
    expectClose(Math.exp(first?.residual ?? 0), 1.15, { relative: 0.06 });
  });

  it('has entries that differ by a mix-up of units, from the first reading on', () => {
    const one = caseOf({});
    const gallons = readingsOf(one, 1).map((reading) => ({
      ...reading,
      flow: (reading.flow ?? 0) / 3.785412,
    }));
    const found = answerOn(one, gallons, { day: 60 });
    expect(found.entries).toMatchObject({ verdict: 'differ', slip: 'gallons-and-litres' });
    expect(found.verdict).toBe('as-expected');
  });

  it('says how large a fault must be for its meters', () => {
    const sizes = (facts: Partial<Case>) =>
      new Map(answer(facts, 60).detectable.map(({ cause, least }) => [cause, least?.magnitude ?? 1]));
    const [power, both, more] = [sizes({ noise: { power: 0.01 } }), sizes({}), sizes({ noise: PRESSURES })];
    expect(both.get('clogged-intake')).toBeLessThan(power.get('clogged-intake') ?? 0);
    expect(more.get('clogged-intake')).toBeLessThan(both.get('clogged-intake') ?? 0);
    expect(more.get('clogged-intake')).toBeLessThan(0.02);
  });

  it('has too few readings once the last ones are long past', () => {
    const one = caseOf({ days: 60 });
    expect(answerOn(one, readingsOf(one, 1), { day: 300 }).verdict).toBe('not-enough-readings');
    expect(answerOn(one, [], { day: 300 }).verdict).toBe('not-enough-readings');
  });
});

describe('a clog that grows', () => {
  const fault: Fault = { cause: 'clogged-intake' };

  it('is one of those that flow and power leave open, and a pressure is asked for', () => {
    const found = answer({ fault, magnitude: growing(0.05) }, 105);
    expect(found.verdict).toBe('changed');
    expect(named(found).slice(0, 3).toSorted()).toEqual(['clogged-discharge', 'clogged-intake', 'worn-pump']);
    expect(found.nextReading?.gauge).toMatchObject({ measure: 'suctionPressure', valveClosed: false });
    const [first, second] = found.nextReading?.expected ?? [];
    const at = (cause: string) =>
      [first, second].find((one) => one?.signature.cause === cause)?.value ?? Number.NaN;
    expect(at('clogged-intake')).toBeLessThan(at('clogged-discharge'));
  });

  it('is named where pressures are read', () => {
    const found = answer({ fault, magnitude: growing(0.05), noise: PRESSURES }, 105);
    expect(found.verdict).toBe('clogged-intake');
    // Of the window's days: their middle lies some days back.
    expectClose(found.causes[0]?.magnitude ?? Number.NaN, 0.11, { absolute: 0.03 });
    expect(found.course?.kind).toBe('gradual');
    expect(dayOfRecord(found.course?.onset.earliest ?? 0)).toBeLessThan(35);
    expect(found.waiting?.annualExcessCost).toBeGreaterThan(0);
    expect(found.waiting?.cheapestInterval?.everyDays).toBeGreaterThan(10);
  });

  it('is told apart by the reading that was asked for, taken once', () => {
    const facts = { fault, magnitude: growing(0.05) };
    const before = answer(facts, 105);
    const [, , suction] = [
      0,
      1,
      readingsOf(caseOf({ ...facts, noise: PRESSURES }), 1).at(104)?.suctionPressure,
    ];
    const one = caseOf(facts);
    const readings = readingsOf(one, 1).slice(0, 105);
    const last = readings.at(-1);
    if (last === undefined) throw new Error('no reading');
    const asked: Reading = { time: last.time + 60_000, setting: 80, suctionPressure: suction };
    const after = answerOn(one, [...readings, asked], { day: 105 });
    expect(probabilityOf(after, 'clogged-intake')).toBeGreaterThan(
      2 * probabilityOf(before, 'clogged-intake'),
    );
    expect(after.verdict).toBe('clogged-intake');
  });

  it('of a branch names the outlets behind it', () => {
    const branch: Fault = { cause: 'clogged-branch', branch: 2, outletNames: ['east'] };
    const found = answer(
      { site: BANK, noise: { power: 0.01, outlets: 0.02 }, fault: branch, magnitude: growing(0.1) },
      100,
    );
    expect(found.verdict).toBe('clogged-branch');
    expect(found.causes[0]?.signature.fault?.outletNames).toEqual(['east']);
  });

  it('is foretold to leave an outlet short', () => {
    const found = answer({ fault, magnitude: growing(0.05), noise: PRESSURES }, 80);
    expect(found.shortfall?.outlet).toBe('far end');
  });
});

describe('a meter', () => {
  it('that comes to show less is called so, and no clog', () => {
    const drift = (day: number) => 1 - growing(0.05)(day);
    const found = answer({ noise: PRESSURES, drift }, 105);
    expect(found.verdict).toBe('meter-drift');
    expect(found.causes[0]).toMatchObject({ signature: { gauge: { measure: 'flow' } } });
    expect(found.causes[0]?.point.factor).toBeLessThan(1);
    expect(CLOGS.some((clog) => clog === found.verdict)).toBe(false);
    expect(found.waiting).toBeNull();
  });

  it('whose unit changes for good is called so', () => {
    const found = answer({ drift: (day) => (day < 60 ? 1 : 1 / 3.785412) }, 90);
    expect(found.verdict).toBe('unit-slip');
    expect(found.causes[0]).toMatchObject({
      signature: { slip: 'gallons-and-litres', gauge: { measure: 'flow' } },
    });
  });
});

describe('two faults', () => {
  it('are unexplained by one, and listed as the pair', () => {
    const one = caseOf({ noise: PRESSURES, fault: { cause: 'clogged-intake' }, magnitude: growing(0.1, 28) });
    const fouled = readingsOf(one, 1).map((reading, day) => ({
      ...reading,
      power: (reading.power ?? 0) * (day < 40 ? 1 : 1.25),
    }));
    const found = answerOn(one, fouled, { day: 100 });
    expect(found.verdict).toBe('unexplained');
    const pairs = found.causePairs.map((pair) =>
      pair
        .map(({ signature: { cause } }) => cause)
        .toSorted()
        .join(' + '),
    );
    expect(pairs).toContain('clogged-intake + draws-more');
  });
});

describe('a stopped pump', () => {
  it('is said at once, also while the baseline forms', () => {
    const one = caseOf({ days: 12 });
    const readings = readingsOf(one, 1);
    const still = { time: (readings.at(-1)?.time ?? 0) + 1000, setting: 80, flow: 0, power: 3 };
    expect(answerOn(one, [...readings, still], { day: 12 })).toMatchObject({
      verdict: 'pump-stopped',
      isStopped: true,
    });
  });

  it('of two leaves one running', () => {
    const found = answer({ site: PAIR, running: (day) => (day < 60 ? 2 : 1) }, 70);
    expect(found).toMatchObject({ verdict: 'pump-stopped', isStopped: false });
    expect(found.causes[0]?.signature.pumpsRunning).toBe(1);
  });
});

describe('the first month', () => {
  it('says what is over 30 % off the first days, provisionally', () => {
    const drop = (day: number) => (day < 8 ? 0 : 0.4);
    const fault: Fault = { cause: 'clogged-discharge' };
    expect(answer({ fault, magnitude: drop }, 9)).toMatchObject({
      verdict: 'baseline-forming',
      provisional: false,
    });
    expect(answer({ fault, magnitude: drop }, 14)).toMatchObject({ verdict: 'changed', provisional: true });
  });

  it('says which outlet is below required', () => {
    const found = answer({ fault: { cause: 'clogged-discharge' }, magnitude: () => 0.25 }, 10);
    expect(found.verdict).toBe('baseline-forming');
    expect(found.belowRequired.map(({ outlet }) => outlet)).toEqual(['far end']);
    expect(answer({}, 10).belowRequired).toEqual([]);
  });
});

describe('a cleaning', () => {
  const fault: Fault = { cause: 'clogged-intake' };
  const cleaned = (left: number) => (day: number) => (day < 90 ? growing(0.1)(day) : left);
  const events = [{ time: 89.5, startedBy: 'cleaning' as const }];

  it('is judged by the baseline before it until the new one is complete, and by what it won back', () => {
    const whole = answer({ fault, magnitude: cleaned(0) }, 105, { events });
    expect(whole.verdict).toBe('as-expected');
    expect(whole.baselines).toMatchObject({
      current: { startedBy: 'cleaning', complete: false },
      former: { complete: true },
    });
    const flow = whole.cleaningEffect.find(({ gauge }) => gauge.measure === 'flow');
    expectClose(flow?.change ?? Number.NaN, 0, { absolute: 0.02 });
    // The flow had fallen by 11 to 20 % over the thirty days before.
    expectClose(flow?.wonBack ?? Number.NaN, 0.17, { absolute: 0.04 });
  });

  it('that did not help leaves the change', () => {
    const found = answer({ fault, magnitude: cleaned(0.2), noise: PRESSURES }, 105, { events });
    expect(found.verdict).toBe('clogged-intake');
    const flow = found.cleaningEffect.find(({ gauge }) => gauge.measure === 'flow');
    expectClose(flow?.change ?? Number.NaN, Math.log(0.8), { absolute: 0.03 });
  });
});
