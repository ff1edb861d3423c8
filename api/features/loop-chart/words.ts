/** Describes the chart of a loop in words. */

import type { LegendRow } from '../../drawing/kit/legend.ts';
import { plainName, shortName } from '../../drawing/markup/name-text.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { BEYOND_LINE, PUMP_LINE } from '../pump-curves/pump-line.ts';
import type { LoopFigures, SettingOrigin, ShownPump } from './figures.ts';
import { measuredLegend } from './measured-marks.ts';
import { DUTY, OTHER_CROSSING, REQUIRED, SYSTEM_LINE } from './styles.ts';

const ORIGINS = {
  asked: 'as asked for',
  installed: 'as installed',
  recommended: 'as recommended',
  highest: 'the highest',
} as const satisfies Record<SettingOrigin, string>;

const pumpWords = ({ duty: { count, setting }, model }: ShownPump, name: (text: string) => string): string =>
  `${count === 1 ? '' : `${count} x `}${name(model.entered.name)} at setting ${sayNumber(setting)} %`;

export function loopSubtitle({ shown }: LoopFigures): string {
  if (shown === null) return 'No pump is installed, and none that is stored serves: the system alone';
  return `${pumpWords(shown, shortName)}, ${ORIGINS[shown.origin]}`;
}

function dutyWords({ duty }: ShownPump, { system }: LoopFigures): string {
  const { flow, head, power, efficiency } = duty;
  const share = `${sayNumber(100 * efficiency, 3)} % wire to water`;
  return `duty point: ${say(flow, 'flow', system)} at ${say(head, 'head', system)}, drawing ${say(power, 'power', system)} (${share})`;
}

const requiredWords = ({ required, system }: LoopFigures, name: (text: string) => string): string =>
  required === null
    ? ''
    : `needed: ${say(required.flow, 'flow', system)} at ${say(required.head, 'head', system)}, where ${name(required.limitingOutlet)} just gets its flow`;

function uncertaintyWords({ duty: { uncertainty } }: ShownPump, { system }: LoopFigures): string {
  const { grade, flow } = uncertainty;
  const cause = grade === null ? '' : `acceptance grade ${grade} and `;
  const range = `flow from ${say(flow.low, 'flow', system)} to ${say(flow.high, 'flow', system)}`;
  return `where the pump curve may lie, by ${cause}the scatter of its points: ${range}`;
}

export function loopLegend(
  figures: LoopFigures,
  {
    isBeyond,
    isUncertain,
    isCrossedAgain,
  }: { readonly isBeyond: boolean; readonly isUncertain: boolean; readonly isCrossedAgain: boolean },
): readonly LegendRow[] {
  const { shown, required, needed } = figures;
  const rows: LegendRow[] = [];
  if (shown !== null) {
    rows.push({ sample: { mark: DUTY }, text: dutyWords(shown, figures) });
    rows.push({ sample: { line: PUMP_LINE }, text: pumpWords(shown, shortName) });
    if (isBeyond)
      rows.push({ sample: { line: BEYOND_LINE }, text: 'the same beyond its entered points: a guess' });
    if (isUncertain) rows.push({ sample: { band: 'haze' }, text: uncertaintyWords(shown, figures) });
  }
  if (needed.length > 0)
    rows.push({ sample: { line: SYSTEM_LINE }, text: 'system curve: the head that the loop needs' });
  if (required !== null) rows.push({ sample: { mark: REQUIRED }, text: requiredWords(figures, shortName) });
  if (isCrossedAgain) {
    rows.push({
      sample: { mark: OTHER_CROSSING },
      text: 'where the curves meet again: not where a pump from rest arrives',
    });
  }
  return [...rows, ...measuredLegend(figures)];
}

export function loopDescription(figures: LoopFigures): string {
  const { shown, required, loopName, measured } = figures;
  return [
    `Head over total flow of ${plainName(loopName)}.`,
    shown === null ? 'No pump is shown.' : `Pump: ${pumpWords(shown, plainName)}, ${ORIGINS[shown.origin]}.`,
    ...(shown === null ? [] : [`The ${dutyWords(shown, figures)}.`]),
    ...(required === null ? [] : [`What is ${requiredWords(figures, plainName)}.`]),
    ...(measured.length === 0 ? [] : [`${measured.length} measurements are marked.`]),
  ].join(' ');
}
