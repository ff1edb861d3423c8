import { describe, expect, it } from 'vitest';
import { readEnvironment } from '../../api/environment.ts';

const DEFAULTS = {
  port: 8080,
  host: '127.0.0.1',
  databasePath: './data/loopwright.sqlite',
  currency: 'EUR',
  logLevel: 'info',
};

describe('the environment', () => {
  it('has a default for every variable, also for an empty one', () => {
    expect(readEnvironment({})).toEqual({ ok: true, value: DEFAULTS });
    const empty = { PORT: '', HOST: '', DATABASE_URL: '', CURRENCY: '', LOG_LEVEL: '' };
    expect(readEnvironment(empty)).toEqual({ ok: true, value: DEFAULTS });
  });

  it.each([
    ['PORT', '0', { port: 0 }],
    ['PORT', '65535', { port: 65535 }],
    ['HOST', 'localhost', { host: 'localhost' }],
    ['HOST', '::1', { host: '::1' }],
    ['HOST', '127.0.0.2', { host: '127.0.0.2' }],
    ['DATABASE_URL', 'file:loops.sqlite', { databasePath: 'loops.sqlite' }],
    ['DATABASE_URL', 'file:../a/loops.sqlite', { databasePath: '../a/loops.sqlite' }],
    ['DATABASE_URL', 'file:/srv/loops.sqlite', { databasePath: '/srv/loops.sqlite' }],
    ['DATABASE_URL', 'file:///srv/loops.sqlite', { databasePath: '/srv/loops.sqlite' }],
    ['DATABASE_URL', 'file:///srv/wet%20lab/a.sqlite', { databasePath: '/srv/wet lab/a.sqlite' }],
    ['CURRENCY', 'USD', { currency: 'USD' }],
    ['LOG_LEVEL', 'silent', { logLevel: 'silent' }],
  ])('takes %s %s', (variable, text, expected) => {
    expect(readEnvironment({ [variable]: text })).toEqual({ ok: true, value: { ...DEFAULTS, ...expected } });
  });

  it.each([
    ['PORT', '-1'],
    ['PORT', '65536'],
    ['PORT', '80.5'],
    ['PORT', '0x50'],
    ['PORT', ' 80'],
    ['PORT', 'http'],
    ['HOST', '0.0.0.0'],
    ['HOST', '::'],
    ['HOST', '192.168.1.10'],
    ['HOST', '127.0.0.1.example'],
    ['HOST', '127.1'],
    ['HOST', 'wetlab.local'],
    ['DATABASE_URL', 'postgres://user:secret@db/loops'],
    ['DATABASE_URL', 'postgresql://db/loops'],
    ['DATABASE_URL', 'mysql://db/loops'],
    ['DATABASE_URL', './loops.sqlite'],
    ['DATABASE_URL', 'file:'],
    ['DATABASE_URL', 'file::memory:'],
    ['DATABASE_URL', 'file:./data/'],
    ['DATABASE_URL', 'file:a.sqlite?mode=ro'],
    ['DATABASE_URL', 'file://host/a.sqlite'],
    ['DATABASE_URL', 'file:%zz'],
    ['DATABASE_URL', 'file:a%00b'],
    ['CURRENCY', 'eur'],
    ['CURRENCY', 'EURO'],
    ['CURRENCY', '€'],
    ['LOG_LEVEL', 'INFO'],
    ['LOG_LEVEL', 'verbose'],
  ])('refuses %s %s in one line that names the variable and the mend', (variable, text) => {
    const read = readEnvironment({ [variable]: text });
    if (read.ok) throw new Error('was taken');
    expect(read.failure).toMatchObject({ code: 'bad-variable', variable });
    expect(read.failure.detail).toMatch(new RegExp(`^${variable} .*; set .*\\.$`));
  });

  it('repeats no password of a database', () => {
    const read = readEnvironment({ DATABASE_URL: 'postgres://user:secret@db/loops' });
    expect(JSON.stringify(read)).not.toContain('secret');
  });

  it('says why a host outside the machine is refused', () => {
    const read = readEnvironment({ HOST: '0.0.0.0' });
    expect(read.ok ? '' : read.failure.detail).toContain('without access keys');
  });
});
