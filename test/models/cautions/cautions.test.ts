/** Each caution where it applies, and not where it does not. */
import { describe, expect, it } from 'vitest';
import { CAUTIONS, type CautionCode } from '../../../models/cautions/catalogue.ts';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { OUTLETS } from '../../../models/cautions/outlets.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
/** A pump of which nothing is odd. */
const plainPump: Pump = {
  ...canister,
  powerPoints: [
    { setting: 100, power: 250 },
    { setting: 30, power: 3 + 247 * 0.3 ** 3 },
  ],
  npshPoints: [
    { flow: 0, head: 1 },
    { flow: 20_000 * L, head: 1 },
  ],
};
const run = [pipe(0.05, 2)];
const screenOf = (length: number, openFraction = 0.3) => ({
  lossCoefficient: 0.5,
  screen: { shape: 'cylinder', diameter: 0.15, length, openFraction, count: 1 } as const,
});
/** Long for its bore, so that it draws at its root. */
const slender = {
  lossCoefficient: 0.5,
  screen: { shape: 'cylinder', diameter: 0.06, length: 0.5, openFraction: 0.35, count: 1 },
} as const;
/** A loop of which nothing is odd either. */
const plainLoop = loopOf(outlet('jet', { requiredFlow: 1000 * L }, run), { intake: screenOf(0.3) });

interface Case {
  readonly loop?: PipeworkLoop;
  readonly pump?: Partial<Pump>;
  readonly setting?: number;
}

function codesOf({ loop = plainLoop, pump: facts = {}, setting = 60 }: Case): readonly CautionCode[] {
  const model = modelOf(loop);
  const pump = pumpModelOf({ ...plainPump, ...facts });
  const duty = dutyPoint(model, pumpAtSetting(pump, { setting, count: 1 }));
  return dutyCautions({ loop: model, pump, limits: DEFAULT_LIMITS, elevation: 0 }, duty).map(
    ({ code }) => code,
  );
}

const jet = (facts = {}) => loopOf(outlet('jet', facts, run), { intake: screenOf(0.3) });
const tank = { width: 0.8, depth: 0.6 };
const split = (facts: { split?: 'tee-90' } = {}, fitting?: string): PipeworkLoop => ({
  ...plainLoop,
  discharge: {
    run,
    branches: [
      outlet('a', {}, run),
      outlet('b', { nozzleDiameter: 0.008 }, fitting === undefined ? [] : [{ fitting }]),
    ],
    ...facts,
  },
});
const backwards: PipeworkLoop = {
  ...plainLoop,
  discharge: {
    run,
    branches: [outlet('low', {}, run), outlet('high', { staticHead: 3, exit: 'submerged' })],
    split: 'tee-90',
  },
};
const bareIntake = (depth: number): PipeworkLoop => ({
  ...plainLoop,
  intake: { lossCoefficient: 0.5, depth },
});

const GIVEN: readonly [CautionCode, Case][] = [
  ['screen-uneven', { loop: { ...plainLoop, intake: slender } }],
  ['screen-yardstick', {}],
  ['screen-velocity', { loop: { ...plainLoop, intake: screenOf(0.02) } }],
  ['submergence', { loop: bareIntake(0.01) }],
  ['dead-head', { loop: { ...plainLoop, staticHead: 10 } }],
  ['cavitation', { pump: { npshPoints: [{ flow: 0, head: 30 }] } }],
  ['npsh-margin', { pump: { npshPoints: [{ flow: 0, head: 14 }] } }],
  ['npsh-not-checked', { pump: { npshPoints: undefined } }],
  [
    'extrapolated',
    { pump: { headPoints: canister.headPoints.map((point) => ({ ...point, flow: point.flow / 12 })) } },
  ],
  ['low-speed', { pump: { powerPoints: [{ setting: 100, power: 250 }] }, setting: 40 }],
  ['off-grid', { setting: 60.5 }],
  [
    'power-exponent',
    {
      pump: {
        powerPoints: [
          { setting: 100, power: 250 },
          { setting: 30, power: 80 },
        ],
      },
    },
  ],
  ['power-exponent-assumed', { pump: { powerPoints: [{ setting: 100, power: 250 }] } }],
  ['pump-flow-limits', { pump: { flowLimits: { min: 11000 * L } } }],
  ['outlet-short', { loop: jet({ requiredFlow: 20000 * L }) }],
  ['outlet-above-maximum', { loop: jet({ maximumFlow: 100 * L }) }],
  ['reverse-flow', { loop: backwards }],
  ['split-loss-missing', { loop: split() }],
  ['tee-understated', { loop: split({}, 'tee-branch') }],
  ['pipe-velocity', { loop: loopOf(outlet('jet', {}, [pipe(0.012, 1)])), setting: 100 }],
  ['jet-too-far', { loop: jet({ reach: { distance: 1.2, velocity: 0.1 } }) }],
  [
    'jet-laminar',
    {
      loop: jet({ nozzleDiameter: 0.0005, nozzleCount: 4, reach: { distance: 0.05, velocity: 0.1 } }),
      setting: 30,
    },
  ],
  ['jet-confined', { loop: { ...jet({ reach: { distance: 2, velocity: 0.1 } }), tank } }],
];

