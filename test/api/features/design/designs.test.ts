/** What designs answer besides the worked ones: other forms, units, limits, dangers. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { workedDesigns } from '../../../reference/worked-designs.ts';
import { example, type Json, sent } from '../../requests.ts';
import { answered, type StockedApp, stockedApp } from '../../stocked-app.ts';
import { bestOf, designAnswer } from './read-design.ts';
import { workedRequest } from './worked-request.ts';

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

const flume = (): Json => example('design-kelp-flume.json');
const ask = (body: unknown, query = '', headers = {}) =>
  app.call(`/v1/designs${query}`, sent('POST', body, headers));
const designed = async (body: unknown, query = '') => answered(designAnswer, await ask(body, query));

function workedOne(): Json {
  const [one] = workedDesigns;
  if (one === undefined) throw new Error('there is no worked design');
  return workedRequest(one);
}

const RUN = z.object({ run: z.array(z.record(z.string(), z.unknown())) });
const LOOP = z.looseObject({ discharge: RUN.loose() });

describe('a design', () => {
  it('states cautions and what was not checked, as a duty does', async () => {
    const answer = await designed(flume());
    const { cautions, notChecked, uncertainty, npsh, power } = bestOf(answer);
    expect(notChecked).toContain('motor');
    expect(cautions.map(({ code }) => code)).toContain('screen-uneven');
    expect(npsh.available).toBeGreaterThan(0);
    expect(uncertainty.power.low).toBeLessThanOrEqual(power);
    expect(uncertainty.power.high).toBeGreaterThanOrEqual(power);
    const codes = answer.cautions.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(['untrimmed-not-searched', 'fittings-not-priced', 'estimate']),
    );
  });

  it('chooses the pump alone for a stored loop, whose sizes are known', async () => {
    const answer = await designed({ loop: app.loopId, pumps: [app.pumpId] });
    const best = bestOf(answer);
    expect([best.runs, best.pipeCost, answer.frontier.length]).toEqual([[], 0, 1]);
    expect(answer.basis.loop?.id).toBe(app.loopId);
    expect(best.pump.id).toBe(app.pumpId);
  });

  it('takes prices of a foot in US units, and gives the same design', async () => {
    const body = workedOne();
    const metric = bestOf(await designed(body));
    const prices = z.array(z.object({ pipe: z.object({ insideDiameter: z.number() }), price: z.number() }));
    const us = JSON.parse(
      JSON.stringify(body, (name, value) => {
        if (typeof value !== 'number') return value;
        if (name === 'insideDiameter') return `${value} mm`;
        if (name === 'length' || name === 'head' || name === 'staticHead') return `${value} m`;
        if (name === 'temperature') return `${value} degC`;
        if (name === 'flow' || name === 'requiredFlow') return `${value} L/h`;
        return name === 'pipeVelocity' ? `${value} m/s` : value;
      }),
    );
    const pipePrices = prices.parse(body.pipePrices).map(({ pipe, price }) => ({
      pipe: { insideDiameter: `${pipe.insideDiameter} mm` },
      price: price * 0.3048,
    }));
    const answer = await designed({ ...us, pipePrices }, '?units=us');
    const best = bestOf(answer);
    expect([best.candidate, best.setting]).toEqual([metric.candidate, metric.setting]);
    expectClose(best.presentValue, metric.presentValue, { relative: 1e-5 });
    expectClose(best.head, metric.head / 0.3048, { relative: 1e-5 });
    expect(answer.units.head).toBe('ft');
  });

  it('has no best where every size is too fast, and names the list', async () => {
    const answer = await designed({ ...workedOne(), limits: { pipeVelocity: 0.2 } });
    expect(answer.best).toBeNull();
    expect(answer.rejected.map(({ reason, pointer }) => [reason, pointer])).toEqual([
      ['pipe-velocity', '/discharge/run/0'],
      ['pipe-velocity', '/discharge/run/0'],
    ]);
    // 5000 L/h through 63.8 mm is 0.4344 m/s.
    expect(answer.summary).toContain('0.434 m/s, above the limit of 0.2 m/s');
    const unlimited = await designed({ ...workedOne(), limits: { pipeVelocity: null } });
    expect(bestOf(unlimited).candidate).toBe(0);
    expect(unlimited.assumptions.limits.pipeVelocity).toBeNull();
  });

  it('rejects a pump without a price, and one that gives too little head', async () => {
    const body = workedOne();
    const [small] = z.array(z.object({ pump: z.looseObject({}) })).parse(body.pumps);
    if (small === undefined) throw new Error('there is no pump');
    const { price: _price, ...unpriced } = small.pump;
    const weak = { ...small.pump, settings: { min: 30, max: 40, step: 1 } };
    const answer = await designed({ ...body, pumps: [unpriced, weak] });
    expect(answer.best).toBeNull();
    expect(answer.rejected.map(({ reasons }) => reasons)).toEqual([
      ['no-price'],
      ['not-enough-head', 'outside-data'],
    ]);
    expect(answer.rejected[1]?.detail).toMatch(
      /^The pump gives .* at 40 %\. The sizes that require least head/,
    );
  });

  it('reports that gravity serves, and rejects every pump for it where that is asked', async () => {
    const body = workedOne();
    const loop = LOOP.parse(body.loop);
    const below = {
      ...body,
      loop: {
        ...loop,
        discharge: { ...loop.discharge, outlet: { name: 'end', requiredFlow: 5000, staticHead: -3 } },
      },
    };
    const reported = await designed(below);
    expect(reported.cautions.map(({ code }) => code)).toContain('gravity-suffices');
    expect(reported.summary).toMatch(/^No pump is needed: /);
    const rejected = await designed({ ...below, limits: { pipeVelocity: 3, gravity: 'reject' } });
    expect(rejected.best).toBeNull();
    expect(rejected.rejected.map(({ reason }) => reason)).toEqual(['gravity-suffices', 'gravity-suffices']);
    const level = await designed({ ...body, limits: { pipeVelocity: 3, gravity: 'reject' } });
    expect(level.cautions.map(({ code }) => code)).not.toContain('gravity-suffices');
    expect(bestOf(level).setting).toBe(82);
  });

  it('names candidates that are too close to call', async () => {
    const body = workedOne();
    const [first] = z.array(z.object({ pump: z.looseObject({}) })).parse(body.pumps);
    if (first === undefined) throw new Error('there is no pump');
    // Power at one speed alone leaves the power at others open.
    const unsure = (name: string) => ({ ...first.pump, name, powerPoints: [{ setting: 100, power: 85 }] });
    const answer = await designed({ ...body, pumps: [unsure('A'), unsure('B')] });
    expect(bestOf(answer).closeTo).toEqual([1]);
    expect(answer.summary).toContain('It is too close to call against pump "B".');
    expect(bestOf(await designed(body)).closeTo).toEqual([]);
  });

  it('keeps the ranking to its limit', async () => {
    const answer = await designed({ ...workedOne(), rankingLimit: 1, pumps: [...pumpsOf(3)] });
    expect([answer.ranking.length, answer.counts.feasible]).toEqual([1, 3]);
  });
});

function pumpsOf(count: number): readonly unknown[] {
  const pumps = z.array(z.unknown()).parse(workedOne().pumps);
  return Array.from({ length: count }, () => pumps[0]);
}

describe('other forms of a design', () => {
  it('are a table with the best first', async () => {
    const text = await (await ask(workedOne(), '', { Accept: 'text/csv' })).text();
    const [head, first, second, ...rest] = text.trimEnd().split('\r\n');
    expect(head).toMatch(/^candidate,pump,name,count,setting \[%\],flow \[L\/h\],requiredHead \[m\]/);
    expect(first).toMatch(/^0,,Small,1,82,5000,1\.22771,1\.26103,46\.8663/);
    expect(second).toMatch(/^1,,Large,1,53,/);
    expect(rest).toEqual([]);
  });

  it('are a picture of the frontier', async () => {
    const response = await app.call('/v1/designs/chart.svg', sent('POST', flume()));
    const text = await response.text();
    expect([response.status, response.headers.get('content-type')]).toEqual([
      200,
      'image/svg+xml; charset=utf-8',
    ]);
    expect(text).toMatch(/^<svg /);
    expect(text).toContain('The least cost of the pipes of Kelp flume against the head that they require.');
    expect(text).toContain('best design of another pump');
    expect(text).not.toMatch(/NaN|undefined/);
  });

  it('are a page to print', async () => {
    const response = await app.call('/v1/designs/report', sent('POST', flume()));
    const text = await response.text();
    expect([response.status, response.headers.get('content-type')]).toEqual([
      200,
      'text/html; charset=utf-8',
    ]);
    for (const part of [
      'Kelp flume',
      'Chosen sizes',
      'Best design of each pump',
      '<svg ',
      'Assumptions',
      'Cautions',
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/<script|NaN|undefined/);
  });

  it('say in picture and page that there is none', async () => {
    const none = { ...workedOne(), limits: { pipeVelocity: 0.2 } };
    expect(await (await app.call('/v1/designs/chart.svg', sent('POST', none))).text()).toContain(
      'No design is feasible',
    );
    expect(await (await app.call('/v1/designs/report', sent('POST', none))).text()).toContain(
      'No design is feasible',
    );
  });
});
