/** Documents the elements of a run. */
import { z } from '@hono/zod-openapi';
import { LOSS_METHODS } from '../../../models/components/named-loss.ts';
import type { RunElement } from '../../../models/loop/loop.ts';
import { boundedList } from '../../fields/bounded-list.ts';
import { keyedUnion } from '../../fields/keyed-union.ts';
import { bore, length, roughness } from '../../fields/lengths.ts';
import { RUN_MAX } from '../../fields/limits.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { textField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const ELEMENT_NAME_MAX = 60;
const COEFFICIENT_MAX = 1e6;

const nameOf = (context: SchemaContext, description: string, example: string) =>
  textField(context, { description, example, maxLength: ELEMENT_NAME_MAX });

const optionalBore = (context: SchemaContext) =>
  bore(context, {
    description: "The bore that the element's velocity is taken in; without it that of the nearest pipe.",
    example: 40.4,
  }).optional();

const boreChange = (context: SchemaContext) =>
  described(context, z.boolean(), {
    description:
      'Whether it is the loss of the step between the pipes before and after it, which then costs nothing else. Default: false.',
    examples: [true],
  }).optional();

const pipeBore = perContext((context) =>
  named(
    context,
    'PipeBore',
    z.strictObject({
      insideDiameter: bore(context, { description: 'The mean bore.', example: 40.4 }),
      roughness: roughness(context).optional(),
    }),
    { description: 'A pipe that is not a standard size; its roughness is 0.0015 mm where it is not stated.' },
  ),
);

/** A pipe by its standard size or its bore. */
export const pipeSize = (context: SchemaContext) =>
  z.union([nameOf(context, 'A standard size.', 'sch80 1-1/2'), pipeBore(context)], {
    error: 'must be the name of a standard size or an object with insideDiameter',
  });

const pipe = perContext((context) =>
  named(
    context,
    'Pipe',
    z.strictObject({
      pipe: described(
        context,
        z.union([nameOf(context, 'A standard size.', 'sch80 1-1/2'), pipeBore(context)], {
          error: 'must be the name of a standard size or an object with insideDiameter',
        }),
        { description: 'Name of a standard size, or the bore of the pipe.' },
      ),
      length: length(context, 'length', { description: 'The length of the pipe.', example: 2.5 }),
    }),
    { description: 'A length of pipe.' },
  ),
);

const method = (context: SchemaContext) =>
  described(context, z.enum(LOSS_METHODS), {
    description:
      'How its loss is found, where the reference table has several methods. Default: the row that the table marks `preferred`.',
    examples: ['two-k'],
  }).optional();

const fitting = perContext((context) =>
  named(
    context,
    'Fitting',
    z.strictObject({
      fitting: nameOf(
        context,
        'A fitting of the reference table, or one of its check and foot valves.',
        'elbow-90',
      ),
      method: method(context),
      count: wholeNumber(context, {
        description: 'How many of them; 1 where it is not stated.',
        minimum: 1,
        maximum: 1000,
        example: 2,
      }).optional(),
      diameter: optionalBore(context),
    }),
    { description: 'One or more equal fittings.' },
  ),
);

const flowCoefficient = (context: SchemaContext, description: string) =>
  numberField(context, { description, minimum: 1e-6, maximum: COEFFICIENT_MAX, example: 25 });

const valveByKv = perContext((context) =>
  named(
    context,
    'ValveByKv',
    z.strictObject({ kv: flowCoefficient(context, 'Flow in m3/h at 1 bar, fully open.') }),
    { description: 'A valve known by its metric flow coefficient.' },
  ),
);

const valveByCv = perContext((context) =>
  named(
    context,
    'ValveByCv',
    z.strictObject({ cv: flowCoefficient(context, 'Flow in US gal/min at 1 psi, fully open.') }),
    { description: 'A valve known by its US flow coefficient.' },
  ),
);

const valve = perContext((context) =>
  named(
    context,
    'Valve',
    z.strictObject({
      valve: described(
        context,
        z.union(
          [
            nameOf(context, 'A valve of the reference table.', 'ball'),
            valveByKv(context),
            valveByCv(context),
          ],
          { error: 'must be the name of a valve or an object with kv or cv' },
        ),
        { description: 'Name of a valve in the reference table, or its flow coefficient.' },
      ),
      method: method(context),
      opening: entered(context, 'opening', {
        description:
          'How far it is open; default: 100. Valves opened by hand get a caution where they throttle or cavitate; check valves and foot valves do not.',
        minimum: 0,
        maximum: 100,
        example: 100,
      }).optional(),
      diameter: optionalBore(context),
    }),
    { description: 'A valve. A run with a check valve or a foot valve lets water pass one way only.' },
  ),
);

const coefficient = perContext((context) =>
  named(
    context,
    'LossByCoefficient',
    z.strictObject({
      lossCoefficient: numberField(context, {
        description: 'K of head = K v^2/2g.',
        minimum: 0,
        maximum: COEFFICIENT_MAX,
        example: 2,
      }),
      diameter: optionalBore(context),
      boreChange: boreChange(context),
    }),
    { description: 'A loss by its coefficient.' },
  ),
);

const equivalentLength = perContext((context) =>
  named(
    context,
    'LossByLength',
    z.strictObject({
      equivalentLength: length(context, 'length', {
        description: 'The length of straight pipe that loses as much.',
        example: 1.2,
      }),
      diameter: optionalBore(context),
      roughness: roughness(context).optional(),
    }),
    {
      description:
        'A loss by the length of pipe that loses as much, at the default roughness unless it states its own.',
    },
  ),
);

const lossPoint = perContext((context) =>
  named(
    context,
    'LossPoint',
    z.strictObject({
      head: entered(context, 'head', {
        description: 'Head lost at the flow.',
        minimum: 0,
        maximum: 1000,
        example: 0.6,
      }),
      flow: entered(context, 'flow', {
        description: 'The flow at which it was noted.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 10,
        example: 5000,
      }),
    }),
    { description: 'One point of a quadratic loss.' },
  ),
);

const loss = perContext((context) =>
  named(
    context,
    'LossByPoint',
    z.strictObject({ loss: lossPoint(context), boreChange: boreChange(context) }),
    {
      description: 'A loss that grows with the square of the flow, through one point.',
    },
  ),
);

/** What a run is made of, each by the key that only it has. */
export const runElementKinds = (context: SchemaContext) =>
  [
    { key: 'pipe', schema: pipe(context) },
    { key: 'fitting', schema: fitting(context) },
    { key: 'valve', schema: valve(context) },
    { key: 'lossCoefficient', schema: coefficient(context) },
    { key: 'equivalentLength', schema: equivalentLength(context) },
    { key: 'loss', schema: loss(context) },
  ] as const;

const LIST_OF_SIZES = {
  key: 'pipes',
  message: 'is accepted by POST /v1/designs alone, which chooses one of the sizes; state that size as `pipe`',
} as const;

export const runElement = perContext((context) =>
  named(context, 'RunElement', keyedUnion<RunElement>(context, runElementKinds(context), LIST_OF_SIZES), {
    description: 'A part of a run; it acts on the flow of its run.',
  }),
);

/** Elements of one kind of loop in their order. */
export const runWith = <Element>(
  context: SchemaContext,
  element: (context: SchemaContext) => z.ZodType<Element>,
  description: string,
) =>
  described(
    context,
    boundedList(context, () => element(context), { max: RUN_MAX }),
    { description },
  );
