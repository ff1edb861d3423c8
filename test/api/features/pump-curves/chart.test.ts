/** The picture of a pump's curves. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { appUnderTest } from '../../app-under-test.ts';
import { axisScale, marksOf, type Picture, readSvg } from '../../drawing/read-svg.ts';
import { created, example, type Json } from '../../requests.ts';
import { stockedApp } from '../../stocked-app.ts';

const MARK = { absolute: 0.02 } as const;

async function pictureOf(pump: Json, query = ''): Promise<Picture> {
  const app = await appUnderTest();
  const id = await created(app, `/v1/pumps${query}`, pump);
  const answer = await app.call(`/v1/pumps/${id}/chart.svg${query}`);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe('image/svg+xml; charset=utf-8');
  return readSvg(await answer.text());
}

const PUMP = example('pump-canister-250.json');

describe('the picture of a pump', () => {
  it('marks every entered point where the axes say', async () => {
    const picture = await pictureOf(PUMP);
    const marks = marksOf(picture);
    const flow = axisScale(picture, { along: 'x', labels: ['0', '10000'] });
    const head = axisScale(picture, { along: 'y', labels: ['1', '5'] });
    const power = axisScale(picture, { along: 'y', labels: ['50', '200'] });
    // The points of the example itself.
    const heads = [
      [0, 5.1],
      [6000, 4.5],
      [10_500, 3.3],
      [14_000, 1.9],
    ] as const;
    for (const [place, [q, h]] of heads.entries()) {
      expectClose(marks[place]?.x ?? 0, flow(q), MARK);
      expectClose(marks[place]?.y ?? 0, head(h), MARK);
    }
    expectClose(marks[4]?.x ?? 0, flow(9000), MARK);
    expectClose(marks[4]?.y ?? 0, power(245), MARK);
    expectClose(marks[5]?.y ?? 0, power(55), MARK);
  });

  it('draws a line for each setting, the entered ones among them, and names it', async () => {
    const { words, named } = await pictureOf(PUMP);
    for (const setting of ['100 %', '60 %', '80 %', '40 %']) {
      expect(words.filter((text) => text === setting)).toHaveLength(2);
    }
    expect(named('path').filter(({ attributes }) => attributes.fill === 'none')).toHaveLength(8);
  });

  it.each([
    ['', 'flow [L/h]', 'head [m]'],
    ['?units=us', 'flow [gal/h]', 'head [ft]'],
  ])('has axes in the units in force: %s', async (query, flow, head) => {
    const { words } = await pictureOf(query === '' ? PUMP : example('pump-canister-120-us.json'), query);
    expect(words).toContain(flow);
    expect(words).toContain(head);
    expect(words).toContain('electrical power [W]');
  });

  it('shows one point at one place whatever the units', async () => {
    const app = await appUnderTest();
    const id = await created(app, '/v1/pumps', PUMP);
    const [metric, us] = await Promise.all(
      ['metric', 'us'].map(async (units) => {
        const answer = await app.call(`/v1/pumps/${id}/chart.svg?units=${units}`);
        return readSvg(await answer.text());
      }),
    );
    if (metric === undefined || us === undefined) throw new Error('no pictures');
    // 10 500 L/h by the gallon of 231 cubic inches, 3.785411784 L.
    const flow = axisScale(us, { along: 'x', labels: ['0', '2000'] });
    expectClose(marksOf(us)[2]?.x ?? 0, flow(10_500 / 3.785411784), MARK);
  });

  it('tells where the head may lie by grade, else by scatter, else not at all', async () => {
    const told = async (pump: Json) => (await pictureOf(pump)).words.join(' ');
    expect(await told(PUMP)).toContain('by acceptance grade 2B');
    const { grade, ...without } = PUMP;
    expect(await told(without)).toContain('by the scatter of the points');
    // As many points as the curve has coefficients leave no scatter.
    const exact = {
      ...without,
      headPoints: [
        { flow: 0, head: 5 },
        { flow: 5000, head: 3.75 },
        { flow: 10_000, head: 0 },
      ],
    };
    expect(await told(exact)).toContain('entered points');
  });
});

describe('a pump at the edge of what can be entered', () => {
  const simple = {
    name: 'Plain',
    headPoints: [
      { flow: 0, head: 5 },
      { flow: 5000, head: 4 },
      { flow: 10_000, head: 1 },
    ],
    powerPoints: [{ setting: 100, power: 100 }],
    settings: { min: 100, max: 100, step: 1 },
    standbyPower: 0,
  };
  it.each<[string, Json]>([
    ['one setting, one power point without flow', simple],
    [
      'a drooping curve',
      {
        ...simple,
        headPoints: [
          { flow: 0, head: 4 },
          { flow: 3000, head: 4.6 },
          { flow: 6000, head: 4.1 },
          { flow: 9000, head: 2 },
          { flow: 11_000, head: 0.2 },
        ],
      },
    ],
    [
      'a head of 0 at the last point',
      {
        ...simple,
        headPoints: [
          { flow: 0, head: 5 },
          { flow: 5000, head: 4 },
          { flow: 10_000, head: 0 },
        ],
      },
    ],
    [
      'points at low settings alone',
      {
        ...simple,
        settings: { min: 10, max: 100, step: 10 },
        headPoints: [
          { flow: 0, head: 0.05, setting: 10 },
          { flow: 300, head: 0.04, setting: 10 },
          { flow: 600, head: 0.01, setting: 10 },
        ],
      },
    ],
    [
      'points of hardly any flow',
      {
        ...simple,
        headPoints: [
          { flow: 0, head: 1e-5 },
          { flow: 1e-5, head: 8e-6 },
          { flow: 2e-5, head: 1e-6 },
        ],
      },
    ],
    [
      'points of a great flow',
      {
        ...simple,
        headPoints: [
          { flow: 0, head: 900 },
          { flow: 1e7, head: 800 },
          { flow: 3e7, head: 100 },
        ],
      },
    ],
  ])('still has its picture: %s', async (_, pump) => {
    const { words } = await pictureOf(pump);
    expect(words).toContain('flow [L/h]');
  });

  it.each([
    ['<script>alert(1)</script>', '<script>alert(1)</script>'],
    ['مضخة 250', 'مضخة 250'],
    ['a\u202Eb', 'ab'],
    ['\u0001\u001b[31m', '\ufffd\ufffd[31m'],
  ])('with the name %s is shown by it, and by nothing else', async (name, shown) => {
    const { words } = await pictureOf({ ...simple, name });
    expect(words[0]).toBe(`\u2068${shown}\u2069: head and power`);
  });

  it('with a name of 120 letters keeps to its width', async () => {
    const { words } = await pictureOf({ ...simple, name: 'w'.repeat(120) });
    expect(words[0]?.length).toBeLessThan(90);
    expect(words[0]).toContain('…');
  });
});

describe('the route', () => {
  it('answers 304 while nothing has moved, and anew in other units', async () => {
    const { call, pumpId } = await stockedApp();
    const path = `/v1/pumps/${pumpId}/chart.svg`;
    const first = await call(path);
    const etag = first.headers.get('etag') ?? '';
    const again = { headers: { 'If-None-Match': etag } };
    expect((await call(path, again)).status).toBe(304);
    expect((await call(`${path}?units=us`, again)).status).toBe(200);
    expect(await (await call(path)).text()).toBe(await first.text());
  });

  it('says what is wrong with a question', async () => {
    const { call, pumpId } = await stockedApp();
    expect((await call('/v1/pumps/none/chart.svg')).status).toBe(404);
    expect((await call(`/v1/pumps/${pumpId}/chart.svg?setting=50`)).status).toBe(422);
    expect((await call(`/v1/pumps/${pumpId}/chart.svg?format=csv`)).status).toBe(422);
  });
});
