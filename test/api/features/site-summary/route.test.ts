/** What the summaries of answers say besides pump and setting: dangers first, then what else decided. */
import { beforeEach, describe, expect, it } from 'vitest';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { answered, recommend, type StockedApp, stockedApp } from '../../stocked-app.ts';

const FLUME = example('loop-kelp-flume.json');
const RACEWAYS = example('loop-nursery-raceways.json');

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const asked = async (body: Json) => answered(recommendationAnswer, await recommend(app, body));
const onFlume = (facts: Json = {}, more: Json = {}) =>
  asked({ loop: { ...FLUME, ...facts }, pumps: [app.pumpId], ...more });
const stored = (facts: Json) => created(app, '/v1/loops', { ...FLUME, ...facts });

const FLOODS = 'The pump delivers more than the overflow carries: the tank floods.';

describe('a danger', () => {
  it.each<[string, Json, RegExp]>([
    ['an overflow too small', { overflowCapacity: 5000 }, /overflow carries/],
    [
      'an intake that people reach',
      { intake: { lossCoefficient: 0.5, reachable: true } },
      /holds? fast|only intake/,
    ],
    ['a lift that no pump draws over', { pumpElevation: 11 }, /boils/],
    [
      'a basin too small',
      { staticHead: 0.1, basin: { area: 0.1, freeboard: 0.01 }, siphonBreakDepth: 0.3 },
      /basin/,
    ],
  ])('of %s is said before the pump is to be run', async (_, facts, words) => {
    const { best, summary } = await onFlume(facts);
    expect(best).not.toBeNull();
    expect(summary).toMatch(/^Danger: /);
    expect(summary.slice(0, summary.indexOf('run pump "Canister 250"'))).toMatch(words);
    expect(summary).toContain('Resolve this first. Then run pump "Canister 250"');
    expect(summary).not.toContain('Run ');
  });

  it('of cavitation is said too', async () => {
    const thirsty = { ...example('pump-canister-250.json'), npshPoints: [{ flow: 9000, head: 30 }] };
    expect((await onFlume({}, { pumps: [thirsty] })).summary).toMatch(/^Danger: NPSH available is below/);
  });

  it('of each kind is said, and each once', async () => {
    const { summary } = await onFlume({ overflowCapacity: 5000, pumpElevation: 11 });
    expect(summary.split(FLOODS)).toHaveLength(2);
    expect(summary).toMatch(/boils/);
  });

  it('is not made of an intake that nobody said can be reached', async () => {
    expect((await onFlume()).summary).toMatch(/^Run pump "Canister 250" at 70 %/);
  });

  it('is said of a duty point', async () => {
    const loop = await stored({ overflowCapacity: 5000 });
    const path = `/v1/loops/${loop}/duty-point?pump=${app.pumpId}&setting=70`;
    const { summary } = await answered(dutyPointAnswer.loose(), await app.call(path));
    expect(summary).toMatch(new RegExp(`^Danger: ${FLOODS} Pump "Canister 250" at 70 % on loop .* delivers`));
    const plain = await app.call(`${app.loop}/duty-point?pump=${app.pumpId}&setting=70`);
    expect((await answered(dutyPointAnswer.loose(), plain)).summary).not.toContain('Danger');
  });

  it('is said to a controller and in a schedule', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80 };
    const basin = { area: 0.1, freeboard: 0.01 };
    const loop = await stored({ installed, staticHead: 0.1, basin, siphonBreakDepth: 0.3 });
    const setpoint = await jsonOf(await app.call(`/v1/loops/${loop}/setpoint`));
    expect(setpoint.summary).toMatch(/^Danger: .*basin.* Set \d+ % until/);
    const phases = [{ name: 'day', from: '07:00', factor: 1 }];
    const schedule = await jsonOf(await app.call(`/v1/loops/${loop}/schedule`, sent('PUT', { phases })));
    expect(schedule.summary).toMatch(/^Danger: .*basin.* The phases use/);
  });
});

describe('the summary of a recommendation', () => {
  it('says that the screen draws unevenly where its busiest slots pass the limit', async () => {
    const { summary } = await onFlume();
    expect(summary).toMatch(
      /busiest slots of the intake screen draw 0\.628 m\/s, above the limit of 0\.1524 m\/s/,
    );
    const unjudged = await onFlume({}, { limits: { throughSlotVelocity: null } });
    expect(unjudged.summary).not.toContain('slots');
  });

  it.each<[Json, string]>([
    [{ grade: '2B' }, 'pumps at the low end of grade 2B'],
    [{ margin: 0.1 }, 'flows 10 % above those required'],
    [{ frictionMultiplier: 1.3 }, 'friction 1.3 times as entered'],
  ])('says what the assurance %o costs', async (assurance, words) => {
    const { summary } = await onFlume({}, { assurance });
    expect(summary).toContain(`It is still feasible with ${words}; without that assurance 70 % is enough`);
    expect(summary).toMatch(/it costs EUR \d+\.\d\d per year/);
    expect((await onFlume()).summary).not.toContain('assurance');
  });

  it('says that only the assurance stands against a pump', async () => {
    const small = { ...example('pump-canister-250.json'), settings: { min: 30, max: 71, step: 1 } };
    const { best, summary } = await onFlume({}, { pumps: [small], assurance: { margin: 0.3 } });
    expect(best).toBeNull();
    expect(summary).toContain('without that assurance pump "Canister 250" at 70 % is enough');
  });

  it.each([
    ['cooling', 'what the chiller costs for its heat'],
    ['heating', 'what its heat spares the heater'],
  ])('says that the ranking counts %s', async (mode, words) => {
    const heat = { cop: 3, mode, inRanking: true };
    expect((await onFlume({}, { heat })).summary).toMatch(
      new RegExp(`ranking also counts ${words}: EUR \\d+`),
    );
    const aside = await onFlume({}, { heat: { ...heat, inRanking: false } });
    expect(aside.summary).not.toContain('ranking');
  });
});

describe('the ranking as a table', () => {
  it('names the cautions of each row and of the loop by their codes', async () => {
    const loop = await stored({ overflowCapacity: 5000 });
    const path = `/v1/loops/${loop}/recommendation?pump=${app.pumpId}&format=csv`;
    const [header, row] = (await (await app.call(path)).text()).split('\r\n');
    expect(header?.split(',').at(-1)).toBe('cautions');
    const codes = row?.split(',').at(-1)?.split(' ');
    expect(codes).toEqual(
      expect.arrayContaining(['overflow-exceeded', 'screen-uneven', 'entrapment-people', 'estimate']),
    );
  });
});

describe('the raceways', () => {
  it('flood their basin, which is said first', async () => {
    const pump = await created(app, '/v1/pumps', example('pump-canister-600.json'));
    const { summary } = await asked({ loop: RACEWAYS, pumps: [pump] });
    expect(summary).toMatch(/^Danger: When the power fails more water drains back/);
  });
});
