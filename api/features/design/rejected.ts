/** Answers why a candidate has no design, the first reason in figures. */
import type { Designs } from '../../../models/designs/designs.ts';
import type { DesignRejection, Shortcoming } from '../../../models/designs/rejections.ts';
import type { TooFast } from '../../../models/designs/too-fast.ts';
import { gridSize } from '../../../models/pump/settings-grid.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { pumpReference } from '../../question/candidates.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst } from '../../wording/against-limit.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { criterionDetail } from '../recommendation/rejection-answer.ts';
import type { DesignAnswer } from './answer-schema.ts';
import { candidateAt, type DesignWork } from './job.ts';

type Rejected = DesignAnswer['rejected'][number];

/** In the order of the request. */
export function rejectedDesigns(
  { rejected, tooFast }: Pick<Designs, 'rejected' | 'tooFast'>,
  work: DesignWork,
  system: UnitSystem,
): readonly Rejected[] {
  return rejected.map((rejection) => {
    const { candidate, reasons } = rejection;
    const pumps = candidateAt(work, candidate);
    return {
      ...{ candidate, pump: pumpReference(pumps), count: pumps.count },
      ...{ reason: reasons[0] ?? 'no-setting', reasons: [...reasons] },
      detail: detailOf(rejection, { tooFast, settings: gridSize(pumps.entered.settings), system }),
      ...(tooFast === null ? {} : { pointer: toPointer(tooFast.path) }),
    };
  });
}

interface Facts {
  readonly tooFast: TooFast | null;
  readonly settings: number;
  readonly system: UnitSystem;
}

function detailOf({ reasons, shortcomings }: DesignRejection, { tooFast, settings, system }: Facts): string {
  const [reason] = reasons;
  if (tooFast !== null) return tooFastWords(tooFast, system);
  if (reason === 'no-price') return 'The pump has no price: state `price` for it.';
  const [first] = shortcomings;
  if (first !== undefined) return shortcomingWords(first, system);
  return reason === 'not-enough-head'
    ? 'From rest the pump does not reach the required flow at any setting.'
    : `None of the ${settings} settings meets all conditions.`;
}

function shortcomingWords(first: Shortcoming, system: UnitSystem): string {
  const { reason, setting, value, limit } = first;
  const at = `at ${sayNumber(setting)} %`;
  if (reason === 'not-enough-head') {
    const said = sayAgainst({ value, stated: limit }, 'head', system);
    return `The pump gives ${said.value} ${at}. The sizes that require least head require ${said.stated}.`;
  }
  if (reason === 'npsh') {
    const said = sayAgainst({ value, stated: limit }, 'head', system);
    return `The pump leaves ${said.value} of NPSH for the suction ${at}. The suction of least loss takes ${said.stated}.`;
  }
  return criterionDetail(first, system);
}

/** That a list has no size that is slow enough. */
export function tooFastWords({ path, flow, velocity, limit }: TooFast, system: UnitSystem): string {
  const said = sayAgainst({ value: velocity, stated: limit }, 'velocity', system);
  return `The widest pipe of ${toPointer(path)} carries ${say(flow, 'flow', system)} at ${said.value}, above the limit of ${said.stated}: list a wider pipe, or state \`limits.pipeVelocity\`.`;
}
