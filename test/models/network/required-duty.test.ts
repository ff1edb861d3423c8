/** The least total flow at which a loop serves every outlet. */
import { describe, expect, it } from 'vitest';
import { requiredDuty } from '../../../models/network/required-duty.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

const L = LITRE_PER_HOUR;

describe('the required duty', () => {
  it('of one outlet is its flow and the head that takes', () => {
    const { system } = modelOf(loopOf(outlet('jet', { requiredFlow: 3000 * L }, [pipe(0.04, 3)])));
    const duty = requiredDuty(system);
    expectClose(duty?.flow ?? Number.NaN, 3000 * L, { relative: 1e-9 });
    expectClose(duty?.head ?? Number.NaN, system.stateAt(3000 * L).head, { relative: 1e-9 });
  });

  it('is settled by the outlet that is served last', () => {
    const { system } = modelOf(
      loopOf({
        run: [pipe(0.04, 1)],
        branches: [
          outlet('near', { requiredFlow: 1000 * L }),
          outlet('far', { requiredFlow: 1000 * L }, [pipe(0.02, 8)]),
        ],
      }),
    );
    const duty = requiredDuty(system);
    expect(duty?.limitingOutlet).toBe('far');
    const flows = system.stateAt(duty?.flow ?? 0).outletFlows;
    expectClose(flows[1] ?? Number.NaN, 1000 * L, { relative: 1e-9 });
    expect(flows[0] ?? 0).toBeGreaterThan(1000 * L);
  });

  it('lets no outlet of requirement 0 run backwards', () => {
    const { system } = modelOf(
      loopOf({
        run: [pipe(0.04, 1)],
        branches: [
          outlet('low', { requiredFlow: 500 * L }),
          outlet('high', { requiredFlow: 0, staticHead: 0.5, exit: 'submerged' }),
        ],
      }),
    );
    const duty = requiredDuty(system);
    expect(duty?.limitingOutlet).toBe('high');
    expectClose(system.stateAt(duty?.flow ?? 0).outletFlows[1] ?? Number.NaN, 0, { absolute: 1e-9 });
  });

  it('is not settled by an outlet that is shut because it requires nothing', () => {
    const { system } = modelOf(
      loopOf({
        run: [pipe(0.04, 1)],
        branches: [
          outlet('open', { requiredFlow: 500 * L }),
          outlet('shut', { requiredFlow: 0 }, [{ valve: 'ball', opening: 0 }]),
        ],
      }),
    );
    const duty = requiredDuty(system);
    expect(duty?.limitingOutlet).toBe('open');
    expectClose(duty?.flow ?? Number.NaN, 500 * L, { relative: 1e-9 });
  });

  it('is nothing without a requirement, or without a way for the water', () => {
    expect(requiredDuty(modelOf(loopOf(outlet('jet'))).system)).toBeNull();
    expect(requiredDuty(modelOf(loopOf(outlet('jet', { requiredFlow: 0 }))).system)).toBeNull();
    const shut = outlet('jet', { requiredFlow: 1000 * L }, [{ valve: 'ball', opening: 0 }]);
    expect(requiredDuty(modelOf(loopOf(shut)).system)).toBeNull();
  });

  it('is nothing where a shut outlet requires a flow', () => {
    const { system } = modelOf(
      loopOf({
        run: [pipe(0.04, 1)],
        branches: [
          outlet('open', { requiredFlow: 500 * L }),
          outlet('shut', { requiredFlow: 500 * L }, [{ valve: 'ball', opening: 0 }]),
        ],
      }),
    );
    expect(requiredDuty(system)).toBeNull();
  });
});
