/** What a caller may ask of a recommendation besides loop and pumps, over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const SIX_DIGITS = { relative: 1e-5 };

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const asked = async (options: Json = {}) =>
  answered(recommendationAnswer, await recommend(app, { loop: app.loopId, pumps: [app.pumpId], ...options }));
const queried = async (query: string) =>
  answered(recommendationAnswer, await app.call(`${app.loop}/recommendation?${query}`));
const pumpOf = (file: string) => created(app, '/v1/pumps', example(file));

describe('the candidates', () => {
  it('are judged in the order of the request, ranked by cost and counted', async () => {
    const [small, large] = [await pumpOf('pump-inline-60.json'), await pumpOf('pump-canister-600.json')];
    const { ranking, rejected, counts, basis } = await asked({ pumps: [small, large, app.pumpId] });
    const costs = ranking.map(({ annualCost }) => annualCost ?? 0);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
    expect([...ranking, ...rejected].map(({ candidate }) => candidate).sort()).toEqual([0, 1, 2]);
    expect(counts).toEqual({ candidates: 3, feasible: ranking.length, rejected: rejected.length });
    expect(basis.pumps.map(({ id }) => id)).toEqual([small, large, app.pumpId]);
  });

  it('may be several equal pumps, whose figures are totals', async () => {
    const { best } = await asked({ pumps: [{ pump: app.pumpId, count: 2 }], hoursPerDay: 12 });
    expect(best?.count).toBe(2);
    expectClose(best?.flow ?? 0, 2 * (best?.perPump.flow ?? 0), SIX_DIGITS);
    expectClose(best?.power ?? 0, 2 * (best?.perPump.power ?? 0), SIX_DIGITS);
    // kWh = 365 (h P + (24 - h) P_standby)/1000, with a standby of 3 W a pump.
    expectClose(best?.annualEnergy ?? 0, (365 * 12 * ((best?.power ?? 0) + 6)) / 1000, SIX_DIGITS);
    expect((await queried(`pump=${app.pumpId}&count=2&hoursPerDay=12`)).best).toEqual(best);
  });

  it('are named in a query with commas between, each once or more', async () => {
    const other = await pumpOf('pump-canister-600.json');
    const { basis } = await queried(`pump=${other},${app.pumpId},${other}`);
    expect(basis.pumps.map(({ id }) => id)).toEqual([other, app.pumpId, other]);
  });

  it('of one setting differ by their place alone', async () => {
    const { ranking } = await asked({ pumps: [app.pumpId, app.pumpId, app.pumpId] });
    expect(ranking.map(({ candidate }) => candidate)).toEqual([0, 1, 2]);
  });

  it('are told up to the ranking limit and counted beyond it', async () => {
    const pumps = Array(30).fill(app.pumpId);
    expect((await asked({ pumps })).ranking).toHaveLength(20);
    const { ranking, counts, best } = await asked({ pumps, rankingLimit: 1 });
    expect(ranking).toEqual([best]);
    expect(counts).toEqual({ candidates: 30, feasible: 30, rejected: 0 });
    expect((await queried('rankingLimit=1')).ranking).toHaveLength(1);
  });

  it('are none where no pump is stored', async () => {
    const discharge = { run: [{ pipe: 'sch40 1', length: 2 }], outlet: { name: 'end', requiredFlow: 100 } };
    await app.call(`/v1/pumps/${app.pumpId}`, { method: 'DELETE', headers: { 'If-Match': '*' } });
    const response = await recommend(app, { loop: { name: 'bare', discharge } });
    const { best, counts, summary } = await answered(recommendationAnswer, response);
    expect([best, counts.candidates]).toEqual([null, 0]);
    expect(summary).toContain('bare');
  });
});

describe('money', () => {
  it('is the price of the request before that of the site', async () => {
    const { best, assumptions } = await asked({ price: 0.5 });
    expectClose(best?.annualCost ?? 0, 0.5 * (best?.annualEnergy ?? 0), SIX_DIGITS);
    expect(assumptions).toMatchObject({ price: 0.5, currency: 'EUR', hoursPerDay: 24 });
    expect((await asked()).assumptions).toMatchObject({ price: 0.21, currency: 'EUR' });
  });

  it('of another currency needs a price that comes with it, and converts nothing', async () => {
    const { best, assumptions, summary } = await asked({ price: 0.5, currency: 'USD' });
    expect(assumptions.currency).toBe('USD');
    expectClose(best?.annualCost ?? 0, 0.5 * (best?.annualEnergy ?? 0), SIX_DIGITS);
    expect(summary).toContain('USD');
    const { errors } = await refused(await recommend(app, { loop: app.loopId, currency: 'USD' }));
    expect(errors?.map(({ pointer }) => pointer)).toEqual(['/currency']);
  });

  it('may be earned: a negative price ranks the hungriest pump first', async () => {
    const other = await pumpOf('pump-canister-600.json');
    const { ranking } = await asked({ pumps: [app.pumpId, other], price: -0.1 });
    const energies = ranking.map(({ annualEnergy }) => annualEnergy);
    expect(energies).toEqual(energies.toSorted((a, b) => b - a));
  });

  it('of no running hours is that of standby', async () => {
    const { best } = await asked({ hoursPerDay: 0 });
    expectClose(best?.annualEnergy ?? 0, (365 * 24 * 3) / 1000, SIX_DIGITS);
  });
});

describe('a limit', () => {
  const reasons = async (limits: Json, pumps: unknown[] = [app.pumpId]) => {
    const { best, rejected } = await asked({ limits, pumps });
    return best === null ? (rejected[0]?.reasons ?? []) : best.setting;
  };

  it('on the screen rejects by its mean, or by its peak', async () => {
    expect(await reasons({})).toBe(70);
    expect(await reasons({ throughSlotVelocity: 0.12 })).toEqual(['no-setting']);
    expect(await reasons({ throughSlotVelocity: 0.01 })).toEqual(['screen-velocity']);
    expect(await reasons({ throughSlotVelocity: '0.01 ft/s' })).toEqual(['screen-velocity']);
    expect(await reasons({ throughSlotVelocity: null, cloggedFraction: 0.99 })).toBe(70);
    expect(await reasons({ cloggedFraction: 0.9 })).not.toBe(70);
    expect(await reasons({ screenBasis: 'peak' })).not.toBe(70);
  });

  it('names two conditions that clash where each holds somewhere', async () => {
    const { rejected } = await asked({ limits: { throughSlotVelocity: 0.12 } });
    expect(rejected[0]?.detail).toContain('required flows');
    expect(rejected[0]?.detail).toContain('screen');
    expect(rejected[0]?.shortfall).toBeNull();
  });

  it('on efficiency rejects points that cannot be right', async () => {
    expect(await reasons({ maximumEfficiency: 0.1 })).toContain('efficiency-impossible');
    // 50 W at full speed for some 95 W of hydraulic power, and as impossible at every speed by the cube law.
    const wonder = {
      ...example('pump-canister-250.json'),
      standbyPower: 0,
      powerPoints: [
        { setting: 100, power: 50 },
        { setting: 50, power: 6.25 },
      ],
    };
    expect(await reasons({}, [wonder])).toEqual(['efficiency-impossible']);
    expect(await reasons({ maximumEfficiency: 1 }, [wonder])).toEqual(['efficiency-impossible']);
  });

  it('on data may be lifted', async () => {
    const short = {
      name: 'short',
      headPoints: [
        { flow: 0, head: 5 },
        { flow: 2000, head: 4.9 },
        { flow: 4000, head: 4.6 },
      ],
      powerPoints: [{ setting: 100, power: 245 }],
    };
    expect(await reasons({}, [short])).toContain('outside-data');
    const { best } = await asked({ pumps: [short], limits: { allowExtrapolation: true } });
    expect(best?.cautions.map(({ code }) => code)).toContain('extrapolated');
  });

  it('on NPSH rejects where asked for, and cautions otherwise', async () => {
    const thirsty = { ...example('pump-canister-250.json'), npshPoints: [{ flow: 9000, head: 30 }] };
    expect(await reasons({ enforceNpsh: true }, [thirsty])).toEqual(['npsh']);
    const { best } = await asked({ pumps: [thirsty] });
    expect(best?.cautions.map(({ code }) => code)).toContain('cavitation');
  });

  it('on flow of the pump itself rejects', async () => {
    const pump = example('pump-canister-250.json');
    const most = { ...pump, flowLimits: { max: 2000 } };
    const least = { ...pump, flowLimits: { min: 13_900 } };
    expect(await reasons({}, [most])).toEqual(['pump-above-maximum']);
    expect(await reasons({}, [least])).toEqual(['pump-below-minimum']);
  });

  it('on velocity in pipes only cautions', async () => {
    const codes = async (pipeVelocity: number) => {
      const { best } = await asked({ limits: { pipeVelocity } });
      expect(best?.setting).toBe(70);
      return best?.cautions.map(({ code }) => code);
    };
    expect(await codes(0.1)).toContain('pipe-velocity');
    expect(await codes(10)).not.toContain('pipe-velocity');
  });

  it('of an outlet rejects when no setting keeps below it', async () => {
    const loop = example('loop-kelp-flume.json');
    const text = JSON.stringify(loop).replace('"name":"left"', '"name":"left","maximumFlow":2100');
    const { rejected } = await answered(
      recommendationAnswer,
      await recommend(app, { loop: JSON.parse(text), pumps: [app.pumpId] }),
    );
    expect(rejected[0]?.reasons).toEqual(['no-setting']);
    expect(rejected[0]?.detail).toContain('left');
  });
});

describe('trimmed', () => {
  it('serves every outlet at a lower setting by throttling all but the neediest', async () => {
    const { best } = await asked({ balancing: 'trimmed' });
    expect(best?.setting).toBeLessThan(70);
    for (const { flow, requiredFlow } of best?.outlets ?? []) {
      expect(flow).toBeGreaterThanOrEqual((requiredFlow ?? 0) * (1 - 1e-5));
    }
    const [trim, ...others] = best?.trims ?? [];
    expect(others).toEqual([]);
    expect(trim).toMatchObject({
      branch: '/discharge/branches/1',
      outlets: ['left', 'right'],
      closed: false,
    });
    expectClose(trim?.flow ?? 0, 4000, SIX_DIGITS);
    expect((await queried('balancing=trimmed')).best).toEqual(best);
  });

  it('needs a requirement on every outlet', async () => {
    const loop = example('loop-kelp-flume.json');
    const text = JSON.stringify(loop).replace('"name":"left","requiredFlow":2000', '"name":"left"');
    const inline = { loop: JSON.parse(text), balancing: 'trimmed' };
    const { status, errors } = await refused(await recommend(app, inline));
    expect(status).toBe(422);
    expect(errors?.map(({ pointer }) => pointer)).toEqual([
      '/loop/discharge/branches/1/branches/0/outlet/requiredFlow',
    ]);
    const id = await created(app, '/v1/loops', JSON.parse(text));
    const stored = await refused(await recommend(app, { loop: id, balancing: 'trimmed' }));
    expect(stored.errors?.map(({ pointer }) => pointer)).toEqual(['/balancing']);
    const asked = await refused(await app.call(`/v1/loops/${id}/recommendation?balancing=trimmed`));
    expect(asked.errors?.map(({ parameter }) => parameter)).toEqual(['balancing']);
  });

  it('is refused for a loop known by its points', async () => {
    const loop = example('loop-system-curve.json');
    const { status, errors } = await refused(await recommend(app, { loop, balancing: 'trimmed' }));
    expect([status, errors?.map(({ pointer }) => pointer)]).toEqual([422, ['/balancing']]);
  });
});

describe('a loop known by its points', () => {
  it('is served when the smallest share is', async () => {
    const pump = await pumpOf('pump-canister-600.json');
    const loop = example('loop-system-curve.json');
    const response = await recommend(app, { loop, pumps: [pump] });
    const { best } = await answered(recommendationAnswer, response);
    expect(best?.limitingOutlet).toBe('raceway 4');
    for (const { name, flow } of best?.outlets ?? []) {
      const share = { 'raceway 1': 0.28, 'raceway 2': 0.24, 'raceway 3': 0.25, 'raceway 4': 0.23 }[name] ?? 0;
      expectClose(flow, share * (best?.flow ?? 0), SIX_DIGITS);
      expect(flow).toBeGreaterThanOrEqual(2500 * (1 - 1e-5));
    }
  });
});

describe('a question is refused', () => {
  const free = { run: [{ pipe: 'sch40 1', length: 2 }], outlet: { name: 'end' } };

  it('where no outlet requires a flow', async () => {
    for (const outlet of [free.outlet, { ...free.outlet, requiredFlow: 0 }]) {
      const loop = { name: 'free', discharge: { ...free, outlet } };
      const inline = await refused(await recommend(app, { loop }));
      expect(inline).toMatchObject({ status: 422, code: 'no-requirement', errors: [{ pointer: '/loop' }] });
      const id = await created(app, '/v1/loops', loop);
      const stored = await refused(await recommend(app, { loop: id }));
      expect(stored).toMatchObject({ code: 'no-requirement', errors: [{ pointer: '/loop' }] });
      const asked = await refused(await app.call(`/v1/loops/${id}/recommendation`));
      expect(asked).toMatchObject({ status: 422, code: 'no-requirement' });
    }
  });

  it('for ids that name nothing: 404 in the path, 422 in body and query', async () => {
    expect((await refused(await app.call('/v1/loops/none/recommendation'))).status).toBe(404);
    const places = async (body: Json) => {
      const { status, errors } = await refused(await recommend(app, body));
      return [status, errors?.map(({ pointer }) => pointer)];
    };
    expect(await places({ loop: 'none' })).toEqual([422, ['/loop']]);
    expect(await places({ loop: app.loopId, pumps: [app.pumpId, 'none'] })).toEqual([422, ['/pumps/1']]);
    expect(await places({ loop: app.loopId, pumps: [{ pump: 'none', count: 2 }] })).toEqual([
      422,
      ['/pumps/0/pump'],
    ]);
    const query = `${app.loop}/recommendation?pump=${app.pumpId},none`;
    const { status, errors } = await refused(await app.call(query));
    expect([status, errors?.map(({ parameter }) => parameter)]).toEqual([422, ['pump']]);
  });

  it.each<[string, string]>([
    ['pump=', 'pump'],
    ['pump=,', 'pump'],
    ['count=0', 'count'],
    ['count=21', 'count'],
    ['count=1e0', 'count'],
    ['price=NaN', 'price'],
    ['price=', 'price'],
    ['price=0x1', 'price'],
    ['price=1e-1', 'price'],
    ['price=Infinity', 'price'],
    ['price=1%2C2', 'price'],
    ['hoursPerDay=25', 'hoursPerDay'],
    ['hoursPerDay=-0.1', 'hoursPerDay'],
    ['balancing=best', 'balancing'],
    ['objective=beauty', 'objective'],
    ['rankingLimit=0', 'rankingLimit'],
    ['rankingLimit=10001', 'rankingLimit'],
    ['limits=none', 'limits'],
    ['price=1&price=2', 'price'],
  ])('for ?%s', async (query, parameter) => {
    const { status, errors } = await refused(await app.call(`${app.loop}/recommendation?${query}`));
    expect(status).toBe(422);
    expect(errors?.map((error) => error.parameter)).toEqual([parameter]);
  });
});
