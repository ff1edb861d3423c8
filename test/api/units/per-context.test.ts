/** Schemas remembered by their context. */
import { describe, expect, it } from 'vitest';
import { perContext } from '../../../api/units/per-context.ts';
import { documentedContext, schemaContext } from '../../../api/units/schema-context.ts';

const counted = () => {
  let made = 0;
  const maker = perContext((context) => {
    made += 1;
    return { context };
  });
  return { maker, made: () => made };
};

describe('a schema', () => {
  it('is made once for each system, side and density, and once for the document', () => {
    const { maker, made } = counted();
    const contexts = [
      schemaContext({ system: 'metric', side: 'request' }),
      schemaContext({ system: 'us', side: 'request' }),
      schemaContext({ system: 'metric', side: 'answer' }),
      schemaContext({ system: 'metric', side: 'request', density: 997 }),
      documentedContext('request'),
    ];
    for (const context of [...contexts, ...contexts]) maker(context);
    expect(made()).toBe(contexts.length);
    expect(maker(schemaContext({ system: 'us', side: 'request' }))).toBe(
      maker(schemaContext({ system: 'us', side: 'request' })),
    );
  });

  it('of a rare density may be forgotten, of the usual one never', () => {
    const { maker, made } = counted();
    const usual = schemaContext({ system: 'metric', side: 'request' });
    const first = maker(usual);
    for (let i = 0; i < 1000; i += 1)
      maker(schemaContext({ system: 'metric', side: 'request', density: 990 + i }));
    expect(maker(usual)).toBe(first);
    expect(made()).toBe(1001);
  });
});
