/** Computes the bill of materials of a loop, from the request to its answer. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { billCautions } from '../../../models/cautions/money.ts';
import { billOfMaterials } from '../../../models/money/bill-of-materials.ts';
import { type MaterialPrice, priceBill } from '../../../models/money/bill-price.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { findStoredLoop } from '../../question/sources.ts';
import { compileLoopOrProblem } from '../../records/loop/compile.ts';
import { findSite } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { perMetre } from '../../units/per-metre.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayMoney } from '../../wording/money.ts';
import type { billSchema } from './answer-schema.ts';
import type { billRequest } from './request-schema.ts';

type Request = z.output<ReturnType<typeof billRequest>>;
type Answer = WithoutUnits<z.output<ReturnType<typeof billSchema>>>;

export async function answerBill(
  store: SiteStore,
  request: Request,
  system: UnitSystem,
): Promise<Result<Answer, Problem>> {
  const found = await findStoredLoop(store, request.loop);
  if (!found.ok) return found;
  const { id, version, document: loop } = found.value;
  if (!('discharge' in loop)) {
    const detail = 'is known by its system curve alone: it has no pipework to list';
    return failed(invalidRequest([{ pointer: '/loop', detail }]));
  }
  // Names of pipes and fittings are checked where they are looked up.
  const compiled = compileLoopOrProblem(loop, ['loop']);
  if (!compiled.ok) return compiled;
  const { currency } = (await findSite(store)).document;
  const bill = billOfMaterials(loop);
  const pipes = new Set(bill.materials.flatMap(({ kind, name }) => (kind === 'pipe' ? [name] : [])));
  const prices = request.prices.map((price) =>
    pipes.has(price.name) ? pricedByMetre(price, system) : price,
  );
  const priced = priceBill(bill.materials, prices);
  return success({
    ...priced,
    currency,
    complete: priced.unpriced.length === 0 && bill.unnamed.length === 0,
    unnamed: bill.unnamed,
    comparisonExtra:
      priced.total === null || priced.unpriced.length > 0
        ? null
        : { name: `Pipework of ${loop.name}`, kind: 'pipework', cost: priced.total, year: 0 },
    summary: sentenceOf(priced, { currency, unnamed: bill.unnamed.length }),
    cautions: [...billCautions()],
    basis: basisOf({ loop: { id, version }, pumps: [] }),
  });
}

/** A price of a unit of length, as one of a metre. */
const pricedByMetre = (price: MaterialPrice, system: UnitSystem): MaterialPrice =>
  price.soldBy === undefined ? { ...price, price: perMetre(price.price, system) } : price;

function sentenceOf(
  { materials, total, unpriced }: Pick<Answer, 'materials' | 'total' | 'unpriced'>,
  { currency, unnamed }: { readonly currency: string; readonly unnamed: number },
): string {
  const all = `${materials.length} materials`;
  const none =
    unnamed === 0
      ? ''
      : ` ${unnamed} ${unnamed === 1 ? 'place does' : 'places do'} not name what is installed there: see \`unnamed\`.`;
  if (total === null) return `${all}, none with a price.${none}`;
  const cost = `${all}, ${sayMoney(total, currency)}`;
  return unpriced.length === 0
    ? `${cost}.${none}`
    : `${cost} for those with a price; ${unpriced.length} have none.${none}`;
}
