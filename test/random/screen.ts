/** An invented intake screen for a flow. */
import type { IntakeScreen } from '../../models/loop/loop.ts';
import type { Draw } from './draw.ts';

/** A screen whose mean velocity, half clogged, is about the customary limit at a flow. */
export function screenFor(draw: Draw, flow: number): IntakeScreen {
  const open = flow / (draw.between(0.06, 0.3) * 0.5);
  const openFraction = draw.between(0.25, 0.5);
  const count = draw.chance(0.2) ? 2 : 1;
  const face = open / openFraction / count;
  if (draw.chance(0.3)) return { shape: 'flat', width: 0.2, length: face / 0.2, openFraction, count };
  const diameter = draw.between(0.05, 0.11);
  return {
    shape: 'cylinder',
    diameter,
    length: face / (Math.PI * diameter),
    openFraction,
    slot: 0.002,
    count,
  };
}
