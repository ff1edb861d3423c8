/** Puts into sentences what a comparison had to assume. */
import type { AssemblyFigures } from './assembly/assembly-figures.ts';
import type { ComparisonContext } from './context.ts';
import type { OptionFigures } from './option-figures.ts';

const isCalibrated = (one: AssemblyFigures): boolean =>
  (one.found?.parts ?? []).some(({ calibration }) => calibration !== null && calibration !== undefined);

const nameOf = ({ candidate, found }: AssemblyFigures): string =>
  candidate?.entered.name ?? found?.loop.document.name ?? 'What has a stated power';

function notesOf(one: AssemblyFigures, isRisky: boolean): readonly (string | null)[] {
  const { candidate, asked, count, running, schedule, lifeYears, failures } = one;
  const name = nameOf(one);
  const pump = candidate?.entered;
  const installed = one.found?.loop.document.installed;
  const ageKnown = asked.ageYears !== undefined || installed?.since !== undefined;
  return [
    pump !== undefined && asked.new && pump.price === undefined
      ? `${name} has no price: its purchase is left out.`
      : null,
    pump !== undefined && lifeYears === null
      ? `${name} has no expectedLifeYears: it is taken to outlast the years looked at.`
      : null,
    pump !== undefined && failures === null ? `${name} has no failure counts: no failure is expected.` : null,
    pump !== undefined && pump.service === undefined ? `${name} has no service: none is counted.` : null,
    !asked.new && lifeYears !== null && !ageKnown
      ? `The age of ${name} is not known: it is taken as new.`
      : null,
    schedule !== null && running.settingFrom !== 'schedule'
      ? `The schedule of ${one.found?.loop.document.name} is left out: ${name} is taken to run at one setting.`
      : null,
    running.settingFrom === 'schedule' && asked.hoursPerDay !== 24
      ? `hoursPerDay of ${name} is left out: its loop has a schedule.`
      : null,
    running.settingFrom === 'power' && asked.hoursPerDay !== 24
      ? `${name} is taken to use nothing in the hours that it does not run.`
      : null,
    asked.consolidate !== undefined && isCalibrated(one)
      ? `The loops of ${one.found?.loop.document.name} are joined as entered: their calibrations are left out.`
      : null,
    isRisky && count > 1 && running.settingFrom === 'schedule'
      ? `What ${name} still gives with one pump at rest is held against the full requirement of its loop, not that of a phase.`
      : null,
    isRisky && count > 1 && running.duty?.onePumpDown === undefined
      ? `What ${name} still gives with one pump at rest is not known: nothing is supposed.`
      : null,
  ];
}

/** Each sentence once. */
export function comparisonNotes(
  { site, energyPrice, labourRate }: ComparisonContext,
  options: readonly OptionFigures[],
): readonly string[] {
  const each = options.flatMap(({ asked, assemblies }) =>
    assemblies.flatMap((one) => notesOf(one, asked.risk !== undefined)),
  );
  const common = [
    labourRate === 0 ? 'No labourRate is stated: work costs nothing.' : null,
    energyPrice.tariff === null || energyPrice.isStated
      ? null
      : `Energy is priced by ${energyPrice.tariff.document.name}, the tariff of ${site.document.name}.`,
  ];
  return [...new Set([...common, ...each].filter((note) => note !== null))];
}
