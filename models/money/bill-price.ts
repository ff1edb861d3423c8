/** Prices a bill of materials by a list of prices. */
import type { Material } from './bill-of-materials.ts';

/** A price of one piece; of a pipe, of a metre, or of a length in which alone it is sold. */
export interface MaterialPrice {
  readonly name: string;
  /** [money] */
  readonly price: number;
  /** Length in which alone it is sold [m]; undefined: by the metre. */
  readonly soldBy?: number | undefined;
}

export interface PricedMaterial extends Material {
  /** Pieces to buy [-]; of a pipe sold by the metre null. */
  readonly bought: number | null;
  /** [money]; null where the list has no price. */
  readonly cost: number | null;
}

/** A length that floating point carries over a whole number of pieces needs no further one. */
const SLIVER = 1e-9;

function priced(material: Material, price: MaterialPrice | undefined): PricedMaterial {
  const { length, count } = material;
  const { soldBy } = price ?? {};
  const pieces = soldBy === undefined || length === null ? null : Math.ceil(length / soldBy - SLIVER);
  const bought = length === null ? count : pieces;
  const cost = price === undefined ? null : price.price * (bought ?? length ?? 0);
  return { ...material, bought, cost };
}

/**
 * What a bill costs by a list of prices.
 *
 * @returns total [money], of the materials that have a price, null where none has. Of two prices of one name the last
 *   counts.
 */
export function priceBill(
  materials: readonly Material[],
  prices: readonly MaterialPrice[],
): {
  readonly materials: readonly PricedMaterial[];
  readonly total: number | null;
  readonly unpriced: readonly string[];
} {
  const byName = new Map(prices.map((price) => [price.name, price]));
  const all = materials.map((material) => priced(material, byName.get(material.name)));
  return {
    materials: all,
    total: all.some(({ cost }) => cost !== null) ? all.reduce((sum, { cost }) => sum + (cost ?? 0), 0) : null,
    unpriced: all.filter(({ cost }) => cost === null).map(({ name }) => name),
  };
}