describe('the cautions of a duty', () => {
  it.each(GIVEN)('give %s where it applies', (code, facts) => {
    expect(codesOf(facts)).toContain(code);
  });

  it('are the yardstick of the screen alone where nothing is odd', () => {
    expect(codesOf({})).toEqual(['screen-yardstick']);
  });

  it.each<[CautionCode, Case]>([
    ['split-loss-missing', { loop: split({ split: 'tee-90' }) }],
    ['split-loss-missing', { loop: split({}, 'tee-branch') }],
    ['submergence', { loop: bareIntake(0.5) }],
    ['low-speed', { setting: 40 }],
    ['reverse-flow', { loop: split({ split: 'tee-90' }) }],
    ['jet-confined', { loop: { ...jet({ reach: { distance: 1, velocity: 0.1 } }), tank } }],
    ['screen-uneven', { loop: { ...plainLoop, intake: screenOf(0.02) } }],
  ])('do not give %s where it does not apply', (code, facts) => {
    expect(codesOf(facts)).not.toContain(code);
  });

  it('name what they are about', () => {
    const model = modelOf(backwards);
    const pump = pumpModelOf(plainPump);
    const duty = dutyPoint(model, pumpAtSetting(pump, { setting: 60, count: 1 }));
    const given = dutyCautions({ loop: model, pump, limits: DEFAULT_LIMITS, elevation: 0 }, duty);
    expect(given.find(({ code }) => code === 'reverse-flow')?.detail).toMatch(/\(high\)$/);
  });
});

describe('the cautions of a loop', () => {
  const codesOfLoop = (facts: Partial<PipeworkLoop>) =>
    loopCautions(modelOf({ ...plainLoop, ...facts })).map(({ code }) => code);

  it.each<CautionCode>(['electricity-near-water', 'entrapment-people', 'estimate'])(
    'always give %s',
    (code) => {
      expect(codesOfLoop({})).toContain(code);
    },
  );

  it.each<[CautionCode, string, Partial<PipeworkLoop>]>([
    ['entrapment-animals', 'without a screen', { intake: { lossCoefficient: 0.5 } }],
    ['bulkheads', 'with a tank', { tank }],
    ['drain-back', 'with a static head', { staticHead: 1 }],
  ])('give %s %s, and not else', (code, _, facts) => {
    expect(codesOfLoop(facts)).toContain(code);
    expect(codesOfLoop({})).not.toContain(code);
  });
});

describe('the catalogue', () => {
  it.each(Object.keys(CAUTIONS))('says of %s how grave it is, in a sentence, on whose authority', (code) => {
    const row = Object.entries(CAUTIONS).find(([name]) => name === code)?.[1];
    expect(row?.sentence).toMatch(/^[A-Z].*\.$/s);
    expect(row?.source).not.toBe('');
    expect(['note', 'warning', 'danger']).toContain(row?.severity);
  });

  it('is told with its subjects', () => {
    expect(OUTLETS.give('reverse-flow', ['a', 'b']).detail).toBe(
      'Water runs backwards through an outlet. (a, b)',
    );
  });
});
