/** Documents the tree of branches of a loop. */
import { z } from '@hono/zod-openapi';
import type { Branch, RunElement } from '../../../models/loop/loop.ts';
import { boundedList } from '../../fields/bounded-list.ts';
import { BRANCHES_MAX } from '../../fields/limits.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { outlet } from './outlet.ts';
import { runElement, runWith } from './run-element.ts';

const splitField = (context: SchemaContext) =>
  described(context, z.literal('tee-90'), {
    description:
      'The branches lose what a 90 degree tee costs by its bores and the division of its flow, the first branch being the straight run; no split loss without it.',
    examples: ['tee-90'],
  });

function endsOnce(
  branch: { outlet?: unknown; branches?: unknown; split?: unknown },
  issues: z.RefinementCtx,
): void {
  const refuse = (path: string[], message: string) => issues.addIssue({ code: 'custom', path, message });
  if (branch.outlet === undefined && branch.branches === undefined)
    refuse([], 'must have outlet or branches');
  if (branch.outlet !== undefined && branch.branches !== undefined) {
    refuse(['outlet'], 'excludes branches; state one');
  }
  if (branch.split !== undefined && branch.branches === undefined) refuse(['split'], 'needs branches');
}

/** A branch whose runs are made of other elements than those of stored loops. */
export interface BranchOf<Element> extends Omit<Branch, 'run' | 'branches'> {
  readonly run: readonly Element[];
  readonly branches?: readonly BranchOf<Element>[] | undefined;
}

type ElementSchema<Element> = (context: SchemaContext) => z.ZodType<Element>;

const shape = <Element>(
  context: SchemaContext,
  element: ElementSchema<Element>,
  self: () => z.ZodType<BranchOf<Element>>,
) =>
  z.strictObject({
    run: runWith(context, element, 'What the water passes, in order.'),
    outlet: outlet(context).optional(),
    get branches() {
      return described(context, boundedList(context, self, { min: 1, max: BRANCHES_MAX }), {
        description: 'Branches that the run splits into; excludes `outlet`.',
      }).optional();
    },
    split: splitField(context).optional(),
    highestElevation: entered(context, 'elevation', {
      description:
        'Highest point of the run above the surface drawn from. It shows whether the line takes in air, and whether its pressure falls below that of the atmosphere.',
      minimum: -1000,
      maximum: 1000,
      example: 1.5,
    }).optional(),
  });

/** What was stored held together when it was read: a check while encoding would encode each level twice, and 32 levels 2^32 times. */
const held = <Element>(
  context: SchemaContext,
  branch: ReturnType<typeof shape<Element>>,
): ReturnType<typeof shape<Element>> => (context.side === 'answer' ? branch : branch.superRefine(endsOnce));

/** The tree under a name of its own in the document. */
export const branchWith = <Element>(name: string, element: ElementSchema<Element>) =>
  perContext((context): z.ZodType<BranchOf<Element>> => {
    const self: z.ZodType<BranchOf<Element>> = named(
      context,
      name,
      held(
        context,
        shape(context, element, () => self),
      ),
      { description: 'A run that ends in an outlet or splits into branches.' },
    );
    return self;
  });

export const branch = branchWith<RunElement>('Branch', runElement);
