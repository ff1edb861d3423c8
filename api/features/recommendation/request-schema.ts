/** Documents the request for a recommendation: a loop, candidates, the cost of running. */

import { z } from '@hono/zod-openapi';
import type { HeatTerms } from '../../../models/duty/heat.ts';
import { ID_MAX } from '../../fields/id-field.ts';
import { LIFE_CYCLE_DEFAULTS, lifeCycleTerms, OBJECTIVES } from '../../fields/life-cycle-terms.ts';
import { CANDIDATES_MAX } from '../../fields/limits.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { queryWhole } from '../../fields/query-field.ts';
import { COUNT, HOURS_DEFAULT, HOURS_PER_DAY, PRICE, runningQuery } from '../../fields/running-fields.ts';
import { idOf, loopOrId, pumpOrId } from '../../records/inline/stored-or-inline.ts';
import { tariffOrId } from '../../records/inline/tariff-or-id.ts';
import { limits } from '../../records/loop/limits.ts';
import { pumpInput } from '../../records/pump/schema.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { assurance } from './assurance-request.ts';

const heat = perContext(
  (context): z.ZodType<HeatTerms> =>
    named(
      context,
      'HeatTerms',
      z.strictObject({
        cop: numberField(context, {
          description: 'Coefficient of performance of the chiller or heater: heat moved over electricity.',
          minimum: 0.1,
          maximum: 100,
          example: 3,
        }),
        mode: described(context, z.enum(['cooling', 'heating']), {
          description: "Whether a chiller takes the pump's heat away, or a heater is spared it.",
          examples: ['cooling'],
        }),
        inRanking: described(context, z.boolean(), {
          description: 'Whether the ranking counts what that costs or spares; not where it is left out.',
          examples: [false],
        }).default(false),
      }),
      { description: 'Asks what the heat of a pump costs a chiller, or spares a heater.' },
    ),
);

export const RANKING_DEFAULT = 20;

export const RANKING_LIMIT = {
  description: 'How many candidates the ranking lists; 20 where it is left out.',
  minimum: 1,
  maximum: CANDIDATES_MAX,
  example: RANKING_DEFAULT,
} as const;

const balancing = (context: SchemaContext) =>
  described(context, z.enum(['as-built', 'trimmed']), {
    description: 'The pipework as it is, or with every branch throttled to its required flow.',
    examples: ['as-built'],
  });

const objective = (context: SchemaContext) =>
  described(context, z.enum(OBJECTIVES), {
    description:
      'Quantity that the ranking minimises: the annual cost of energy, or purchase, energy, service and repairs over the years of `lifeCycle`. The latter takes pumps as new and needs a price.',
    examples: ['energy-cost'],
  });

const detail = (context: SchemaContext) =>
  described(context, z.enum(['plain', 'losses']), {
    description:
      '`losses` adds where the head of the best candidate is lost, and what less of each loss saves. Each saving is a difference of whole answers: the choice is made again with all candidates. At most 500 candidates.',
    examples: ['plain'],
  });

const counted = perContext((context) =>
  named(
    context,
    'CountedPump',
    z.strictObject({
      pump: pumpOrId(context),
      count: wholeNumber(context, { ...COUNT, default: 1 }),
    }),
    { description: 'Several equal pumps in parallel.' },
  ),
);

const candidate = (context: SchemaContext) =>
  z.union([idOf(context, 'pump'), pumpInput(context), counted(context)], {
    error: 'must be the id or key of a pump, a pump, or an object with pump and count',
  });

/** The pumps of a request, `most` at most. */
export const candidates = (context: SchemaContext, most: number = CANDIDATES_MAX) =>
  described(
    context,
    z
      .array(candidate(context), {
        error: 'must be a list of pumps',
      })
      .min(1)
      .max(most),
    { description: 'The pumps to choose among; all stored pumps where it is left out.' },
  );

export const recommendationRequest = perContext((context) =>
  named(
    context,
    'Recommendation',
    z.strictObject({
      loop: loopOrId(context),
      pumps: candidates(context).optional(),
      price: numberField(context, PRICE).optional(),
      tariff: tariffOrId(context).optional(),
      currency: described(context, z.string().regex(/^[A-Z]{3}$/, 'must be three capital letters'), {
        description:
          "Currency of the price in the request (ISO 4217); it is only repeated. Without a price it must be the site's. Money is never converted.",
        examples: ['EUR'],
      }).optional(),
      hoursPerDay: numberField(context, { ...HOURS_PER_DAY, default: HOURS_DEFAULT }),
      balancing: balancing(context).default('as-built'),
      objective: objective(context).default('energy-cost'),
      lifeCycle: lifeCycleTerms(context).default(LIFE_CYCLE_DEFAULTS),
      limits: limits(context).optional(),
      assurance: assurance(context).optional(),
      heat: heat(context).optional(),
      detail: detail(context).default('plain'),
      rankingLimit: wholeNumber(context, { ...RANKING_LIMIT, default: RANKING_DEFAULT }),
    }),
    { description: 'A loop, candidates, and the terms by which they are judged and ranked.' },
  ),
);

/** The same question about a stored loop, as a query. */
export const recommendationQuery = (context: SchemaContext) =>
  z.strictObject({
    pump: described(context, z.string().min(1), {
      description: 'Ids or keys of stored pumps, separated by commas; all stored pumps where it is left out.',
      examples: ['0198c0de,0198c0df'],
    }).optional(),
    ...runningQuery(context),
    tariff: described(context, z.string().min(1).max(ID_MAX), {
      description: 'Id or key of a stored tariff, in place of `price`.',
      examples: ['0198c0de'],
    }).optional(),
    balancing: balancing(context).optional(),
    objective: objective(context).optional(),
    rankingLimit: queryWhole(context, RANKING_LIMIT).optional(),
  });
