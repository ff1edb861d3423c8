/** The demo's station: four pumps, four loops, each with its pump installed. */
import type { AppDependencies } from '../../../../api/http/api.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, type Json, sent } from '../../requests.ts';

export interface Station extends AppUnderTest {
  readonly pumps: Readonly<Record<'small' | 'middle' | 'right' | 'large', string>>;
  readonly loops: Readonly<Record<'flume' | 'raceways' | 'pool' | 'bank', string>>;
}

export async function station(change: Partial<AppDependencies> = {}): Promise<Station> {
  const app = await appUnderTest({ change });
  await app.call('/v1/site', sent('PUT', example('site.json'), { 'If-Match': '*' }));
  const pump = (file: string) => created(app, '/v1/pumps', example(file));
  const pumps = {
    small: await pump('pump-inline-60.json'),
    middle: await pump('pump-canister-120.json'),
    right: await pump('pump-canister-250.json'),
    large: await pump('pump-canister-600.json'),
  };
  const loop = (file: string, installed: Json) =>
    created(app, '/v1/loops', { ...example(file), installed: { checkValves: true, ...installed } });
  const loops = {
    flume: await loop('loop-kelp-flume.json', { pump: pumps.right, count: 1, setting: 65 }),
    raceways: await loop('loop-nursery-raceways.json', { pump: pumps.large, count: 1, setting: 80 }),
    pool: await loop('loop-touch-pool.json', { pump: pumps.middle, count: 1, setting: 80 }),
    bank: await loop('loop-seahorse-bank.json', { pump: pumps.small, count: 3, setting: 90 }),
  };
  return { ...app, pumps, loops };
}

/** A loop that is quick to solve: one measured point. */
export const quickLoop = (name: string, flow: number, installed?: Json): Json => ({
  name,
  systemCurve: { points: [{ flow: 6000, head: 1.4 }] },
  outlets: [{ name: 'jet', share: 1, requiredFlow: flow }],
  ...(installed === undefined ? {} : { installed }),
});
