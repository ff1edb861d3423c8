/** Fills the elements of a life-cycle cost with inks and hatchings that differ. */
import { COST_ELEMENTS, type CostElement } from '../../../models/money/option-costs.ts';
import { INKS, type Ink } from '../../drawing/kit/palette.ts';
import { type Markup, markup } from '../../drawing/markup/markup.ts';

type Hatch = 'rising' | 'level' | 'upright' | 'dots' | 'crossed';

/** Without a hatch the fill is plain. */
const FILLS = {
  purchase: { ink: 'deep' },
  installation: { ink: 'deep', hatch: 'rising' },
  energy: { ink: 'haze' },
  operation: { ink: 'ink', hatch: 'dots' },
  maintenance: { ink: 'sea' },
  downtime: { ink: 'rust', hatch: 'crossed' },
  environment: { ink: 'sea', hatch: 'level' },
  disposal: { ink: 'ink', hatch: 'upright' },
} as const satisfies Record<CostElement, { readonly ink: Ink; readonly hatch?: Hatch }>;

const HATCHES = {
  rising: 'M0 6L6 0M-1 1L1 -1M5 7L7 5',
  level: 'M0 3H6',
  upright: 'M3 0V6',
  dots: 'M2 3H4',
  crossed: 'M0 6L6 0M0 0L6 6',
} as const satisfies Record<Hatch, string>;

const patternId = (chart: string, element: CostElement): string => `${chart}-${element}`;

/** What `fillOf` refers to in the chart of this id. */
export function elementPatterns(chart: string): Markup {
  const patterns = COST_ELEMENTS.map((element) => {
    const fill: { readonly ink: Ink; readonly hatch?: Hatch } = FILLS[element];
    if (fill.hatch === undefined) return null;
    return markup`<pattern id="${patternId(chart, element)}" width="6" height="6" patternUnits="userSpaceOnUse"><rect width="6" height="6" fill="${INKS.paper}"/><path d="${HATCHES[fill.hatch]}" stroke="${INKS[fill.ink]}" stroke-width="1.6" fill="none"/></pattern>`;
  });
  return markup`<defs>${patterns}</defs>`;
}

export function fillOf(chart: string, element: CostElement): string {
  const fill: { readonly ink: Ink; readonly hatch?: Hatch } = FILLS[element];
  return fill.hatch === undefined ? INKS[fill.ink] : `url(#${patternId(chart, element)})`;
}
