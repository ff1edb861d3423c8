/** What is made of an answer in a unit system, made once for as long as the answer itself is kept. */
import type { UnitSystem } from '../units/unit-system.ts';

/** Answers are never changed once given; one that is not an object is made anew each time. */
export function oncePerAnswer<Made>(
  make: (answer: unknown, system: UnitSystem) => Made,
): (answer: unknown, system: UnitSystem) => Made {
  const known = new WeakMap<object, Map<UnitSystem, Made>>();
  return (answer, system) => {
    if (typeof answer !== 'object' || answer === null) return make(answer, system);
    const ofAnswer = known.get(answer) ?? new Map<UnitSystem, Made>();
    const made = ofAnswer.get(system) ?? make(answer, system);
    known.set(answer, ofAnswer.set(system, made));
    return made;
  };
}
