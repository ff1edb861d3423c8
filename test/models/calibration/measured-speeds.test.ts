/** True speeds by gauge readings. */
import { describe, expect, it } from 'vitest';
import { speedRatioAt } from '../../../curves/speed-map.ts';
import { measuredSpeeds } from '../../../models/calibration/measured-speeds.ts';
import type { Gauge, Row } from '../../../models/calibration/row-collector.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, pumpModelOf } from '../example-loops.ts';
import { calibrated } from './known-loops.ts';
import { pipedLoop, trueDuty } from './synthetic.ts';

const pump = pumpModelOf(canister);

/** What a system that goes with the square of the speed shows at the speeds as entered. */
const predictedWith =
  ({ fit }: PumpModel) =>
  ({ setting }: Gauge): number =>
    4 * speedRatioAt(fit.speedMap, setting) ** 2;

const head = (setting: number, value: number, change: Partial<Row> = {}): Row => ({
  ...{ measure: 'head', meter: 'head', outlet: null, shut: [], zeroFlow: false },
  ...{ setting, values: [value], times: [0] },
  ...change,
});

const told = (rows: readonly Row[], { withStaticHead = false, scale = 0.02 } = {}) =>
  measuredSpeeds(rows, { pump, withStaticHead, scale, predictedWith });

describe('speeds by gauges on smooth pipes', () => {
  it('are the true ones, although friction there falls short of the square', () => {
    const speeds = new Map([
      [40, 49],
      [60, 66],
      [80, 83],
      [100, 100],
    ]);
    const truth = { friction: 1, head: 1, power: 1 };
    const read = [...speeds].map(([setting, speed]) => {
      const { flow, head } = trueDuty(pipedLoop(), truth, speed);
      return { time: setting, setting, flow, head };
    });
    const { points = [] } = calibrated({ loop: pipedLoop() }, read).speeds ?? {};
    for (const { setting, speed, standardError } of points) {
      if (standardError !== null) expectClose(speed, speeds.get(setting) ?? Number.NaN, { absolute: 0.03 });
    }
    expect(points).toHaveLength(5);
  });
});

describe('speeds by gauge', () => {
  it('go with the square root of the head: a quarter of it is half the speed', () => {
    const speeds = told([head(100, 4), head(60, 1)]);
    expectClose(speeds?.points.at(-2)?.speed ?? Number.NaN, 50, { relative: 1e-12 });
    expect(speeds?.points.at(-1)).toEqual({ setting: 100, speed: 100, standardError: 0 });
    expect(speeds?.differs).toBe(true);
  });

  it('carry the error of both heads: half of sqrt(2) times 2 % for single readings', () => {
    const at60 = told([head(100, 4), head(60, 1)])?.points.at(-2);
    expectClose(at60?.standardError ?? Number.NaN, 50 * (Math.SQRT2 / 2) * 0.02, { relative: 1e-12 });
  });

  it('are carried on down to the lowest setting in proportion, without an error', () => {
    const [lowest] = told([head(100, 4), head(60, 1)])?.points ?? [];
    expect(lowest?.standardError).toBeNull();
    expectClose(lowest?.speed ?? Number.NaN, (30 * 50) / 60, { relative: 1e-12 });
  });

  it('do not differ from those as entered within twice their error', () => {
    expect(told([head(100, 4), head(60, 4 * 0.36 * 1.03)])?.differs).toBe(false);
    expect(told([head(100, 4), head(60, 4 * 0.36 * 1.2)])?.differs).toBe(true);
  });

  it.each([
    { what: 'at the highest setting', rows: [head(60, 1), head(80, 2)] },
    { what: 'at another one', rows: [head(100, 4)] },
    { what: 'of the same state of the valves', rows: [head(100, 4), head(60, 1, { shut: ['far'] })] },
    { what: 'that rise with the setting', rows: [head(100, 4), head(60, 3), head(80, 2)] },
  ])('are not told without heads $what', ({ rows }) => {
    expect(told(rows)).toBeNull();
  });

  it('take heads at no flow alone where water is lifted', () => {
    const running = [head(100, 4), head(60, 1)];
    expect(told(running, { withStaticHead: true })).toBeNull();
    const still = running.map((row) => ({ ...row, zeroFlow: true }));
    expect(told(still, { withStaticHead: true })?.points).toHaveLength(3);
  });
});
