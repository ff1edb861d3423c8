/** The cautions about points that no curve meets. */
import { describe, expect, it } from 'vitest';
import { headMisfit, powerMisfit } from '../../../models/cautions/fit-misfit.ts';
import { fitCautions } from '../../../models/cautions/pump-fit.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { expectClose } from '../../expect-close.ts';
import { randomCase } from '../../random-loop.ts';
import { BRASCH_WHYMAN_PUMP } from '../../reference/pump-curves.ts';
import { canister, LITRE_PER_HOUR, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const HEADS: readonly (readonly [number, number])[] = [
  [0, 5.1],
  [6000, 4.5],
  [10500, 3.3],
  [14000, 1.9],
];
const POWERS: Pump['powerPoints'] = [
  { setting: 100, power: 245, flow: 9000 * L },
  { setting: 80, power: 127 },
  { setting: 60, power: 55 },
];
const pumpOf = (heads = HEADS, powerPoints = POWERS): Pump => ({
  ...canister,
  headPoints: heads.map(([flow, head]) => ({ flow: flow * L, head, setting: 100 })),
  powerPoints,
});
const withHead = (place: number, head: number) =>
  pumpOf(HEADS.map((point, i) => (i === place ? [point[0], head] : point)));
const withPower = (place: number, power: number) =>
  pumpOf(
    HEADS,
    POWERS.map((point, i) => (i === place ? { ...point, power } : point)),
  );
const codesOf = (pump: Pump) => fitCautions(pumpModelOf(pump)).map(({ code }) => code);
const detailOf = (pump: Pump, code: string) =>
  fitCautions(pumpModelOf(pump)).find((one) => one.code === code)?.detail;

describe('head points', () => {
  it.each<[string, number, number]>([
    ['48 for 4.8', 1, 48],
    ['0.45 for 4.5', 1, 0.45],
    ['33 for 3.3', 2, 33],
    ['2.3 for 3.3', 2, 2.3],
  ])('with %s are said to disagree, and which lies farthest off', (_, place, head) => {
    expect(detailOf(withHead(place, head), 'head-points-disagree')).toMatch(
      /farthest off: \/headPoints\/[12], by \d+ % of the largest head/,
    );
  });

  it('that are read off within two per cent are not', () => {
    expect(codesOf(pumpOf())).toEqual([]);
    for (const [place, [, head]] of HEADS.entries()) {
      expect(codesOf(withHead(place, 1.02 * head))).not.toContain('head-points-disagree');
    }
  });

  it('of published and invented pumps are not', () => {
    const { points } = BRASCH_WHYMAN_PUMP;
    const published = { ...pumpOf(), headPoints: points.map((point) => ({ ...point, setting: 100 })) };
    expect(codesOf(published)).toEqual([]);
    for (let seed = 1; seed <= 40; seed += 1) {
      const { pump } = randomCase({ seed, everyOutlet: true });
      expect(codesOf(pump)).not.toContain('head-points-disagree');
      expect(codesOf(pump)).not.toContain('power-points-disagree');
    }
  });

  it('have the misfit of their residuals, by hand', () => {
    // Least squares with a constant: residuals add up to nothing.
    const model = pumpModelOf(withHead(1, 4.9));
    const { residuals } = model.fit.headCurve;
    expectClose(
      residuals.reduce((sum, one) => sum + one, 0),
      0,
      { absolute: 1e-9 },
    );
    const { meanSquareRoot, farthest } = headMisfit(model);
    const sizes = residuals.map((residual) => Math.abs(residual) / 5.1);
    expectClose(meanSquareRoot, Math.hypot(...sizes) / 2, { relative: 1e-12 });
    expectClose(Math.abs(farthest.share), Math.max(...sizes), { relative: 1e-12 });
  });

  it('are reduced to full speed before they are compared', () => {
    const half = HEADS.map(([flow, head]) => ({ flow: (flow * L) / 2, head: head / 4, setting: 50 }));
    const slow = pumpModelOf({ ...pumpOf(), headPoints: half });
    expectClose(headMisfit(slow).meanSquareRoot, headMisfit(pumpModelOf(pumpOf())).meanSquareRoot, {
      relative: 1e-6,
    });
  });

  it.each([
    [
      [
        [0, 5],
        [5000, 4.2],
        [10000, 1.6],
        [12000, 0],
        [13000, 0],
      ],
      true,
    ],
    [HEADS, false],
  ] as const)('whose curve ends below zero, %j, are noted: %s', (heads, isNoted) => {
    expect(codesOf(pumpOf(heads)).includes('head-below-zero')).toBe(isNoted);
  });
});

describe('power points', () => {
  it.each<[string, number, number]>([
    ['425 for 245', 0, 425],
    ['217 for 127', 1, 217],
    ['5.5 for 55', 2, 5.5],
  ])('with %s are said to disagree', (_, place, power) => {
    expect(detailOf(withPower(place, power), 'power-points-disagree')).toMatch(
      /farthest off: \/powerPoints\/\d, by \d+ % of the fitted power/,
    );
  });

  it('that are read off within five per cent are not', () => {
    for (const [place, { power }] of POWERS.entries()) {
      expect(codesOf(withPower(place, 1.05 * power))).not.toContain('power-points-disagree');
    }
  });

  it('are met as well by their law times a factor', () => {
    const model = pumpModelOf(pumpOf());
    const { powerLaw } = model.fit;
    const { coefficient, standbyPower } = powerLaw;
    const times = { ...powerLaw, coefficient: 1.4 * coefficient, standbyPower: 1.4 * standbyPower };
    const calibrated = powerMisfit({ ...model, fit: { ...model.fit, powerLaw: times } });
    expectClose(calibrated.meanSquareRoot, powerMisfit(model).meanSquareRoot, {
      relative: 1e-9,
      absolute: 1e-12,
    });
  });

  it('at one speed are met exactly by the cube law, and never disagree', () => {
    const one = pumpModelOf(pumpOf(HEADS, [{ setting: 100, power: 245 }]));
    expectClose(powerMisfit(one).meanSquareRoot, 0, { absolute: 1e-12 });
  });
});
