import { describe, expect, it } from 'vitest';
import { fitQuality } from '../../curves/fit-quality.ts';
import { expectClose } from '../expect-close.ts';

describe('fit quality', () => {
  it('is 1 - SSE/SST and sqrt(SSE/dof), by hand', () => {
    // Values 1, 2, 3 about mean 2: SST 2. Residuals 0.1, -0.2, 0.1: SSE 0.06.
    const quality = fitQuality({ values: [1, 2, 3], residuals: [0.1, -0.2, 0.1], parameters: 2 });
    expectClose(quality.r2 ?? Number.NaN, 0.97, { relative: 1e-12 });
    expectClose(quality.standardError ?? Number.NaN, Math.sqrt(0.06), { relative: 1e-12 });
    expect(quality.degreesOfFreedom).toBe(1);
  });

  it('falls below 0 for a fit worse than the mean, where a squared correlation would not', () => {
    const quality = fitQuality({ values: [1, 2, 3], residuals: [-9, -18, -27], parameters: 1 });
    expect(quality.r2).toBeLessThan(0);
  });

  it('has no r2 for values that do not vary, rounding of their mean included', () => {
    expect(fitQuality({ values: [0.1, 0.1, 0.1], residuals: [0, 0, 0], parameters: 1 }).r2).toBeNull();
  });

  it('has no standard error without degrees of freedom', () => {
    const quality = fitQuality({ values: [1, 2], residuals: [0, 0], parameters: 2 });
    expect(quality.standardError).toBeNull();
    expect(quality.degreesOfFreedom).toBe(0);
  });
});
