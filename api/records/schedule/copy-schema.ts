/** Documents a stored schedule as it was entered, without its figures. */
import { z } from '@hono/zod-openapi';
import { recordFields } from '../../fields/record-fields.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import { emergencyShape, phaseShape, scheduleTariff } from './schema.ts';

const phaseItem = perContext((context) =>
  named(context, 'PhaseItem', z.strictObject(phaseShape(context)), {
    description: 'A part of the day, as it was entered.',
  }),
);

const emergencyItem = perContext((context) =>
  named(context, 'EmergencyItem', z.strictObject(emergencyShape(context)), {
    description: 'What must go on when the mains fail, as it was entered.',
  }),
);

/** Its id is that of its loop. */
export const scheduleItem = perContext((context) =>
  named(
    context,
    'ScheduleItem',
    z.strictObject({
      ...recordFields(context),
      tariff: scheduleTariff(context),
      phases: described(context, z.array(phaseItem(context)), { description: 'In the order of entry.' }),
      emergency: emergencyItem(context).optional(),
    }),
    { description: 'The phases of a loop, whose id is that of the loop.' },
  ),
);
