/**
 * Two loops with sizes to be chosen, worked out by an enumeration of all sizes, pumps and settings that was programmed apart
 * from the service.
 */
import type { DesignElement, DesignLoop, PipeList } from '../../models/designs/design-loop.ts';
import type { Branch, RunElement } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';

const LITRE_PER_HOUR = 1 / 3.6e6;

/** Money a metre by bore [mm]. */
const PRICES: ReadonlyMap<number, number> = new Map([
  [21.2, 2.4],
  [27.2, 3.3],
  [34, 4.7],
  [42.6, 7.2],
  [53.6, 10.9],
  [63.8, 15.6],
]);

const bore = (millimetres: number) => ({ insideDiameter: millimetres / 1000 });

export const prices = [...PRICES].map(([millimetres, price]) => ({ pipe: bore(millimetres), price }));

const list = (bores: readonly number[], length: number): PipeList => ({ pipes: bores.map(bore), length });

const coefficient = (lossCoefficient: number): RunElement => ({ lossCoefficient });

const outlet = (name: string, litresPerHour: number, staticHead = 0): NonNullable<Branch['outlet']> => ({
  ...{ name, requiredFlow: litresPerHour * LITRE_PER_HOUR },
  ...(staticHead === 0 ? {} : { staticHead }),
});

const loopOf = (
  name: string,
  { suction, discharge }: { readonly suction: number; readonly discharge: DesignLoop['discharge'] },
): DesignLoop => ({
  name,
  water: { temperature: 25, salinity: 35 },
  ...{ staticHead: 0, pumpElevation: 0, frictionMultiplier: 1, intake: { lossCoefficient: 0.5 } },
  suction: [{ pipe: bore(suction), length: 1 }],
  discharge,
});

interface Figures {
  readonly name: string;
  readonly largest: number;
  readonly shutoff: number;
  /** Head [m] at the largest flow [L/h]. */
  readonly head: number;
  readonly power: number;
  readonly price: number;
  readonly lifeYears: number;
}

/** H = H0 - a Q^2 and P = W r^3, entered at points that they pass through exactly. */
const pumpOf = ({ name, largest, shutoff, head, power, price, lifeYears }: Figures): Pump => ({
  name,
  headPoints: [0, 0.25, 0.5, 0.75, 1].map((share) => ({
    flow: share * largest * LITRE_PER_HOUR,
    head: shutoff - (shutoff - head) * share ** 2,
    setting: 100,
  })),
  powerPoints: [100, 80, 60, 40].map((setting) => ({ setting, power: power * (setting / 100) ** 3 })),
  settings: { min: 30, max: 100, step: 1 },
  ...{ standbyPower: 0, price, expectedLifeYears: lifeYears },
});

const small = pumpOf({
  ...{ name: 'Small', largest: 7000, shutoff: 4, head: 1.2, power: 85, price: 190, lifeYears: 5 },
});
const large = pumpOf({
  ...{ name: 'Large', largest: 12_000, shutoff: 6.5, head: 2.5, power: 260, price: 520, lifeYears: 10 },
});

export interface WorkedRow {
  readonly candidate: number;
  readonly setting: number;
  /** Bores [mm] by list. */
  readonly bores: readonly number[];
  readonly presentValue: number;
}

export interface WorkedDesign {
  readonly loop: DesignLoop;
  readonly candidates: readonly { readonly pump: Pump; readonly count: number }[];
  readonly terms: {
    readonly years: number;
    readonly discountRate: number;
    readonly inflation: number;
    readonly energyInflation: number;
    readonly price: number;
    readonly pipeVelocity: number;
    readonly trimPrice: number;
  };
  /** Heads [m], power [W]. */
  readonly best: WorkedRow & {
    readonly requiredHead: number;
    readonly head: number;
    readonly power: number;
    readonly pumpCost: number;
    readonly energyCost: number;
    readonly pipeCost: number;
    readonly trimCost: number;
  };
  readonly others: readonly WorkedRow[];
}

const four = [34, 42.6, 53.6, 63.8];

const one: WorkedDesign = {
  loop: loopOf('one run', {
    suction: 63.8,
    discharge: { run: [list(four, 15), coefficient(4)], outlet: outlet('end', 5000, 1) },
  }),
  candidates: [
    { pump: small, count: 1 },
    { pump: large, count: 1 },
  ],
  terms: {
    ...{ years: 10, discountRate: 0.04, inflation: 0.02, energyInflation: 0.03 },
    ...{ price: 0.25, pipeVelocity: 3, trimPrice: 12 },
  },
  best: {
    ...{ candidate: 0, setting: 82, bores: [53.6], requiredHead: 1.22771, head: 1.26103, power: 46.8663 },
    ...{ pumpCost: 362.42, energyCost: 973.63, pipeCost: 163.5, trimCost: 12, presentValue: 1511.55 },
  },
  others: [{ candidate: 1, setting: 53, bores: [63.8], presentValue: 1570.14 }],
};

const narrow = [21.2, 27.2, 34, 42.6];
const run = (length: number, lossCoefficient: number): readonly DesignElement[] => [
  list(narrow, length),
  coefficient(lossCoefficient),
];

const two: WorkedDesign = {
  loop: loopOf('two splits', {
    suction: 53.6,
    discharge: {
      run: run(3, 2),
      branches: [
        { run: run(9, 3), outlet: outlet('far', 1800) },
        {
          run: run(2, 1),
          branches: [
            { run: run(1, 2), outlet: outlet('left', 1200) },
            { run: run(4, 2), outlet: outlet('right', 1500) },
          ],
        },
      ],
    },
  }),
  candidates: [
    { pump: small, count: 1 },
    { pump: large, count: 1 },
    { pump: small, count: 2 },
  ],
  terms: {
    ...{ years: 8, discountRate: 0.05, inflation: 0.02, energyInflation: 0.04 },
    ...{ price: 0.3, pipeVelocity: 2.5, trimPrice: 15 },
  },
  best: {
    ...{ candidate: 0, setting: 61, bores: [42.6, 34, 34, 27.2, 34] },
    ...{ requiredHead: 0.322281, head: 0.33428, power: 19.2934 },
    ...{ pumpCost: 294.09, energyCost: 388.62, pipeCost: 95.4, trimCost: 45, presentValue: 823.12 },
  },
  others: [
    { candidate: 1, setting: 35, bores: [42.6, 42.6, 42.6, 34, 42.6], presentValue: 841.37 },
    { candidate: 2, setting: 36, bores: [42.6, 42.6, 42.6, 34, 42.6], presentValue: 927.25 },
  ],
};

export const workedDesigns: readonly WorkedDesign[] = [one, two];
