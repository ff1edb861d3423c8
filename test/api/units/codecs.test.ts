/** The codecs of entered and computed quantities. */
import { z } from '@hono/zod-openapi';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computed, computedNumber } from '../../../api/units/computed.ts';
import { entered } from '../../../api/units/entered.ts';
import { quantitiesOf } from '../../../api/units/quantity-of.ts';
import { schemaContext } from '../../../api/units/schema-context.ts';
import { expectClose } from '../../expect-close.ts';

const metric = schemaContext({ system: 'metric', side: 'request' });
const us = schemaContext({ system: 'us', side: 'request' });

const flow = { description: 'Flow.', minimum: 0, maximum: 10, example: 1000 };
const bore = { description: 'Bore.', minimum: 0, aboveMinimum: true, maximum: 2, example: 40 };
const rise = { description: 'Rise.', minimum: -100, maximum: 1000, example: 1 };
const warmth = { description: 'Warmth.', minimum: 0, maximum: 45, example: 25 };

const messages = (schema: z.ZodType, value: unknown) => {
  const result = schema.safeParse(value);
  return result.success ? [] : result.error.issues.map(({ message }) => message);
};

describe('an entered quantity', () => {
  it('takes a number in the unit in force', () => {
    expectClose(entered(metric, 'flow', flow).parse(3600), 0.001, { relative: 1e-15 });
    expectClose(entered(us, 'flow', flow).parse(1), 3.785411784e-3 / 3600, { relative: 1e-15 });
  });

  it('takes a string with its own unit in either system', () => {
    for (const context of [metric, us]) {
      expectClose(entered(context, 'flow', flow).parse('1 L/s'), 0.001, { relative: 1e-15 });
    }
  });

  it('gives back what was entered, within 1e-9 and without rounding noise', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(metric, us),
        fc.integer({ min: 1, max: 9_999_999 }),
        fc.constantFrom('flow' as const, 'head' as const),
        (context, n, quantity) => {
          const codec = entered(context, quantity, { ...rise, maximum: 1e6 });
          expect(z.encode(codec, codec.parse(n / 100))).toBe(n / 100);
        },
      ),
      { seed: 1 },
    );
  });

  it('quotes a limit in the unit in force', () => {
    expect(messages(entered(metric, 'diameter', bore), 2001)).toEqual([
      'must be at most 2000 mm, not 2001 mm',
    ]);
    expect(messages(entered(us, 'diameter', bore), 80)).toEqual(['must be at most 78.7402 in, not 80 in']);
    expect(messages(entered(metric, 'diameter', bore), 0)).toEqual(['must be above 0 mm, not 0 mm']);
    expect(messages(entered(us, 'temperature', warmth), 20)).toEqual([
      'must be at least 32 degF, not 20 degF',
    ]);
  });

  it('takes exactly its limits, in both systems', () => {
    expect(messages(entered(metric, 'flow', flow), 36_000_000)).toEqual([]);
    expect(messages(entered(us, 'temperature', warmth), 113)).toEqual([]);
    expect(messages(entered(us, 'temperature', warmth), 32)).toEqual([]);
  });

  it.each([true, null, [], {}, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (value) => {
    expect(messages(entered(metric, 'flow', flow), value)).toEqual([
      'must be a number of L/h or a string with its unit',
    ]);
  });

  it('has no negative zero', () => {
    expect(Object.is(entered(metric, 'elevation', rise).parse(-0), 0)).toBe(true);
  });

  it('fills in a default in the unit kept inside, whatever the units', () => {
    const roughness = {
      description: 'Roughness.',
      minimum: 0,
      maximum: 0.01,
      example: 0.0015,
      default: 1.5e-6,
    };
    for (const context of [metric, us]) {
      expect(entered(context, 'roughness', roughness).parse(undefined)).toBe(1.5e-6);
    }
  });

  it('takes a head in a unit of pressure by the density of its context', () => {
    const codec = entered(schemaContext({ system: 'metric', side: 'request', density: 800 }), 'head', rise);
    expectClose(codec.parse('100 kPa'), 1e5 / (800 * 9.80665), { relative: 1e-14 });
  });
});

describe('a computed figure', () => {
  const answer = schemaContext({ system: 'us', side: 'answer' });
  const words = { description: 'Flow.', example: 1000 };

  it('leaves with six significant digits in the unit in force', () => {
    expect(z.encode(computed(answer, 'flow', words), 0.001)).toBe(951.019);
    expect(z.encode(computedNumber(answer, words), 2 / 3)).toBe(0.666667);
  });

  it('is finite', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(z.safeEncode(computed(answer, 'flow', words), value).success).toBe(false);
      expect(z.safeEncode(computedNumber(answer, words), value).success).toBe(false);
    }
  });

  it('has no negative zero', () => {
    expect(Object.is(z.encode(computed(answer, 'head', words), -0), 0)).toBe(true);
  });
});

describe('the quantities of a schema', () => {
  it('are found in objects, lists, unions, options and recursion, each once', () => {
    const branch = z.strictObject({
      flow: entered(metric, 'flow', flow).optional(),
      bore: z.union([z.string(), z.strictObject({ d: entered(metric, 'diameter', bore) })]),
      get branches(): z.ZodOptional<z.ZodArray<z.ZodType>> {
        return z.array(branch).optional();
      },
      byName: z.record(z.string(), entered(metric, 'temperature', { ...warmth, default: 25 })),
    });
    expect(quantitiesOf(z.union([branch, z.null()]))).toEqual(['diameter', 'flow', 'temperature']);
  });
});
