/** Documents the request for a bill of materials. */

import { z } from '@hono/zod-openapi';
import { boundedList } from '../../fields/bounded-list.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { enteredMoney } from '../../fields/money.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { textField } from '../../fields/text-field.ts';
import { loopOrId } from '../../records/inline/stored-or-inline.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';

const price = perContext((context) =>
  named(
    context,
    'MaterialPrice',
    z.strictObject({
      name: textField(context, {
        description: 'The name of the material as the bill gives it.',
        example: 'pipe, sch80 1-1/2',
        maxLength: 200,
      }),
      price: enteredMoney(context, {
        description:
          'Money of one piece; of a pipe, of one unit of length (m or ft), or of one length as it is sold.',
        example: 14.5,
      }),
      soldBy: entered(context, 'length', {
        description: 'The length in which alone a pipe is sold; whole ones are bought.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 1000,
        example: 3,
      }).optional(),
    }),
    { description: 'What one material costs.' },
  ),
);

export const billRequest = perContext((context) =>
  named(
    context,
    'BillOfMaterialsRequest',
    z.strictObject({
      loop: loopOrId(context),
      prices: described(
        context,
        boundedList(context, () => price(context), { max: LIST_MAX }),
        { description: 'A price list; it may hold more than the loop needs. Without one nothing is priced.' },
      ).default([]),
      ...acceptedFields(context),
    }),
    { description: 'A loop whose pipework is known, and a price list.' },
  ),
);
