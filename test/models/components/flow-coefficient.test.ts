/** Valves by flow coefficient against published conversions. */
import { describe, expect, it } from 'vitest';
import { flowCoefficientValve, kvOfCv } from '../../../models/components/flow-coefficient.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { expectClose } from '../../expect-close.ts';
import { KV_VALVES } from '../../reference/fittings.ts';

function headAt(kv: number, flow: number): number {
  const state = flowCoefficientValve({ kv, opening: 100 });
  return state.ok && state.value !== 'closed' ? state.value.lossAt(flow).head : Number.NaN;
}

describe('a valve by its flow coefficient', () => {
  it.each(KV_VALVES)(
    'Kv $kv m3/h in $diameter m is K $expected ($source)',
    ({ kv, diameter, expected, tolerance }) => {
      const flow = 1e-3;
      const velocity = (4 * flow) / (Math.PI * diameter ** 2);
      expectClose((2 * GRAVITY * headAt(kv, flow)) / velocity ** 2, expected, { relative: tolerance });
    },
  );

  it('loses one bar at its own Kv: 10.197 m of water of 1000 kg/m3', () => {
    expectClose(headAt(12, 12 / 3600), 1e5 / (1000 * 9.80665), { relative: 1e-12 });
  });

  it('loses a quarter at half the flow', () => {
    expectClose(headAt(12, 2e-3), 4 * headAt(12, 1e-3), { relative: 1e-12 });
  });

  it('converts Cv 1.15609923 to Kv 1 (IEC 60534-2-1)', () => {
    expectClose(kvOfCv(1.15609923), 1, { relative: 1e-12 });
  });

  it('has that factor from the units: a US gallon a minute at 1 psi in m3/h at 1 bar', () => {
    const gallonPerMinute = 231 * 0.0254 ** 3 * 60;
    const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
    expectClose(kvOfCv(1), gallonPerMinute * Math.sqrt(1e5 / psi), { relative: 1e-8 });
  });

  it('is shut at 0 and not known part open', () => {
    expect(flowCoefficientValve({ kv: 5, opening: 0 })).toEqual({ ok: true, value: 'closed' });
    expect(flowCoefficientValve({ kv: 5, opening: 60 })).toEqual({
      ok: false,
      failure: { code: 'opening-not-known', opening: 60 },
    });
  });
});
