/** Selection among a thousand pumps against as many duty points that share nothing. */
import { dutyPoint } from '../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../models/loop/limits.ts';
import type { CompiledLoop } from '../../models/network/compiled-loop.ts';
import { compileLoop } from '../../models/network/compiled-loop.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../models/pump/pump-model.ts';
import { gridSize, settingAt } from '../../models/pump/settings-grid.ts';
import { balancedLoop } from '../../models/selection/balanced-loop.ts';
import { type Selection, select } from '../../models/selection/select.ts';
import { expectValue } from '../curves/expect-value.ts';
import { drawsFrom, mulberry32 } from '../random/draw.ts';
import { agree } from './agree.ts';
import { type BenchRow, benchRow } from './bench-row.ts';
import { takeTurns } from './take-turns.ts';
import { thousandPumps } from './thousand-pumps.ts';
import { twelveOutlets } from './twelve-outlets.ts';

const ROUNDS = 9;
/** Selections a round, so that both sides run about as long, and are compiled as they would be in a service. */
const SELECTIONS = 6;
const RUNNING = { price: 0.21, hoursPerDay: 24, elevation: 0 };
/** Fewest of each kind among the thousand, so that neither side is a caricature. */
const FEWEST = 150;

const compiled = (): CompiledLoop => expectValue(compileLoop(twelveOutlets));

/** Everything from the loop's document on, its samples included. */
function selectAmong(pumps: readonly PumpModel[]): Selection {
  const { sampled } = expectValue(balancedLoop(compiled(), 'as-built'));
  const candidates = pumps.map((pump) => ({ pump, count: 1 }));
  return select({ sampled, candidates, limits: DEFAULT_LIMITS, running: RUNNING });
}

/** One setting of each pump's grid, drawn from a seed. */
function drawnSettings(pumps: readonly PumpModel[]): readonly number[] {
  const draw = drawsFrom(mulberry32(1));
  return pumps.map(({ entered: { settings } }) => settingAt(settings, draw.whole(0, gridSize(settings) - 1)));
}

function coldDutyPoints(pumps: readonly PumpModel[], settings: readonly number[]): void {
  for (const [place, pump] of pumps.entries()) {
    dutyPoint(compiled(), pumpAtSetting(pump, { setting: settings[place] ?? 100, count: 1 }));
  }
}

/** Every duty of the ranking is the one that the pump has by itself. */
function checkRanking(pumps: readonly PumpModel[], { ranking, rejected }: Selection): void {
  if (Math.min(ranking.length, rejected.length) < FEWEST) {
    throw new Error(`${ranking.length} pumps serve and ${rejected.length} do not: too few of one kind`);
  }
  const loop = compiled();
  for (const { candidate, duty } of ranking) {
    const pump = pumps[candidate];
    if (pump === undefined) throw new Error(`there is no candidate ${candidate}`);
    const alone = dutyPoint(loop, pumpAtSetting(pump, { setting: duty.setting, count: 1 }));
    agree(duty.flow, alone.flow, 1e-8);
    agree(duty.power, alone.power, 1e-8);
  }
}

export async function selectionBench(): Promise<readonly BenchRow[]> {
  const pumps = thousandPumps();
  const settings = drawnSettings(pumps);
  const selection = selectAmong(pumps);
  checkRanking(pumps, selection);
  const { first, second, ratio } = takeTurns({
    first: () => selectAmong(pumps),
    firstRuns: SELECTIONS,
    second: () => coldDutyPoints(pumps, settings),
    rounds: ROUNDS,
  });
  const { ranking, rejected } = selection;
  return [
    benchRow({
      name: 'selection among 1000 pumps / 1000 cold duty points, 12 outlets',
      ratio,
      limit: { atMost: 0.2 },
      detail: `selection ${first.toFixed(1)} ms (${ranking.length} serve, ${rejected.length} do not), duty points ${second.toFixed(1)} ms`,
    }),
  ];
}
