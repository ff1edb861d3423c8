/** Rejected candidates told in figures. */
import { describe, expect, it } from 'vitest';
import { rejectionAnswer } from '../../../../api/features/recommendation/rejection-answer.ts';
import {
  CRITERION_REASONS,
  type CriterionReason,
  type Judgement,
} from '../../../../models/selection/criterion.ts';
import type { Clash } from '../../../../models/selection/grid-search.ts';
import type { Throttle } from '../../../../models/selection/throttle.ts';

const judgement = (reason: CriterionReason): Judgement => ({
  reason,
  outlet: reason === 'not-enough-head' || reason === 'outlet-above-maximum' ? 'far end' : null,
  setting: 64,
  value: 0.000712,
  limit: 0.000834,
  clearance: -0.1,
});

const told = ({
  failing = [],
  clash = null,
  throttle = null,
}: {
  readonly failing?: readonly CriterionReason[];
  readonly clash?: Clash | null;
  readonly throttle?: Throttle | null;
}) =>
  rejectionAnswer(
    {
      candidate: 3,
      outcome: { feasible: false, failing: failing.map(judgement), clash, settings: 71 },
      cause: null,
      throttle,
    },
    {
      ...{ pump: { id: 'a', name: 'Canister 250' }, count: 2, system: 'metric' },
      useOf: (power) => ({ annualEnergy: 8.76 * power, annualCost: null }),
    },
  );

describe('a rejected candidate', () => {
  it.each(CRITERION_REASONS)('is told with value and limit: %s', (reason) => {
    const { detail, reasons } = told({ failing: [reason] });
    expect(reasons).toEqual([reason]);
    if (reason === 'dead-head') return;
    if (reason === 'reverse-flow') return expect(detail).toContain('2563 L/h');
    // Flows of outlets have three digits, other flows four.
    const flows =
      reason.includes('outlet') || reason === 'not-enough-head'
        ? ['2560 L/h', '3002.4 L/h']
        : ['2563 L/h', '3002 L/h'];
    const isFlow = !['efficiency-impossible', 'screen-velocity', 'npsh'].includes(reason);
    for (const figure of isFlow ? flows : ['0.000712', '0.000834']) {
      expect(detail).toContain(figure);
    }
  });

  it('has the first reason as its reason, and the shortfall of whichever outlet falls short', () => {
    const answer = told({ failing: ['efficiency-impossible', 'not-enough-head', 'npsh'] });
    expect(answer).toMatchObject({
      candidate: 3,
      count: 2,
      reason: 'efficiency-impossible',
      reasons: ['efficiency-impossible', 'not-enough-head', 'npsh'],
      shortfall: { outlet: 'far end', setting: 64, flow: 0.000712, requiredFlow: 0.000834 },
    });
  });

  it.each(CRITERION_REASONS.slice(1))('for want of a setting names two that clash: %s', (reason) => {
    const clash = [judgement('efficiency-impossible'), judgement(reason)] as const;
    const answer = told({ clash });
    expect(answer).toMatchObject({ reason: 'no-setting', reasons: ['no-setting'], shortfall: null });
    expect(answer.detail).toContain('71 settings');
    expect(answer.detail).toContain(told({ failing: [reason] }).detail);
  });

  it('says how many settings were judged where no two clash', () => {
    expect(told({}).detail).toContain('71');
  });
});
