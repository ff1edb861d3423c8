/** Documents the request for a design: a loop, pumps, prices of pipes. */
import { z } from '@hono/zod-openapi';
import { DESIGN_CANDIDATES_MAX } from '../../../models/designs/check-design.ts';
import { boundedList } from '../../fields/bounded-list.ts';
import { LIFE_CYCLE_DEFAULTS } from '../../fields/life-cycle-terms.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { enteredMoney } from '../../fields/money.ts';
import { DISCOUNT_RATE, ENERGY_INFLATION, INFLATION, LABOUR_RATE, YEARS } from '../../fields/money-fields.ts';
import { checkGrowth } from '../../fields/money-growth.ts';
import { nullable } from '../../fields/nullable.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { HOURS_DEFAULT, HOURS_PER_DAY, PRICE } from '../../fields/running-fields.ts';
import { tariffOrId } from '../../records/inline/tariff-or-id.ts';
import { limitMembers } from '../../records/loop/limits.ts';
import { pipeSize } from '../../records/loop/run-element.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import { candidates, RANKING_DEFAULT, RANKING_LIMIT } from '../recommendation/request-schema.ts';
import { designLoopOrId } from './loop-schema.ts';

/** In a pipe whose size is to be chosen [m/s]. */
export const PIPE_VELOCITY = 1.5;

const pipePrice = perContext((context) =>
  named(
    context,
    'PipePrice',
    z.strictObject({
      pipe: pipeSize(context),
      price: enteredMoney(context, { description: 'Money of one unit of length, m or ft.', example: 7.2 }),
    }),
    { description: 'What a size of pipe costs.' },
  ),
);

const designLimits = perContext((context) =>
  named(
    context,
    'DesignLimits',
    limitMembers(context).extend({
      pipeVelocity: described(
        context,
        nullable(
          entered(context, 'velocity', {
            description: 'Highest velocity in a pipe whose size is to be chosen.',
            minimum: 0,
            aboveMinimum: true,
            maximum: 100,
            example: PIPE_VELOCITY,
          }),
        ),
        {
          description: `Highest velocity in a pipe whose size is to be chosen; null: none. Default: ${PIPE_VELOCITY} m/s.`,
        },
      ).optional(),
    }),
    { description: 'What a design must keep to besides the flows of the outlets.' },
  ),
);

export const designRequest = perContext((context) =>
  named(
    context,
    'Design',
    z
      .strictObject({
        loop: designLoopOrId(context),
        pumps: candidates(context, DESIGN_CANDIDATES_MAX).optional(),
        pipePrices: described(
          context,
          boundedList(context, () => pipePrice(context), { max: LIST_MAX }),
          {
            description:
              'Prices of pipes by length; each listed size needs one, and the list may hold more. Of two prices of one size the later counts.',
          },
        ).default([]),
        trimPrice: enteredMoney(context, {
          description: 'Money of one trim valve. Default: 0.',
          example: 12,
          default: 0,
        }),
        price: numberField(context, PRICE).optional(),
        tariff: tariffOrId(context).optional(),
        hoursPerDay: numberField(context, { ...HOURS_PER_DAY, default: HOURS_DEFAULT }),
        years: wholeNumber(context, { ...YEARS, default: LIFE_CYCLE_DEFAULTS.years }),
        discountRate: numberField(context, { ...DISCOUNT_RATE, default: LIFE_CYCLE_DEFAULTS.discountRate }),
        inflation: numberField(context, { ...INFLATION, default: LIFE_CYCLE_DEFAULTS.inflation }),
        energyInflation: numberField(context, ENERGY_INFLATION).optional(),
        labourRate: numberField(context, LABOUR_RATE).optional(),
        limits: designLimits(context).optional(),
        rankingLimit: wholeNumber(context, { ...RANKING_LIMIT, default: RANKING_DEFAULT }),
        ...acceptedFields(context),
      })
      .superRefine(checkGrowth),
    { description: 'Which pipe sizes, which pump and which setting cost least over the years?' },
  ),
);

export type DesignRequest = z.output<ReturnType<typeof designRequest>>;
