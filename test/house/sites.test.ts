/** Who may name the site that callers act in: whoever decides it, and the command line. */
import { expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

const MAY = /^api\/(?:access|cli)\//;

it('lets access and the command line alone name the default site', () => {
  const naming = sourceFiles('api', 'models', 'curves').filter(({ text }) =>
    /\bDEFAULT_SITE_ID\b/.test(text),
  );
  expect(naming.map(({ path }) => path).filter((path) => !MAY.test(path))).toEqual([]);
});
