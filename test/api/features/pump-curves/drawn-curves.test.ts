/** The curves of a pump as points of a chart. */
import { describe, expect, it } from 'vitest';
import { dataEnd, headBand, pumpPoints } from '../../../../api/features/pump-curves/drawn-curves.ts';
import { enteredPower } from '../../../../api/features/pump-curves/entered-power.ts';
import { pumpAtSetting } from '../../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../../expect-close.ts';
import { canister, LITRE_PER_HOUR, pumpModelOf } from '../../../models/example-loops.ts';

const EXACT = { relative: 1e-9 } as const;

describe('the points of a curve', () => {
  it('go evenly from end to end, and follow the affinity laws', () => {
    const model = pumpModelOf(canister);
    const until = dataEnd(model, { setting: 100, count: 1 });
    const full = pumpPoints(pumpAtSetting(model, { setting: 100, count: 1 }), { from: 0, until });
    const half = pumpPoints(pumpAtSetting(model, { setting: 50, count: 1 }), { from: 0, until: until / 2 });
    expect(full[0]?.flow).toBe(0);
    expectClose(full.at(-1)?.flow ?? 0, until, EXACT);
    for (const [place, { flow, head }] of full.entries()) {
      expectClose(half[place]?.flow ?? 0, flow / 2, { absolute: 1e-12 });
      expectClose(half[place]?.head ?? 0, head / 4, EXACT);
    }
  });

  it('end at as many times the flow as there are pumps side by side', () => {
    const model = pumpModelOf(canister);
    const one = dataEnd(model, { setting: 70, count: 1 });
    expectClose(dataEnd(model, { setting: 70, count: 3 }), 3 * one, EXACT);
  });
});

describe('the band of a curve', () => {
  const place = { setting: 100, count: 1 };

  it('is not there where neither grade nor scatter says anything', () => {
    // Three points and two coefficients besides the first leave no scatter.
    const { grade, ...plain } = {
      ...canister,
      grade: undefined,
      headPoints: canister.headPoints.slice(0, 3),
    };
    const model = pumpModelOf(plain);
    const until = dataEnd(model, place);
    const { standardError } = model.fit.headCurve;
    expect(headBand(model, { ...place, until })).toHaveLength(standardError === null ? 0 : 61);
  });

  it('holds the head by 5 % at no flow for grade 2B, the points lying on their curve', () => {
    const model = pumpModelOf({ ...canister, grade: '2B' });
    const [first] = headBand(model, { ...place, until: dataEnd(model, place) });
    const { head } = pumpAtSetting(model, place).headAt(0);
    // ISO 9906, grade 2B: head 5 % (from memory).
    expectClose(first?.low ?? 0, 0.95 * head, { relative: 1e-6 });
    expectClose(first?.high ?? 0, 1.05 * head, { relative: 1e-6 });
  });
});

describe('power points', () => {
  it('stand at their flow, else at the mean flow of the others brought to their speed', () => {
    const powerPoints = [6000, 9000, 12_000].map((flow) => ({
      setting: 100,
      power: 200 + flow / 300,
      flow: flow * LITRE_PER_HOUR,
    }));
    const model = pumpModelOf({ ...canister, powerPoints: [...powerPoints, { setting: 60, power: 60 }] });
    const told = enteredPower(model);
    expect(told.map(({ isFlowKnown }) => isFlowKnown)).toEqual([true, true, true, false]);
    expectClose(told[3]?.flow ?? 0, 0.6 * 9000 * LITRE_PER_HOUR, EXACT);
  });
});
