/** Documents a loop in requests and answers. */
import { z } from '@hono/zod-openapi';
import type { Loop, RunElement } from '../../../models/loop/loop.ts';
import { acceptedKey, answeredKey } from '../../fields/key-field.ts';
import { keyedUnion } from '../../fields/keyed-union.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedCautions, acceptedFields, recordFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { entryCautions } from '../entry-cautions.ts';
import { powerCutFields } from './basin.ts';
import { type BranchOf, branch } from './branch.ts';
import { checkBranches, checkShares } from './checks.ts';
import { gauges } from './gauges.ts';
import { installed } from './installed.ts';
import { intake } from './intake.ts';
import { limits } from './limits.ts';
import { meters } from './meters.ts';
import { shareOutlet } from './outlet.ts';
import { runElement, runWith } from './run-element.ts';
import { systemCurve } from './system-curve.ts';
import { tank } from './tank.ts';
import { water } from './water.ts';

const commonFields = (context: SchemaContext) => ({
  name: nameField(context, {
    description: 'A name, 1 to 120 characters, not unique.',
    example: 'Kelp flume',
  }),
  water: water(context),
  pumpElevation: entered(context, 'elevation', {
    description: "The pump's centreline above the surface drawn from; negative is flooded.",
    minimum: -1000,
    maximum: 1000,
    example: -0.6,
    default: 0,
  }),
  tank: tank(context).optional(),
  intake: intake(context).optional(),
  ...powerCutFields(context),
  gauges: gauges(context).optional(),
  meters: meters(context).optional(),
  frictionMultiplier: numberField(context, {
    description:
      'Multiplies the loss of every run element, of steps of bore, of splits and of a system curve.',
    minimum: 0.01,
    maximum: 100,
    example: 1,
    default: 1,
  }),
  installed: installed(context).optional(),
  limits: limits(context).optional(),
});

/** Schemas of the runs of a loop. */
interface Runs<Element> {
  readonly element: (context: SchemaContext) => z.ZodType<Element>;
  readonly branch: (context: SchemaContext) => z.ZodType<BranchOf<Element>>;
}

const STORED_RUNS: Runs<RunElement> = { element: runElement, branch };

const suction = <Element>(context: SchemaContext, { element }: Runs<Element>) => {
  const run = runWith(context, element, 'What the water passes from intake to pump.');
  return context.side === 'answer' ? run : run.default([]);
};

/** The members of a loop that is known by its pipework. */
export const pipeworkFieldsWith = <Element>(context: SchemaContext, runs: Runs<Element>) => ({
  ...commonFields(context),
  staticHead: entered(context, 'head', {
    description: 'Rise from the surface drawn from to the surface delivered to.',
    minimum: -1000,
    maximum: 1000,
    example: 0,
    default: 0,
  }),
  boreChanges: described(context, z.enum(['abrupt', 'ignored']), {
    description:
      '`abrupt`: a step of bore between two pipes of a run costs head as a sudden one where no reducer, enlargement or loss with boreChange is entered for it. `ignored`: it costs nothing. Default: abrupt.',
    examples: ['abrupt'],
  }).optional(),
  suction: suction(context, runs),
  discharge:
    context.side === 'answer' ? runs.branch(context) : runs.branch(context).superRefine(checkBranches),
});

/** The same of a loop that can be stored. */
export const pipeworkFields = (context: SchemaContext) => pipeworkFieldsWith(context, STORED_RUNS);

const curveFields = (context: SchemaContext) => ({
  ...commonFields(context),
  systemCurve: systemCurve(context),
  outlets: described(context, z.array(shareOutlet(context)).min(1).max(LIST_MAX).superRefine(checkShares), {
    description: 'Where the flow leaves, in shares that add up to 1.',
  }),
});

/** The two kinds of loop with the same further fields, each under its name. */
function kinds<Further extends z.ZodRawShape>(
  context: SchemaContext,
  { suffix, further }: { suffix: string; further: Further },
) {
  const pipework = z.strictObject({ ...further, ...pipeworkFields(context) });
  const curve = z.strictObject({ ...further, ...curveFields(context) });
  type Kinds = typeof pipework | typeof curve;
  const byPipework = named(context, `PipeworkLoop${suffix}`, pipework, {
    description: 'A loop by its pipework.',
  });
  const byCurve = named(context, `SystemCurveLoop${suffix}`, curve, {
    description: 'A loop whose pipework is not known, by its system curve.',
  });
  return keyedUnion<z.output<Kinds>, z.input<Kinds>>(context, [
    { key: 'systemCurve', schema: byCurve },
    { key: 'discharge', schema: byPipework },
  ]);
}

/** A loop as it is entered. */
export const loopInput = perContext(
  (context): z.ZodType<Loop> =>
    named(
      context,
      'Loop',
      kinds(context, {
        suffix: '',
        further: { ...acceptedFields(context), ...acceptedCautions(context), ...acceptedKey(context) },
      }),
      {
        description: 'A loop as its user enters it.',
      },
    ),
);

/** A stored loop in a list. */
export const loopItem = perContext((context) =>
  named(
    context,
    'Loop.listed',
    kinds(context, { suffix: '.listed', further: { ...recordFields(context), ...answeredKey(context) } }),
    {
      description: 'A stored loop in a list.',
    },
  ),
);

/** A stored loop. */
export const loopAnswer = perContext((context) =>
  named(
    context,
    'Loop',
    kinds(context, {
      suffix: '',
      further: {
        ...recordFields(context),
        ...answeredKey(context),
        cautions: entryCautions(context).optional(),
        units: unitsField(context),
      },
    }),
    { description: 'A stored loop.' },
  ),
);

export const loopList = perContext((context) => listSchema(context, 'LoopList', loopItem(context)));
