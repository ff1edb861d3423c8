/** Describes a screen in a few words. */
import type { IntakeScreen } from '../../models/loop/loop.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { say } from './numbers-in-words.ts';

/** `3 cylinders of 60 mm, each at least 0.43 m long`. */
export function screenWords(screen: IntakeScreen, system: UnitSystem): string {
  const { count, shape } = screen;
  const noun = { cylinder: 'cylinder', flat: 'flat screen', box: 'box' }[shape];
  const plural = shape === 'box' ? 'boxes' : `${noun}s`;
  const several = count === 1 ? `one ${noun}` : `${count} ${plural}`;
  const size = `${count === 1 ? '' : 'each '}at least ${say(screen.length, 'length', system)} long`;
  return `${several} ${acrossWords(screen, system)}, ${size}`;
}

function acrossWords(screen: IntakeScreen, system: UnitSystem): string {
  switch (screen.shape) {
    case 'cylinder':
      return `of ${say(screen.diameter, 'diameter', system)}`;
    case 'flat':
      return `${say(screen.width, 'length', system)} wide`;
    case 'box':
      return `${say(screen.width, 'length', system)} wide and ${say(screen.height, 'length', system)} high`;
  }
}
