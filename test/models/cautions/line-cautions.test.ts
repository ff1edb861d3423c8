/** The cautions about pressures in lines and about valves, with figures by hand where a duty is known. */
import { describe, expect, it } from 'vitest';
import { linePressureCautions } from '../../../models/cautions/line-pressure.ts';
import { pipeworkCautions } from '../../../models/cautions/pipework.ts';
import { valveCautions } from '../../../models/cautions/valves.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import {
  FRESH_DENSITY,
  LH,
  loopOf,
  pipe,
  pumpE,
  STATED,
} from '../../reference/independent-complementarity/cases.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

const G = 9.80665;
/** Of fresh water of 20 degC [Pa/m]. */
const WEIGHT = FRESH_DENSITY * G;

/** Ten times the head of E: 60 m at rest, 10 000 L/h at most. */
const strong: Pump = {
  ...pumpE,
  headPoints: pumpE.headPoints.map((point) => ({ ...point, head: 10 * point.head })),
};

/** Without suction and intake loss, one run to an outlet that loses its velocity head. */
const line = (run: readonly RunElement[], facts: Partial<PipeworkLoop['discharge']> = {}): PipeworkLoop =>
  loopOf({ suction: [], discharge: { run, outlet: { name: 'end' }, ...facts } });

function at(loop: PipeworkLoop, pump: Pump = pumpE) {
  const model = modelOf(loop);
  return { model, duty: dutyPoint(model, pumpAtSetting(pumpModelOf(pump), { setting: 100, count: 1 })) };
}

function pressuresOf(loop: PipeworkLoop, pump?: Pump, elevation = 0) {
  const { model, duty } = at(loop, pump);
  return { duty, cautions: linePressureCautions(model, duty, elevation) };
}

describe('the highest point of a line', () => {
  // At the end of the run the head is that of the outlet and one velocity head: the pressure is rho g (level - highest).
  it.each<[number, number, string[]]>([
    [2, 1.9, []],
    [2, 2, []],
    [2, 3, ['line-pressure']],
    [0, 10.05, ['line-pressure']],
    [0, 10.2, ['line-vaporises']],
  ])('with the outlet at %d m and the highest point at %d m gives %o', (level, highest, codes) => {
    const loop = line([pipe(40, 2)], {
      outlet: { name: 'end', staticHead: level },
      highestElevation: highest,
    });
    const { cautions } = pressuresOf(loop);
    expect(cautions.map(({ code }) => code)).toEqual(codes);
    for (const { value = 0, limit, pointer, quantity } of cautions) {
      expectClose(value, WEIGHT * (level - highest), { relative: 1e-6 });
      expect([pointer, quantity]).toEqual(['/discharge', 'pressure']);
      // Vapour of 20 degC weighs 2339 Pa (IAPWS-IF97), the air 101 325 Pa.
      if (codes[0] === 'line-vaporises') expectClose(limit ?? 0, 2339 - 101_325, STATED);
      else expect(limit).toBe(0);
    }
  });

  it('counts on less air higher up', () => {
    const loop = line([pipe(40, 2)], { highestElevation: 6.1 });
    expect(pressuresOf(loop).cautions.map(({ code }) => code)).toEqual(['line-pressure']);
    // 61 640 Pa at 4000 m (ISO 2533): less than 6.1 m of water and 2339 Pa of vapour.
    expect(pressuresOf(loop, pumpE, 4000).cautions.map(({ code }) => code)).toEqual(['line-vaporises']);
  });

  it('is not judged where none is stated, nor where no water moves', () => {
    expect(pressuresOf(line([pipe(40, 2)])).cautions).toEqual([]);
    const high = line([pipe(40, 2)], { outlet: { name: 'end', staticHead: 8 }, highestElevation: 9 });
    expect(pressuresOf(high).cautions).toEqual([]);
  });
});

describe('a valve that closes at once', () => {
  const PIPE = 'pn10 63';
  /** 63 mm less two walls of 3.0 mm and half of their tolerance of 0.5 mm (EN ISO 1452-2). */
  const BORE = 0.0565;

  it('builds up more than a pipe bears, at its start', () => {
    const big: Pump = {
      ...strong,
      headPoints: strong.headPoints.map((point) => ({ ...point, flow: 3 * point.flow })),
    };
    const { duty, cautions } = pressuresOf(line([{ pipe: PIPE, length: 1 }]), big);
    const velocity = duty.flow / ((Math.PI / 4) * BORE ** 2);
    expect(cautions).toMatchObject([
      { code: 'surge', severity: 'note', pointer: '/discharge/run/0', quantity: 'pressure', limit: 1e6 },
    ]);
    // The wave runs at 384.340 m/s in this pipe; nothing is lost before it, so its start has the head of the pump.
    const expected = WEIGHT * duty.head + FRESH_DENSITY * 384.34 * velocity;
    expectClose(cautions[0]?.value ?? 0, expected, { relative: 1e-5 });
  });

  it('is nothing to a pipe where water runs slowly, nor where its rating is not known', () => {
    expect(pressuresOf(line([{ pipe: PIPE, length: 1 }])).cautions).toEqual([]);
    expect(pressuresOf(line([pipe(20, 1)]), strong).cautions).toEqual([]);
  });
});

