/** Checks what a site has computed and kept before it is stored again, since a copy may hold anything. */
import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { PumpFit } from '../../../models/pump/pump-model.ts';
import { isAlike } from '../../fields/alike.ts';
import { nullable } from '../../fields/nullable.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { schemaContext } from '../../units/schema-context.ts';
import type { CopiedCalibration } from '../calibration/contract.ts';
import { comparisonSchema } from '../comparison/answer-schema.ts';
import type { StoredComparison } from '../comparison/contract.ts';
import { upgradePlanAnswer, upgradePlanItem } from '../upgrade-plan/answer.ts';
import { upgradePlanSchema } from '../upgrade-plan/answer-schema.ts';
import type { StoredUpgradePlan } from '../upgrade-plan/contract.ts';
import type { UnfittedCalibration } from './calibration-schema.ts';
import type { UnseenDocument } from './kinds-schema.ts';

const CONTEXT = schemaContext({ system: 'metric', side: 'answer' });

const DETAIL = 'is not what was exported: no answer can be made of it';

const versions = z.array(z.strictObject({ id: z.string(), version: nullable(z.int()) }));

const comparisonShape = z.strictObject({
  name: z.string(),
  question: z.record(z.string(), z.unknown()),
  figures: z.record(z.string(), z.unknown()),
  sources: z.strictObject({
    site: z.string(),
    checks: z.string(),
    loops: versions,
    pumps: versions,
    tariffs: versions,
    schedules: versions,
  }),
});

/** Whether a step that trusts its argument gets through; a document from outside may make it throw anything. */
function holds(step: () => boolean): boolean {
  try {
    return step();
  } catch {
    return false;
  }
}

const isAnswer = (schema: z.ZodType, body: unknown): boolean => z.safeEncode(schema, body).success;

/** A value of the kind, once it has been seen to answer as one. */
function seen<Document extends object>(
  record: StoredRecord<UnseenDocument>,
  answers: (as: StoredRecord<Document>) => boolean,
): Result<StoredRecord<Document>, string> {
  // Through text, as it will be read back from the database.
  const document: Document = JSON.parse(JSON.stringify(record.document.document));
  const name = 'name' in document && typeof document.name === 'string' ? document.name : '';
  const as = { ...record, name, document };
  return holds(() => answers(as)) ? success(as) : failed(DETAIL);
}

export const comparisonOf = (record: StoredRecord<UnseenDocument>) =>
  seen<StoredComparison>(record, ({ document, ...rest }) => {
    if (!comparisonShape.safeParse(document).success) return false;
    const body = recordBody({ ...rest, document: { ...document.figures, name: document.name } });
    return isAnswer(comparisonSchema(CONTEXT), { ...body, stale: false, units: {} });
  });

export const upgradePlanOf = (record: StoredRecord<UnseenDocument>) =>
  seen<StoredUpgradePlan>(record, (plan) => {
    upgradePlanItem(plan);
    return isAnswer(upgradePlanSchema(CONTEXT), { ...upgradePlanAnswer(plan), units: {} });
  });

/** Its curves are those of the pump where they are about it as it is now; else it is about a pump as it once was. */
export function calibrationWith(
  record: StoredRecord<UnfittedCalibration>,
  pumps: ReadonlyMap<string, PumpRecord>,
): StoredRecord<CopiedCalibration> {
  const { calibration } = record.document;
  const { id, fit } = calibration.pump;
  const now = pumps.get(id)?.fit;
  // Read for nothing but to be compared with the curves of a pump.
  const before: PumpFit = JSON.parse(JSON.stringify(fit));
  const pump = { id, fit: now !== undefined && isAlike(now, fit) ? now : before };
  return { ...record, document: { ...record.document, calibration: { ...calibration, pump } } };
}
