/** The figures of one loop of a summary, held against its duty point and a search through every setting. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { constantLoop } from '../../../models/site-summary/constant-loop.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const TERMS = { price: 0.2, elevation: 0 };
const HOURS = 8760;

const loop = modelOf(loopOf(outlet('jet', { requiredFlow: 3000 * LITRE_PER_HOUR }, [pipe(0.05, 4)])));
const pump = pumpModelOf(canister);
const thrifty = pumpModelOf({ ...canister, powerPoints: [{ setting: 100, power: 120 }] });

const kilowattHours = (watts: number): number => (watts * HOURS) / 1000;
const dutyAt = (setting: number, of = pump, count = 1) =>
  dutyPoint(loop, pumpAtSetting(of, { setting, count }));
const isServed = (setting: number, of = pump, count = 1): boolean =>
  outletFigures(loop.system.outlets, dutyAt(setting, of, count).outletFlows).every(
    ({ margin }) => (margin ?? 0) >= -1e-9,
  );
/** Setting by setting, from the lowest. */
function lowestServing(of = pump, count = 1): number {
  for (let setting = 30; setting <= 100; setting++) if (isServed(setting, of, count)) return setting;
  throw new Error('no setting serves');
}

describe('a loop at one setting', () => {
  it('uses what its duty point draws, all year', () => {
    const figures = constantLoop(loop, { pump, count: 1, setting: 90 }, [], TERMS);
    const { power } = dutyAt(90);
    expectClose(figures.power, power, { relative: 1e-6 });
    expectClose(figures.annualEnergy, kilowattHours(power), { relative: 1e-6 });
    expectClose(figures.annualCost ?? 0, 0.2 * kilowattHours(power), { relative: 1e-6 });
  });

  it('is above its need by what the lowest setting that serves would save', () => {
    const { aboveNeed, short } = constantLoop(loop, { pump, count: 1, setting: 90 }, [], TERMS);
    const lowest = lowestServing();
    expect(short).toBeNull();
    expect(aboveNeed?.setting).toBe(lowest);
    const saved = kilowattHours(dutyAt(90).power - dutyAt(lowest).power);
    expectClose(aboveNeed?.energySaved ?? 0, saved, { relative: 1e-5 });
  });

  it('is neither short nor above its need at the lowest setting that serves', () => {
    const figures = constantLoop(loop, { pump, count: 1, setting: lowestServing() }, [], TERMS);
    expect(figures).toMatchObject({ short: null, aboveNeed: null, otherPump: null });
  });

  it('is short below it, by the outlet that lacks most', () => {
    const figures = constantLoop(loop, { pump, count: 1, setting: lowestServing() - 1 }, [], TERMS);
    expect(figures.short).toMatchObject({ outlet: 'jet', phase: null });
    expect(figures.short?.margin).toBeLessThan(0);
    expect(figures.aboveNeed).toBeNull();
  });

  it('saves by another pump what that draws less at its own lowest setting', () => {
    const { otherPump } = constantLoop(loop, { pump, count: 2, setting: 90 }, [pump, thrifty], TERMS);
    const setting = lowestServing(thrifty);
    const saved = kilowattHours(dutyAt(90, pump, 2).power - dutyAt(setting, thrifty).power);
    expect(otherPump).toMatchObject({ candidate: 1, count: 1, setting });
    expectClose(otherPump?.energySaved ?? 0, saved, { relative: 1e-5 });
  });

  it('that is short is held against the setting that would serve: the same requirement', () => {
    const short = { pump, count: 1, setting: lowestServing() - 3 };
    const { otherPump } = constantLoop(loop, short, [thrifty], TERMS);
    const saved = kilowattHours(
      dutyAt(lowestServing()).power - dutyAt(lowestServing(thrifty), thrifty).power,
    );
    expectClose(otherPump?.energySaved ?? 0, saved, { relative: 1e-5 });
  });

  it('tells no saving where the pumps that are there cannot serve at all', () => {
    const much = modelOf(loopOf(outlet('jet', { requiredFlow: 9000 * LITRE_PER_HOUR }, [pipe(0.05, 4)])));
    const weak = pumpModelOf({ ...canister, settings: { min: 30, max: 40, step: 1 } });
    const strong = pumpModelOf({
      ...canister,
      headPoints: canister.headPoints.map((point) => ({ ...point, head: 5 * point.head })),
    });
    const figures = constantLoop(much, { pump: weak, count: 1, setting: 40 }, [strong], TERMS);
    expect(figures).toMatchObject({ aboveNeed: null, otherPump: null });
    expect(figures.short).not.toBeNull();
  });

  it('without a requirement is neither short nor above its need', () => {
    const free = modelOf(loopOf(outlet('jet', {}, [pipe(0.05, 4)])));
    const figures = constantLoop(free, { pump, count: 1, setting: 90 }, [thrifty], TERMS);
    expect(figures).toMatchObject({ hasRequirement: false, short: null, aboveNeed: null, otherPump: null });
  });

  it('goes by energy where nothing is priced', () => {
    const unpriced = { ...TERMS, price: null };
    const figures = constantLoop(loop, { pump, count: 1, setting: 90 }, [thrifty], unpriced);
    expect(figures).toMatchObject({ annualCost: null, otherPump: { candidate: 0, costSaved: null } });
  });
});
