/** Documents the best design in full: its sizes, its trims, its duty and its loop. */
import { z } from '@hono/zod-openapi';
import { cautionSchema } from '../../fields/caution.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pipeSize } from '../../records/loop/run-element.ts';
import { pipeworkFields } from '../../records/loop/schema.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { suctionShape } from '../duty-point/suction-schema.ts';
import { uncertaintyField } from '../duty-point/uncertainty-schema.ts';
import { rowShape } from './row-schema.ts';

export const pointerField = (context: SchemaContext, description: string) =>
  described(context, z.string(), { description, examples: ['/discharge/run/0'] });

const LIST = 'The list of sizes: a JSON pointer into the loop, where the chosen pipe is in `loop`.';

const runSchema = perContext((context) =>
  named(
    context,
    'DesignRun',
    z.strictObject({
      pointer: pointerField(context, LIST),
      pipe: pipeSize(context),
      length: computed(context, 'length', { description: 'Length of the pipe.', example: 3 }),
      velocity: computed(context, 'velocity', { description: 'Velocity in it.', example: 0.877 }),
      head: computed(context, 'head', { description: 'Head that the pipe loses.', example: 0.0648 }),
      cost: money(context, 'Of the pipe.', 21.6),
    }),
    { description: 'A pipe whose size was chosen.' },
  ),
);

const trimSchema = perContext((context) =>
  named(
    context,
    'DesignTrim',
    z.strictObject({
      pointer: pointerField(context, 'The valve in `loop`: a JSON pointer.'),
      head: nullable(
        computed(context, 'head', {
          description: 'Head that it takes away; null where it is closed.',
          example: 0.012,
        }),
      ),
      lossCoefficient: nullable(
        computedNumber(context, {
          description: 'K in the bore of the run; null where it is closed, or where no pipe gives a bore.',
          example: 1.2,
        }),
      ),
      kv: nullable(
        computedNumber(context, {
          description: 'Kv of the valve, m3/h at 1 bar; null where it is closed.',
          example: 41.5,
        }),
      ),
    }),
    { description: 'A trim valve.' },
  ),
);

const changeSchema = perContext((context) =>
  named(
    context,
    'SizeChange',
    z.strictObject({
      pointer: pointerField(context, LIST),
      direction: described(context, z.enum(['smaller', 'larger']), {
        description: '`smaller`: the next smaller size of the list. `larger`: the next larger one.',
        examples: ['larger'],
      }),
      pipe: pipeSize(context),
      candidate: described(context, z.int(), {
        description: 'Cheapest candidate then; absent where none gives the head.',
        examples: [0],
      }).optional(),
      setting: settingField(context, 'Its setting [%].', 60).optional(),
      cost: money(context, 'More for pipes than the best design; negative costs less.', 7.5).optional(),
      saving: money(
        context,
        'Less for pump and energy than the best design, present value; negative costs more.',
        4.2,
      ).optional(),
      presentValue: money(context, 'Present value of the whole cost.', 826.42).optional(),
    }),
    { description: 'What one other size would change, the other sizes kept.' },
  ),
);

const loopSchema = perContext((context) =>
  named(context, 'DesignedLoop', z.object(pipeworkFields(context)), {
    description: 'A loop with chosen sizes and trims, ready to be stored by POST /v1/loops.',
  }),
);

export const bestSchema = perContext((context) =>
  named(
    context,
    'BestDesign',
    z.strictObject({
      ...rowShape(context),
      runs: described(context, z.array(runSchema(context)), {
        description: 'One for each list of sizes: those of the suction, then each branch before the next.',
      }),
      trims: described(context, z.array(trimSchema(context)), {
        description:
          'The trim at the pump, then those of the branches; valves that take nothing are left out.',
      }),
      sizeChanges: described(context, z.array(changeSchema(context)), {
        description: 'The next smaller and the next larger size of each list that the velocity limit allows.',
      }),
      closeTo: described(context, z.array(z.int()), {
        description:
          'Candidates whose whole cost, at the low end of what the laws of power leave open, is not above that of the best at its high end.',
        examples: [[1]],
      }),
      uncertainty: uncertaintyField(context),
      ...suctionShape(context),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know about the duty; pointers lead into `loop`.',
      }),
      loop: loopSchema(context),
    }),
    { description: 'The design of least cost.' },
  ),
);
