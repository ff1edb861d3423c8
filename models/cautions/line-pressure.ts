/** Gives the cautions about the pressure inside a line: at its highest point, and when a valve closes at once. */
import { at } from '../../curves/at.ts';
import { findPipe } from '../components/pipe-sizes.ts';
import { pressureRating } from '../components/pressure-rating.ts';
import { surgePressure } from '../components/pressure-wave.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { elementStates } from '../network/element-states.ts';
import type { Network } from '../network/network.ts';
import type { NetworkSolution } from '../network/solve-network.ts';
import { velocityIn } from '../network/velocity-in.ts';
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { vapourPressure } from '../physics/vapour-pressure.ts';
import { type CautionOf, type Place, topic } from './topic.ts';

export const LINE_PRESSURE = topic({
  'line-pressure': {
    severity: 'warning',
    sentence:
      'At the highest point of a line the pressure is below that of the air: it draws in air through any leak or vent. Lower the line, or throttle behind it.',
    source: 'network solution against the highest elevation as entered',
  },
  'line-vaporises': {
    severity: 'danger',
    sentence:
      'At the highest point of a line the pressure is below that at which the water boils: the column breaks and closes with a blow. Lower the line, or throttle behind it.',
    source: 'network solution against the highest elevation as entered',
  },
  surge: {
    severity: 'note',
    sentence:
      'If a valve stopped the water at once, the pressure would rise above what the pipe is made for. Close valves slowly, and let a pump run down before a solenoid valve closes.',
    source: 'Korteweg and Joukowsky; rating of the pipe by ASTM D1785 or its PN, in cold water',
  },
});

/** Pressures below this are rounding [Pa]. */
const ROUNDING = 1e-3;

type LineCaution = CautionOf<typeof LINE_PRESSURE>;

/** Judges the pressures of a solved state that moves water; `elevation` of the site above sea level [m]. */
export function linePressureCautions(
  loop: CompiledLoop,
  { state, deadHead }: Pick<ExactDuty, 'state' | 'deadHead'>,
  elevation: number,
): readonly LineCaution[] {
  const solution = state?.network;
  const { network } = loop;
  if (network === null || deadHead || solution === null || solution === undefined) return [];
  return [
    ...highestPoints(loop, network, { solution, elevation }),
    ...surges(network, solution, loop.water.density),
  ];
}

function highestPoints(
  { entered, water }: CompiledLoop,
  { branches }: Network,
  {
    solution: { flows, heads },
    elevation,
  }: { readonly solution: NetworkSolution; readonly elevation: number },
): readonly LineCaution[] {
  const boiling = vapourPressure(entered.water.temperature) - atmosphericPressure(elevation);
  const places = branches.flatMap((branch, b) => {
    const { highestElevation, shut, elements, farBore, path } = branch;
    if (highestElevation === null || shut) return [];
    const flow = at(flows, b);
    const exit = elements.filter(({ kind }) => kind === 'outlet');
    const head = exit.reduce((sum, { resistance }) => sum + resistance.lossAt(flow).head, at(heads, b));
    const velocity = farBore === null ? 0 : velocityIn(farBore, flow);
    const value = water.density * GRAVITY * (head - highestElevation - velocity ** 2 / (2 * GRAVITY));
    return [{ pointer: pointerTo(path), value }];
  });
  const placed = (limit: number, { pointer, value }: (typeof places)[number]): Place => ({
    ...{ subject: pointer, pointer, value, limit, quantity: 'pressure', excess: -value },
  });
  const isBoiling = ({ value }: { readonly value: number }) => value <= boiling;
  const low = places.filter((place) => place.value < -ROUNDING && !isBoiling(place));
  return [
    ...LINE_PRESSURE.worst(
      'line-vaporises',
      places.filter(isBoiling).map((place) => placed(boiling, place)),
    ),
    ...LINE_PRESSURE.worst(
      'line-pressure',
      low.map((place) => placed(0, place)),
    ),
  ];
}

function surges(network: Network, solution: NetworkSolution, density: number): readonly LineCaution[] {
  const places = elementStates(network, solution).flatMap(({ element, branch, flow, headBefore, bore }) => {
    const size = element.kind === 'pipe' && element.name !== null ? findPipe(element.name) : undefined;
    if (size === undefined || branch === null || branch.shut || bore === null) return [];
    const velocity = velocityIn(bore, flow);
    const value = density * GRAVITY * headBefore + surgePressure(size, { density, velocity });
    const limit = pressureRating(size);
    if (!(value > limit)) return [];
    const pointer = pointerTo(element.path);
    return [
      { subject: pointer, pointer, value, limit, quantity: 'pressure', excess: value / limit } as const,
    ];
  });
  return LINE_PRESSURE.worst('surge', places);
}
