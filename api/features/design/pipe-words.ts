/** Names a size of pipe in a few words. */
import type { Pipe } from '../../../models/designs/design-loop.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say } from '../../wording/numbers-in-words.ts';

/** `sch80 2`, `42.6 mm`. */
export const pipeWords = (pipe: Pipe, system: UnitSystem): string =>
  typeof pipe === 'string' ? pipe : say(pipe.insideDiameter, 'diameter', system);
