/** Rejections over HTTP that say in figures what is wrong with loop or pump. */
import { beforeEach, describe, expect, it } from 'vitest';
import { recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json } from '../../requests.ts';
import { answered, recommend, type StockedApp, stockedApp } from '../../stocked-app.ts';

const FLUME = example('loop-kelp-flume.json');
const FLUME_TEXT = JSON.stringify(FLUME);
const PUMP = example('pump-canister-250.json');

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

async function rejected(loop: unknown, further: Json = {}, query = '') {
  const body = { loop, pumps: [PUMP], ...further };
  const answer = await answered(recommendationAnswer, await recommend(app, body, query));
  const [first] = answer.rejected;
  if (first === undefined) throw new Error('a setting serves');
  return { ...first, summary: answer.summary };
}

describe('a rejection', () => {
  it('holds the lift against the shutoff head, in the units in force', async () => {
    const { detail, summary } = await rejected({ ...FLUME, staticHead: 100 });
    expect(detail).toMatch(
      /needs 100 m before any water moves, against a shutoff head of 5\.095 m at setting 100 %/,
    );
    expect(summary).toContain(detail.slice(1));
    const loop = await created(app, '/v1/loops', { ...FLUME, staticHead: 100 });
    const us = await rejected(loop, { pumps: [app.pumpId] }, '?units=us');
    expect(us.detail).toMatch(/needs 328\.1 ft before any water moves/);
  });

  it('names the valve that is closed', async () => {
    const loop: unknown = JSON.parse(
      FLUME_TEXT.replace('"valve":"ball","opening":100', '"valve":"ball","opening":0'),
    );
    const { detail } = await rejected(loop);
    expect(detail).toContain('The valve /discharge/branches/0/run/1 of the loop is closed');
    expect(detail).toContain('far end');
  });

  it('says that a loop runs by itself', async () => {
    const loop: unknown = JSON.parse(FLUME_TEXT.replace('"maximumFlow":6000', '"maximumFlow":3100'));
    const { detail } = await rejected({ ...Object(loop), staticHead: -4 });
    expect(detail).toMatch(/runs by itself: the water falls 4 m to its outlets/);
  });

  it('says that a drooping pump does not start', async () => {
    const headPoints = [
      [0, 4],
      [3000, 4.55],
      [6000, 4.6],
      [9000, 4.1],
      [12_000, 3],
    ].map(([flow, head]) => ({ flow, head }));
    const { detail } = await rejected({ ...FLUME, staticHead: 4.3 }, { pumps: [{ ...PUMP, headPoints }] });
    expect(detail).toMatch(/From rest the pump does not start .* drooping curve reaches 4\.6\d* m/);
  });

  it('for want of a setting tells two conditions in plain words', async () => {
    const loop: unknown = JSON.parse(FLUME_TEXT.replace('"name":"left"', '"name":"left","maximumFlow":2100'));
    const { reason, detail } = await rejected(loop);
    expect(reason).toBe('no-setting');
    expect(detail).toMatch(
      /^The settings that give the required flows do not give outlets below their maximum: none of the 71 settings gives both\./,
    );
  });

  it('of a lift that boils the water says so where NPSH is judged', async () => {
    const { reasons, detail } = await rejected(
      { ...FLUME, pumpElevation: 11 },
      { limits: { enforceNpsh: true } },
    );
    expect(reasons).toEqual(['npsh']);
    expect(detail).toContain('the water boils before it reaches the pump');
  });
});
