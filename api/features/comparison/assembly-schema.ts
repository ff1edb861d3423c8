/** Documents an assembly in requests: a pump on a loop, or on several loops joined. */
import { z } from '@hono/zod-openapi';
import { boundedList } from '../../fields/bounded-list.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { COUNT_MAX, HOURS_DEFAULT, HOURS_PER_DAY } from '../../fields/running-fields.ts';
import { loopOrId, pumpOrId } from '../../records/inline/stored-or-inline.ts';
import { intake } from '../../records/loop/intake.ts';
import { runElement, runWith } from '../../records/loop/run-element.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const JOINED_MAX = 50;

const consolidation = perContext((context) =>
  named(
    context,
    'Consolidation',
    z.strictObject({
      loops: described(
        context,
        boundedList(context, () => loopOrId(context), { min: 2, max: JOINED_MAX }),
        { description: 'Loops whose outlets one pump is to feed. Their own suctions are left out.' },
      ),
      suction: runWith(context, runElement, 'From the water to the pump.'),
      manifold: runWith(context, runElement, 'From the pump to where the loops part.'),
      intake: intake(context).optional(),
    }),
    { description: 'Several loops joined on one pump.' },
  ),
);

function holdsTogether(
  {
    loop,
    consolidate,
    pump,
    power,
    setting,
    balancing,
  }: {
    loop?: unknown;
    consolidate?: unknown;
    pump?: unknown;
    power?: unknown;
    setting?: unknown;
    balancing: string;
  },
  issues: z.RefinementCtx,
): void {
  const refuse = (path: string[], message: string) => issues.addIssue({ code: 'custom', path, message });
  if (loop !== undefined && consolidate !== undefined) refuse(['consolidate'], 'must not stand beside loop');
  if (power !== undefined && setting !== undefined) refuse(['setting'], 'must not stand beside power');
  if (setting !== undefined && balancing === 'trimmed') {
    refuse(['balancing'], 'must not be trimmed beside setting: trims are set for the setting that is found');
  }
  if (power !== undefined) return;
  if (loop === undefined && consolidate === undefined) {
    refuse([], 'must have loop or consolidate, or state its power');
  }
  if (consolidate !== undefined && pump === undefined) refuse(['pump'], 'must be stated beside consolidate');
}

const running = (context: SchemaContext) => ({
  power: entered(context, 'power', {
    description:
      'Electrical power of all its pumps, where curves are missing; nothing is then judged or solved for it.',
    minimum: 0,
    maximum: 1e9,
    example: 132,
  }).optional(),
  setting: entered(context, 'setting', {
    description:
      'The setting that it runs at. Where it is left out: that of the schedule, of a pump that is there already as it is installed, else the smallest at which every outlet is served.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 100,
    example: 70,
  }).optional(),
  hoursPerDay: numberField(context, { ...HOURS_PER_DAY, default: HOURS_DEFAULT }),
  balancing: described(context, z.enum(['as-built', 'trimmed']), {
    description: 'The pipework as it is, or with every branch throttled to its required flow.',
    examples: ['as-built'],
  }).default('as-built'),
});

export const comparisonAssembly = perContext((context) =>
  named(
    context,
    'ComparisonAssembly',
    z
      .strictObject({
        loop: loopOrId(context).optional(),
        consolidate: consolidation(context).optional(),
        pump: pumpOrId(context).optional(),
        count: wholeNumber(context, {
          description: 'Equal pumps in parallel; of the installed pump as many as are installed, else 1.',
          minimum: 1,
          maximum: COUNT_MAX,
          example: 1,
        }).optional(),
        new: described(context, z.boolean(), {
          description:
            'Whether its pumps are bought; else they are there already, at no price, with the rest of their life.',
          examples: [true],
        }).default(true),
        ageYears: numberField(context, {
          description: 'Of pumps that are there already; since `installed.since` where it is left out.',
          minimum: 0,
          maximum: 100,
          example: 3,
        }).optional(),
        riskShare: numberField(context, {
          description: 'The part of the value at risk of its option that hangs on it.',
          minimum: 0,
          maximum: 1,
          example: 0.5,
          default: 1,
        }),
        ...running(context),
      })
      .superRefine(holdsTogether),
    { description: 'A pump, or several in parallel, on a loop.' },
  ),
);
