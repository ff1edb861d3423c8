/** Rates at which what is foretold comes true. */
import { atLeast, percent, quantile, type RateRow, type Size, seeds, shareOf, stated } from './row.ts';
import { BANK, FLUME, LIFTED, metered, type Site } from './stations.ts';
import { answerOn, type Case, dayOfRecord, isReport, readingsOf } from './year.ts';

const BEGINS = 28;
const fault = { cause: 'clogged-discharge' } as const;

interface Growth {
  readonly name: string;
  readonly site: Site;
  readonly magnitude: (day: number) => number;
  readonly limit: number;
}

const since = (day: number) => Math.max(0, day - BEGINS);

const GROWTHS: readonly Growth[] = [
  { name: 'straight', site: FLUME, limit: 0.8, magnitude: (day) => 0.05 * (since(day) / 100) },
  { name: 'gathering speed', site: FLUME, limit: 0.75, magnitude: (day) => 0.06 * (since(day) / 120) ** 2 },
  {
    name: 'levelling off',
    site: FLUME,
    limit: 0.75,
    magnitude: (day) => 0.09 * (1 - Math.exp(-since(day) / 80)),
  },
  { name: 'straight, static head', site: LIFTED, limit: 0.8, magnitude: (day) => 0.05 * (since(day) / 100) },
  { name: 'straight, four outlets', site: BANK, limit: 0.8, magnitude: (day) => 0.05 * (since(day) / 100) },
];

/** How far above the flow of the crossing a loop begins: what is required is set so. */
const MARGIN = 0.07;

/** The same loop with requirements that the first outlet misses once the total has lost the margin. */
function demanding(site: Site): Site {
  const loop = metered(site);
  const entered = loop.shownAt(site.setting);
  const [first = 0] = entered?.outletFlows ?? [];
  const { discharge } = site.loop;
  const [branch, ...others] = discharge.branches ?? [];
  if (branch?.outlet === undefined) throw new Error('the first branch ends in an outlet');
  const outlet = { ...branch.outlet, requiredFlow: (1 - MARGIN) * first };
  const loose = (one: typeof discharge): typeof discharge => ({
    ...one,
    ...(one.outlet === undefined ? {} : { outlet: { ...one.outlet, requiredFlow: 0 } }),
    ...(one.branches === undefined ? {} : { branches: one.branches.map(loose) }),
  });
  const branches = [{ ...branch, outlet }, ...others.map(loose)];
  return {
    ...site,
    loop: { ...site.loop, name: `${site.loop.name}, demanding`, discharge: { ...discharge, branches } },
  };
}

/** Looks after the first report and before the shortfall, each held against the day on which it comes. */
function held({ site, magnitude }: Growth, size: Size) {
  const one: Case = {
    site: demanding(site),
    noise: { flow: 0.03, power: 0.01 },
    fault,
    magnitude,
    days: 300,
  };
  const loop = metered(one.site);
  const limit = loop.limitingTotal(() => true)?.flow ?? 0;
  const entered = loop.shownAt(one.site.setting)?.flow ?? 0;
  const lost = 1 - limit / entered;
  const comes =
    Array.from({ length: 4000 }, (_, day) => day).find((day) => magnitude(day) >= lost) ??
    Number.POSITIVE_INFINITY;
  return seeds(size).flatMap((seed) => {
    const readings = readingsOf(one, seed);
    const days = Array.from({ length: 30 }, (_, week) => 56 + 7 * week).filter(
      (day) => day < Math.min(comes, 300),
    );
    return days.flatMap((day) => {
      const answer = answerOn(one, readings, { day });
      const found = answer.shortfall;
      if (!isReport(answer) || found === null) return [];
      const [earliest, latest] = [
        dayOfRecord(found.earliest),
        found.latest === null ? null : dayOfRecord(found.latest),
      ];
      const holds = earliest <= comes && (latest === null || comes <= latest);
      const at = found.at === null ? null : dayOfRecord(found.at);
      return [{ holds, off: at === null ? null : Math.abs(at - comes) }];
    });
  });
}

export function shortfallRows(size: Size): readonly RateRow[] {
  return GROWTHS.flatMap((growth) => {
    const all = held(growth, size);
    const dated = all.flatMap(({ off }) => off ?? []);
    return [
      atLeast(
        `shortfall's interval holds, ${growth.name}`,
        all.map(({ holds }) => holds),
        growth.limit,
      ),
      stated(
        `shortfall dated, ${growth.name}`,
        `${percent(dated.length / Math.max(1, all.length))} of looks, median off by ${quantile(dated, 0.5).toFixed(0)} days`,
      ),
    ];
  });
}

/** What holding the flow costs, against what it costs by the true magnitude; and never beyond the highest setting. */
export function waitingRows(size: Size): readonly RateRow[] {
  const JUDGED = [91, 126, 161] as const;
  const sites = [FLUME, LIFTED, BANK];
  const all = sites.flatMap((site) =>
    seeds(size).flatMap((seed) => {
      const magnitude = (day: number) => 0.06 * (since(day) / 60);
      const one: Case = {
        site,
        noise: { flow: 0.03, power: 0.01, pressures: 0.03 },
        fault,
        magnitude,
        days: 170,
      };
      const readings = readingsOf(one, seed);
      const loop = metered(site);
      const power = loop.shownAt(site.setting)?.power ?? 0;
      const most = loop.shownAt(site.pump.settings.max)?.power ?? 0;
      return JUDGED.flatMap((day) => {
        const { waiting } = answerOn(one, readings, { day });
        if (waiting === null) return [];
        const nodes = [{ magnitude: 0, power }, ...loop.heldWith(fault)];
        const place = Math.max(
          1,
          nodes.findIndex((node) => node.magnitude >= magnitude(day)),
        );
        const [low, high] = [nodes[place - 1], nodes[place]];
        if (low === undefined || high === undefined) return [];
        const t = (magnitude(day) - low.magnitude) / (high.magnitude - low.magnitude);
        const truth = 8.76 * 0.21 * (low.power + t * (high.power - low.power) - power);
        const cap = 8.76 * 0.21 * (most - power);
        // The gain of the power meter is taken for that of the pump.
        return [{ off: waiting.annualExcessCost / truth - 1, isOver: waiting.annualExcessCost > 1.1 * cap }];
      });
    }),
  );
  return [
    atLeast(
      'excess of waiting within 30 % of the true one',
      all.map(({ off }) => Math.abs(off) < 0.3),
      0.8,
    ),
    {
      name: 'excess of waiting beyond the highest setting',
      figure: percent(shareOf(all, ({ isOver }) => isOver)),
      limit: 'never',
      holds: all.every(({ isOver }) => !isOver),
    },
  ];
}
