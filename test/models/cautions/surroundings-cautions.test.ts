/** The cautions about animals, people, reach, floods and service, each where it applies and not where it does not. */
import { describe, expect, it } from 'vitest';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { openingCautions } from '../../../models/cautions/intake.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Intake, PipeworkLoop } from '../../../models/loop/loop.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { canister, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const codes = (cautions: readonly { code: string }[]) => cautions.map(({ code }) => code);
const screen = { shape: 'flat', width: 0.3, length: 0.4, openFraction: 0.4, slot: 0.002, count: 1 } as const;
const loopWith = (facts: Partial<PipeworkLoop> = {}) =>
  loopOf(outlet('jet', { requiredFlow: 2e-4 }, [pipe(0.05, 2)]), facts);
const intake = (facts: Partial<Intake>): Intake => ({ lossCoefficient: 0.5, screen, ...facts });
const ofLoop = (facts: Partial<PipeworkLoop>) => codes(loopCautions(modelOf(loopWith(facts))));

function ofDuty(loop: PipeworkLoop, reachVelocity: number | null = null) {
  const model = modelOf(loop);
  const pump = pumpModelOf(canister);
  const duty = dutyPoint(model, pumpAtSetting(pump, { setting: 60, count: 1 }));
  return codes(
    dutyCautions({ loop: model, pump, limits: DEFAULT_LIMITS, elevation: 0 }, duty, { reachVelocity }),
  );
}

describe('animals', () => {
  it.each([
    [{ slot: 0.002 }, 0.003, []],
    [{ slot: 0.002 }, 0.002, ['animal-fits-opening']],
    [{ hole: 0.004 }, 0.003, ['animal-fits-opening']],
    [{}, 0.003, ['animal-not-checked']],
    [{ slot: 0.002 }, undefined, []],
  ] as const)('with openings of %o and the smallest %s m wide: %o', (face, smallest, expected) => {
    expect(codes(openingCautions(face, smallest))).toEqual(expected);
  });

  it('are cautioned for a loop by its intake, and need a screen first of all', () => {
    expect(ofLoop({ intake: intake({ smallestAnimal: 0.001 }) })).toContain('animal-fits-opening');
    expect(ofLoop({ intake: intake({ smallestAnimal: 0.01 }) })).not.toContain('animal-fits-opening');
    expect(ofLoop({ intake: { lossCoefficient: 0.5, smallestAnimal: 0.01 } })).toContain(
      'entrapment-animals',
    );
  });
});

describe('people', () => {
  it('are told of the pull of a single intake that they can reach', () => {
    expect(ofDuty(loopWith({ intake: intake({ reachable: true }) }))).toContain('intake-holds-fast');
    expect(ofDuty(loopWith({ intake: intake({ reachable: false }) }))).not.toContain('intake-holds-fast');
    const two = intake({ reachable: true, screen: { ...screen, count: 2 } });
    expect(ofDuty(loopWith({ intake: two }))).not.toContain('intake-holds-fast');
  });

  it('are thought of unless the intake is out of reach', () => {
    expect(ofLoop({})).toContain('entrapment-people');
    expect(ofLoop({ intake: intake({ reachable: true }) })).toContain('entrapment-people');
    expect(ofLoop({ intake: intake({ reachable: false }) })).not.toContain('entrapment-people');
  });

  it('are told to keep several screens apart, and not of a single intake then', () => {
    const two = intake({ screen: { ...screen, count: 2 } });
    expect(ofLoop({ intake: two })).toContain('entrapment-several');
    expect(ofLoop({ intake: two })).not.toContain('entrapment-people');
    expect(ofLoop({ intake: { ...two, reachable: false } })).not.toContain('entrapment-several');
    expect(ofLoop({ intake: intake({}) })).not.toContain('entrapment-several');
  });
});

describe('water on the floor', () => {
  it('comes from more drain-back than the basin holds', () => {
    const facts = { staticHead: 1.8, tank: { area: 6 }, basin: { area: 1.6, freeboard: 0.2 } };
    expect(ofLoop({ ...facts, siphonBreakDepth: 0.06 })).toContain('basin-floods');
    expect(ofLoop({ ...facts, siphonBreakDepth: 0.04 })).not.toContain('basin-floods');
  });

  it('comes from more flow than the overflow carries', () => {
    expect(ofDuty(loopWith({ overflowCapacity: 1e-4 }))).toContain('overflow-exceeded');
    expect(ofDuty(loopWith({ overflowCapacity: 1e-2 }))).not.toContain('overflow-exceeded');
  });
});

describe('reach', () => {
  const far = (distance: number) =>
    loopOf(outlet('jet', { reach: { distance, velocity: 0.05 } }, [pipe(0.05, 2)]), { tank: { width: 0.4 } });

  it('is judged at the distance that an outlet states', () => {
    expect(ofDuty(far(1.2))).toEqual(expect.arrayContaining(['jet-too-far', 'jet-confined']));
    expect(ofDuty(far(0.5))).not.toContain('jet-too-far');
  });

  it('is judged where the velocity asked for is left, whatever an outlet states', () => {
    expect(ofDuty(far(0.5), 0.05)).toContain('jet-too-far');
    expect(ofDuty(far(1.2), 5)).not.toContain('jet-too-far');
    expect(ofDuty(loopWith(), 0.05)).toContain('jet-too-far');
    expect(ofDuty(loopWith())).not.toContain('jet-too-far');
  });
});

describe('service', () => {
  it('is noted by what is missing where', () => {
    const details = loopCautions(modelOf(loopWith({ suction: [pipe(0.05, 1), { valve: 'ball' }] })));
    const isolation = details.find(({ code }) => code === 'isolation-missing');
    expect(isolation?.severity).toBe('note');
    expect(isolation?.detail).toContain('(discharge)');
    expect(codes(details)).toContain('union-missing');
    expect(codes(details)).not.toContain('bulkhead-union-missing');
  });
});
