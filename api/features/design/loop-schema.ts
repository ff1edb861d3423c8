/** Documents a loop whose pipes may still be lists of sizes. */
import { z } from '@hono/zod-openapi';
import type { DesignElement, DesignLoop, PipeList } from '../../../models/designs/design-loop.ts';
import { boundedList } from '../../fields/bounded-list.ts';
import { acceptedKey } from '../../fields/key-field.ts';
import { keyedUnion } from '../../fields/keyed-union.ts';
import { length } from '../../fields/lengths.ts';
import { acceptedCautions, acceptedFields } from '../../fields/record-fields.ts';
import { idOf } from '../../records/inline/stored-or-inline.ts';
import { branchWith } from '../../records/loop/branch.ts';
import { pipeSize, runElementKinds } from '../../records/loop/run-element.ts';
import { pipeworkFieldsWith } from '../../records/loop/schema.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const SIZES_MAX = 12;

const pipeList = perContext(
  (context): z.ZodType<PipeList> =>
    named(
      context,
      'PipeList',
      z.strictObject({
        pipes: described(
          context,
          boundedList(context, () => pipeSize(context), { min: 1, max: SIZES_MAX }),
          { description: `1 to ${SIZES_MAX} sizes, of which one is chosen; each needs a price.` },
        ),
        length: length(context, 'length', { description: 'The length of the pipe.', example: 2.5 }),
      }),
      { description: 'A length of pipe whose size is to be chosen.' },
    ),
);

const designElement = perContext((context) => {
  const [first, ...others] = runElementKinds(context);
  return named(
    context,
    'DesignElement',
    keyedUnion<DesignElement>(context, [{ key: 'pipes', schema: pipeList(context) }, first, ...others]),
    { description: 'A part of a run, or a pipe whose size is to be chosen.' },
  );
});

const designBranch = branchWith<DesignElement>('DesignBranch', designElement);

const pipework = perContext((context) =>
  named(
    context,
    'DesignLoop',
    z.strictObject({
      ...acceptedFields(context),
      ...acceptedCautions(context),
      ...acceptedKey(context),
      ...pipeworkFieldsWith(context, { element: designElement, branch: designBranch }),
    }),
    { description: 'A loop by its pipework, in which pipes may be lists of sizes.' },
  ),
);

const NO_CURVE = 'must be left out: a design needs pipework, not a system curve';

const noSystemCurve = () =>
  z.custom<DesignLoop>().superRefine((_, issues) => {
    issues.addIssue({ code: 'custom', path: ['systemCurve'], message: NO_CURVE });
  });

const inlineLoop = (context: SchemaContext): z.ZodType<DesignLoop> =>
  context.documented
    ? pipework(context)
    : keyedUnion<DesignLoop>(context, [
        { key: 'systemCurve', schema: noSystemCurve() },
        { key: 'discharge', schema: pipework(context) },
      ]);

export const designLoopOrId = (context: SchemaContext): z.ZodType<string | DesignLoop> =>
  z.union([idOf(context, 'loop'), inlineLoop(context)], {
    error: 'must be the id or key of a loop, or a loop',
  });
