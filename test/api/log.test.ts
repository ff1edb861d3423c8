import { describe, expect, it } from 'vitest';
import { makeLogger } from '../../api/log.ts';

const linesOf = (level: 'info' | 'silent', write: (logger: ReturnType<typeof makeLogger>) => void) => {
  const lines: string[] = [];
  write(makeLogger({ level }, { write: (line) => lines.push(line) }));
  return lines;
};

describe('the log', () => {
  it('is one JSON object a line, with a time in UTC and the level as a word', () => {
    const lines = linesOf('info', (logger) => logger.info({ url: 'here' }, 'listening'));
    expect(lines).toHaveLength(1);
    expect(JSON.parse(lines[0] ?? '')).toEqual({
      level: 'info',
      time: expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/),
      url: 'here',
      msg: 'listening',
    });
  });

  it('holds no credentials', () => {
    const headers = { authorization: 'Bearer secret', cookie: 'secret', accept: 'text/csv' };
    const [line] = linesOf('info', (logger) =>
      logger.info({ headers, req: { headers }, authorization: 'Bearer secret' }),
    );
    expect(line).not.toContain('secret');
    expect(line).toContain('text/csv');
  });

  it('tells an error with its stack under err', () => {
    const [line] = linesOf('info', (logger) => logger.error({ err: new Error('broken') }, 'failed'));
    expect(JSON.parse(line ?? '')).toMatchObject({ err: { message: 'broken', stack: expect.any(String) } });
  });

  it('writes nothing when silent', () => {
    expect(linesOf('silent', (logger) => logger.fatal('nothing'))).toEqual([]);
  });
});
