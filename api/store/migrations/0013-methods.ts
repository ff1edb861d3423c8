/** Gives fittings and valves of stored loops their methods as members, which names of version 0.1 held. */
import type { Kysely, Migration } from 'kysely';
import { hydraulicsOf } from '../../../models/loop/hydraulics.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { digestOf, jsonText } from '../json-text.ts';
import { withMethods } from '../methods-of-fittings.ts';

/** The columns as they were then. */
interface Then {
  readonly loop: {
    readonly site_id: string;
    readonly id: string;
    readonly document: string;
    readonly digest: string;
    readonly calibration_of: string | null;
  };
  readonly loop_calibration: {
    readonly site_id: string;
    readonly loop_id: string;
    readonly calibration_of: string;
  };
}

const aboutOf = (text: string): string => {
  const loop: Loop = JSON.parse(text);
  return digestOf([jsonText(hydraulicsOf(loop))]);
};

export const methods: Migration = {
  async up(db: Kysely<Then>) {
    const rows = await db.selectFrom('loop').select(['site_id', 'id', 'document', 'digest']).execute();
    for (const { site_id, id, document, digest } of rows) {
      // A damaged text stays as it is: its digest must go on saying so.
      if (digestOf([document]) !== digest) continue;
      const text = JSON.stringify(withMethods(JSON.parse(document)));
      if (text === document) continue;
      await db
        .updateTable('loop')
        .set({ document: text, digest: digestOf([text]) })
        .where('site_id', '=', site_id)
        .where('id', '=', id)
        .execute();
      // The loop flows as before, so what was calibrated of it still is.
      const [about, before] = [aboutOf(text), aboutOf(document)];
      await db
        .updateTable('loop')
        .set({ calibration_of: about })
        .where('site_id', '=', site_id)
        .where('id', '=', id)
        .where('calibration_of', '=', before)
        .execute();
      await db
        .updateTable('loop_calibration')
        .set({ calibration_of: about })
        .where('site_id', '=', site_id)
        .where('loop_id', '=', id)
        .where('calibration_of', '=', before)
        .execute();
    }
  },
};
