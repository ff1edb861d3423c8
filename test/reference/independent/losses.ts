/** The head loss of one element of a run as a function of its flow. */
import type { RunElement } from '../../../models/loop/loop.ts';
import { standardBore } from './bore.ts';
import { pipeLoss, type TurbulentFactor } from './friction.ts';

export const GRAVITY = 9.80665;
const DEFAULT_ROUGHNESS = 1.5e-6;

export type Loss = (flow: number) => number;

/** K = n fT, the handbook's clean-steel turbulence factor fT in the element's own bore. */
const TURBULENT_LENGTHS: ReadonlyMap<string, number> = new Map([
  ['elbow-90', 30],
  ['elbow-45', 16],
  ['tee-run', 20],
  ['tee-branch', 60],
  ['ball', 3],
  ['gate', 8],
]);

export function namedCoefficient(name: string, diameter: number): number {
  const lengths = TURBULENT_LENGTHS.get(name);
  if (lengths === undefined) throw new Error(`no loss coefficient for ${name} in the reference table`);
  return (lengths * 0.25) / Math.log10(4.57e-5 / (3.7 * diameter)) ** 2;
}

/** K v|v|/2g as c in c Q|Q|, over `count` equal openings of the diameter. */
export const quadraticFactor = (coefficient: number, diameter: number, count = 1): number =>
  coefficient / (2 * GRAVITY * (count * (Math.PI / 4) * diameter ** 2) ** 2);

export const quadratic =
  (factor: number): Loss =>
  (flow) =>
    factor * flow * Math.abs(flow);

/** Bore [m] of a pipe element, nothing for any other. */
export function pipeBore(element: RunElement): number | undefined {
  if (!('pipe' in element)) return undefined;
  return typeof element.pipe === 'string' ? standardBore(element.pipe) : element.pipe.insideDiameter;
}

export const isShut = (element: RunElement): boolean => 'valve' in element && element.opening === 0;

/** Loss at a signed flow; `bore` finds the diameter where the element states none. */
export function elementLoss(
  element: RunElement,
  bore: () => number,
  viscosity: number,
  turbulentFactor?: TurbulentFactor,
): Loss {
  if ('pipe' in element) {
    const diameter = bore();
    const stated = typeof element.pipe === 'string' ? undefined : element.pipe.roughness;
    const pipe = { length: element.length, diameter, roughness: stated ?? DEFAULT_ROUGHNESS, viscosity };
    return (flow) => pipeLoss(pipe, flow, turbulentFactor);
  }
  if ('loss' in element) return quadratic(element.loss.head / element.loss.flow ** 2);
  if ('valve' in element) return valveLoss(element, bore);
  const diameter = element.diameter ?? bore();
  if ('fitting' in element) {
    const each = namedCoefficient(element.fitting, diameter);
    return quadratic(quadraticFactor((element.count ?? 1) * each, diameter));
  }
  if ('lossCoefficient' in element) return quadratic(quadraticFactor(element.lossCoefficient, diameter));
  const roughness = element.roughness ?? DEFAULT_ROUGHNESS;
  const pipe = { length: element.equivalentLength, diameter, roughness, viscosity };
  return (flow) => pipeLoss(pipe, flow, turbulentFactor);
}

/** Kv [m3/h at 1 bar of water of 1000 kg/m3]; Cv = 1.15609923 Kv (IEC 60534-2-1). */
function valveLoss(element: Extract<RunElement, { valve: unknown }>, bore: () => number): Loss {
  const opening = element.opening ?? 100;
  if (opening !== 100 && opening !== 0) throw new Error('the reference knows valves only open or shut');
  if (typeof element.valve === 'string') {
    const diameter = element.diameter ?? bore();
    return quadratic(quadraticFactor(namedCoefficient(element.valve, diameter), diameter));
  }
  const kv = 'kv' in element.valve ? element.valve.kv : element.valve.cv / 1.15609923;
  return quadratic((1e5 / (1000 * GRAVITY)) * (3600 / kv) ** 2);
}
