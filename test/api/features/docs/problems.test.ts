/** The registry of problems against the document. */
import { beforeAll, describe, expect, it } from 'vitest';
import { openApiDocument } from '../../../../api/features/docs/document.ts';
import { PROBLEMS } from '../../../../api/http/problem-registry.ts';
import { appUnderTest } from '../../app-under-test.ts';

let text: Record<string, string>;
beforeAll(async () => {
  const { api } = await appUnderTest();
  const { components } = openApiDocument(api);
  text = Object.fromEntries(
    Object.entries(components?.responses ?? {}).map(([name, response]) => [name, JSON.stringify(response)]),
  );
});

describe('the document', () => {
  // An operation that is there has its method; the wrong ones are no operations.
  const shown = Object.entries(PROBLEMS).filter(([, { status }]) => status !== 405);

  it.each(shown)('describes %s under its status', (code, { status }) => {
    expect(text[`Problem${status}`]).toContain(`\`${code}\``);
  });

  it('describes no problem that the registry does not have', () => {
    const codes = Object.values(text).flatMap((response) =>
      [...response.matchAll(/`([a-z0-9-]+)`: /g)].map(([, code]) => code ?? ''),
    );
    expect(codes.length).toBeGreaterThan(0);
    for (const code of codes) expect(Object.keys(PROBLEMS)).toContain(code);
  });
});
