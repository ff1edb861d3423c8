/** Cautions about a calibration, each where it applies and not else. */
import { describe, expect, it } from 'vitest';
import type { Calibration } from '../../../models/calibration/calibrate.ts';
import { calibrationCautions } from '../../../models/cautions/measured.ts';
import type { ParameterName } from '../../../models/pump/factors.ts';

const PLAIN: Calibration = {
  parameters: [
    { name: 'friction', value: 1.2, standardError: 0.06, interval: { low: 1.08, high: 1.32 } },
    { name: 'head', value: 0.95, standardError: 0.01, interval: { low: 0.9, high: 1 } },
  ],
  factors: { friction: 1.2, head: 0.95, power: 1 },
  badEnd: { friction: 1.25, head: 0.94 },
  notIdentifiable: [],
  misfits: [],
  limiting: null,
  nextReadings: [],
  speeds: null,
  ...{ used: 40, rows: 8, isThinned: false, drift: null, lacksGauges: false, isScattered: false },
};

const codesOf = (change: Partial<Calibration>): readonly string[] =>
  calibrationCautions({ ...PLAIN, ...change }).map(({ code }) => code);

const shut = {
  ...({ measure: 'head', setting: 80, outlet: null, shut: [], zeroFlow: true } as const),
  ...{ predicted: 3, margin: null, parameters: [] },
};

describe('cautions about a calibration', () => {
  it('always say that no interval shows the bias of a meter', () => {
    expect(codesOf({})).toEqual(['meter-bias']);
  });

  const parameter = (name: ParameterName, value: number) => ({
    ...{ name, value, standardError: 0.001 },
    interval: { low: value - 0.002, high: value + 0.002 },
  });
  const ratio = {
    name: 'frictionOverHead',
    value: 1,
    standardError: 0.1,
    interval: { low: 0, high: 2 },
  } as const;

  it.each<{ code: string; change: Partial<Calibration> }>([
    { code: 'few-readings', change: { used: 9 } },
    { code: 'ratio-as-friction', change: { parameters: [ratio] } },
    { code: 'speed-map-suspect', change: { speeds: { points: [], differs: true } } },
    { code: 'readings-thinned', change: { isThinned: true } },
    { code: 'readings-do-not-fit', change: { misfits: [{ ...shut, measured: 2, off: -0.3 }] } },
    { code: 'factor-suspect', change: { parameters: [parameter('head', 1.2)] } },
    { code: 'factor-suspect', change: { parameters: [parameter('power', 1.4)] } },
    { code: 'gauge-bores-differ', change: { lacksGauges: true } },
    { code: 'readings-scatter', change: { isScattered: true } },
    { code: 'readings-drift', change: { drift: { measure: 'flow', change: -0.1 } } },
    { code: 'fault-as-baseline', change: { parameters: [parameter('friction', 1.11)] } },
    { code: 'fault-as-baseline', change: { parameters: [parameter('frictionOverHead', 1.2)] } },
    { code: 'fault-as-baseline', change: { parameters: [parameter('head', 0.9)] } },
    { code: 'closed-valve-briefly', change: { nextReadings: [shut] } },
  ])('give $code', ({ code, change }) => {
    expect(codesOf(change)).toContain(code);
  });

  it('give none of these where a speed map agrees and a gauge is read while water moves', () => {
    const open = { ...shut, zeroFlow: false };
    expect(codesOf({ speeds: { points: [], differs: false }, nextReadings: [open] })).toEqual(['meter-bias']);
  });
});
