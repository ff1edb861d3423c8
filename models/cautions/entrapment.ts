/** The caution about people at intakes that they may reach. */
import { type Caution, caution } from './catalogue.ts';

/** `screens` share the flow; undefined: a bare intake, which is a single one. */
export const entrapment = (screens = 1): Caution =>
  caution(screens > 1 ? 'entrapment-several' : 'entrapment-people');
