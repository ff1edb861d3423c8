/** Parts of an answer that stand in it twice. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { encodedOnce } from '../../../api/fields/encoded-once.ts';
import { documentedContext, schemaContext } from '../../../api/units/schema-context.ts';

const answer = schemaContext({ system: 'metric', side: 'answer' });

/** Doubles on the way out, and counts how often it does. */
function doubling() {
  let times = 0;
  const double = z.codec(z.number(), z.number(), {
    decode: (wire) => wire / 2,
    encode: (value) => {
      times += 1;
      return 2 * value;
    },
  });
  return { schema: z.strictObject({ size: double }), times: () => times };
}

describe('a part that is encoded once', () => {
  it('is made once an object, wherever it stands', () => {
    const { schema, times } = doubling();
    const once = encodedOnce(answer, schema);
    const whole = z.strictObject({ best: z.union([once, z.null()]), all: z.array(once) });
    const part = { size: 3 };
    const wire = { best: { size: 6 }, all: [{ size: 6 }, { size: 8 }] };
    expect(z.encode(whole, { best: part, all: [part, { size: 4 }] })).toEqual(wire);
    expect(times()).toBe(2);
    expect(z.encode(whole, { best: null, all: [part] })).toEqual({ best: null, all: [{ size: 6 }] });
    expect(times()).toBe(2);
    expect(z.decode(whole, wire)).toEqual({ best: part, all: [part, { size: 4 }] });
  });

  it('is refused where it does not match its schema', () => {
    const once = encodedOnce(answer, doubling().schema);
    const odd: { size: number } = JSON.parse('{"size": "large"}');
    expect(z.safeEncode(once, odd).success).toBe(false);
    expect(z.safeEncode(z.array(once), [odd]).success).toBe(false);
  });

  it('stands in the document and in requests as it is', () => {
    const { schema } = doubling();
    expect(encodedOnce(documentedContext('answer'), schema)).toBe(schema);
    expect(encodedOnce(schemaContext({ system: 'us', side: 'request' }), schema)).toBe(schema);
  });
});
