/** Documents how open the face of a screen is. */
import { z } from '@hono/zod-openapi';
import { type HolePattern, type Openings, openFraction } from '../../../models/loop/open-fraction.ts';
import { numberField } from '../../fields/number-field.ts';
import { described } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

const LEAST_FRACTION = 1e-4;
/** A fraction sent back with the widths it came from may differ by this share of itself. */
const AGREEMENT = 1e-6;

const width = (context: SchemaContext, description: string, example: number) =>
  entered(context, 'slot', { description, minimum: 0, aboveMinimum: true, maximum: 1, example });

const fraction = (context: SchemaContext) =>
  numberField(context, {
    description:
      'Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.',
    minimum: LEAST_FRACTION,
    maximum: 1,
    example: 0.35,
  });

/** The open fraction itself, or slots and pitch, or holes, pitch and pattern. */
export const openingsFields = (context: SchemaContext) => ({
  openFraction: context.side === 'answer' ? fraction(context) : fraction(context).optional(),
  slot: width(context, 'The width of the slots.', 2).optional(),
  hole: width(context, 'The diameter of round holes, instead of slots.', 3).optional(),
  pitch: width(context, 'From the middle of one opening to the middle of the next.', 5.7).optional(),
  pattern: described(context, z.enum(['square', 'staggered']), {
    description: 'How holes stand: in rows and columns, or each between two of the next row.',
    examples: ['staggered'],
  }).optional(),
});

interface EnteredOpenings {
  readonly openFraction?: number | undefined;
  readonly slot?: number | undefined;
  readonly hole?: number | undefined;
  readonly pitch?: number | undefined;
  readonly pattern?: HolePattern | undefined;
}

interface Fault {
  readonly member: keyof EnteredOpenings;
  readonly message: string;
}

/** The widths that make an open fraction; null where none do; the fault where they do not hold together. */
function openingsOf({ slot, hole, pitch, pattern }: EnteredOpenings): Openings | Fault | null {
  if (slot !== undefined && hole !== undefined) {
    return { member: 'hole', message: 'must not stand beside slot' };
  }
  if (pattern !== undefined && hole === undefined) return { member: 'pattern', message: 'needs hole' };
  if (pitch === undefined) return null;
  const opening = slot ?? hole;
  if (opening === undefined) return { member: 'pitch', message: 'needs slot, or hole and pattern' };
  if (pitch <= opening) return { member: 'pitch', message: 'must be above the width of the openings' };
  if (slot !== undefined) return { slot, pitch };
  if (pattern === undefined) return { member: 'pattern', message: 'is needed with hole and pitch' };
  return { hole: opening, pitch, pattern };
}

function fractionOf(face: EnteredOpenings): number | Fault {
  const { openFraction: stated } = face;
  const openings = openingsOf(face);
  if (openings === null) {
    const message = 'is needed, or slot and pitch, or hole, pitch and pattern';
    return stated ?? { member: 'openFraction', message };
  }
  if ('member' in openings) return openings;
  const given = openFraction(openings);
  if (given < LEAST_FRACTION) return { member: 'pitch', message: 'leaves under 0.0001 of the face open' };
  if (stated !== undefined && Math.abs(stated - given) > AGREEMENT * given) {
    const message = `is not what the openings give, ${sayNumber(given)}; state one of the two`;
    return { member: 'openFraction', message };
  }
  return stated ?? given;
}

/** Fills the open fraction in where the widths state it. */
export function withOpenFraction<Face extends EnteredOpenings, Wire>(
  schema: z.ZodType<Face, Wire>,
): z.ZodType<Face & { readonly openFraction: number }, Wire> {
  return z.codec(schema, z.custom<Face & { readonly openFraction: number }>(), {
    decode(face, payload) {
      const known = fractionOf(face);
      if (typeof known === 'number') return { ...face, openFraction: known };
      const { member, message } = known;
      payload.issues.push({ code: 'custom', message, path: [member], input: face });
      return z.NEVER;
    },
    encode: (face) => face,
  });
}