describe('a valve', () => {
  const LINE = 40;
  const kv = 4;
  const throttled = line([pipe(LINE, 1), { valve: { kv } }]);
  /** IEC 60534-2-1: h = (Q/Kv)^2 x 1 bar/(1000 kg/m3 x g). */
  const lossAt = (flow: number) => ((flow / LH / 1000 / kv) ** 2 * 1e5) / (1000 * G);

  it('that takes most of the head of the pump is named with its share and its cost', () => {
    const { model, duty } = at(throttled);
    const year = { annualEnergy: 2628, annualCost: 525.6 };
    const [caution, ...others] = valveCautions(model, duty, { elevation: 0, year });
    const share = lossAt(duty.flow) / duty.head;
    expect(share).toBeGreaterThan(0.5);
    expect(others).toEqual([]);
    expect(caution).toMatchObject({
      ...{ code: 'valve-throttles', severity: 'warning', pointer: '/discharge/run/1', limit: 0.5 },
      detail: expect.stringContaining(`${(525.6 * share).toFixed(2)} of money a year`),
    });
    expectClose(caution?.value ?? 0, share, { relative: 1e-9 });
    const unpriced = valveCautions(model, duty, { elevation: 0, year: { ...year, annualCost: null } });
    expect(unpriced[0]?.detail).toContain(`${(2628 * share).toFixed(0)} kWh a year`);
  });

  it('of a branch costs its share of the flow', () => {
    const branch = (name: string, run: readonly RunElement[]) => ({ run, outlet: { name } });
    const { model, duty } = at({
      ...throttled,
      discharge: {
        run: [pipe(LINE, 1)],
        branches: [branch('open', [pipe(LINE, 1)]), branch('throttled', [pipe(LINE, 1), { valve: { kv } }])],
      },
    });
    const [caution] = valveCautions(model, duty, {
      elevation: 0,
      year: { annualEnergy: 1000, annualCost: 1e6 },
    });
    const [, flow = 0] = duty.outletFlows;
    // What the valve takes of the water's power: q h of Q H.
    const cost = (1e6 * flow * lossAt(flow)) / (duty.flow * duty.head);
    if (caution?.code === 'valve-throttles') {
      expect(caution.detail).toContain(`${cost.toFixed(2)} of money`);
    }
    expect(caution?.pointer ?? '/discharge/branches/1/run/1').toBe('/discharge/branches/1/run/1');
  });

  it('that takes less, that is a check valve, or that passes nothing, is not named', () => {
    const codes = (loop: PipeworkLoop) => {
      const { model, duty } = at(loop);
      return valveCautions(model, duty, { elevation: 0, year: null });
    };
    expect(codes(line([pipe(LINE, 1), { valve: { kv: 400 } }]))).toEqual([]);
    expect(codes(line([pipe(LINE, 1), { valve: 'check-swing', diameter: 0.012 }]))).toEqual([]);
    expect(codes({ ...throttled, staticHead: 8 })).toEqual([]);
  });

  it('cavitates where its loss is large against the pressure before it', () => {
    const { model, duty } = at(throttled, strong);
    const loss = lossAt(duty.flow);
    const cautions = valveCautions(model, duty, { elevation: 0, year: null });
    const found = cautions.find(({ code }) => code === 'valve-cavitates');
    // Behind it are one velocity head and the level of the pump: (101 325 - 2339)/(rho g) + h over h.
    const sigma = ((101_325 - 2339) / WEIGHT + loss) / loss;
    expect(sigma).toBeLessThan(2);
    expect(found).toMatchObject({ severity: 'warning', pointer: '/discharge/run/1', limit: 2 });
    expectClose(found?.value ?? 0, sigma, { relative: 1e-5 });
  });

  it('lies at the highest point that its run states', () => {
    const { model, duty } = at(
      { ...throttled, discharge: { ...throttled.discharge, highestElevation: 5 } },
      strong,
    );
    const loss = lossAt(duty.flow);
    const found = valveCautions(model, duty, { elevation: 0, year: null });
    const sigma = ((101_325 - 2339) / WEIGHT + loss - 5) / loss;
    expectClose(found.find(({ code }) => code === 'valve-cavitates')?.value ?? 0, sigma, { relative: 1e-5 });
  });

  it('does not cavitate at a small loss', () => {
    const { model, duty } = at(throttled);
    const codes = valveCautions(model, duty, { elevation: 0, year: null }).map(({ code }) => code);
    expect(codes).not.toContain('valve-cavitates');
  });
});

describe('a pipe', () => {
  it('where water runs below 0.3 m/s is noted, in each pipe, but not where none runs', () => {
    const run = [pipe(150, 1), pipe(30, 1), pipe(200, 1)];
    const { model, duty } = at(line(run));
    const slow = pipeworkCautions(model, { ...DEFAULT_LIMITS, pipeVelocity: 100 }, duty);
    const velocityIn = (bore: number) => duty.flow / ((Math.PI / 4) * bore ** 2);
    expect(slow.map(({ code, severity, pointer, limit }) => [code, severity, pointer, limit])).toEqual([
      ['pipe-velocity-low', 'note', '/discharge/run/2', 0.3],
      ['pipe-velocity-low', 'note', '/discharge/run/0', 0.3],
    ]);
    expectClose(slow[0]?.value ?? 0, velocityIn(0.2), { relative: 1e-12 });
    const rest = at({ ...line(run), staticHead: 8 });
    expect(pipeworkCautions(rest.model, DEFAULT_LIMITS, rest.duty)).toEqual([]);
  });
});
