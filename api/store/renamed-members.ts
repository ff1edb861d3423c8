/** Gives members of JSON values their names of version 0.2. */

/** From the place of a member, such as `phases[].volume.perDay`, to its new name. */
export type MemberNames = Readonly<Record<string, string>>;

/** `[]` is a step into a list; a member that is not named keeps its name, and so does its place. */
function renamed(value: unknown, names: MemberNames, place: string): unknown {
  if (Array.isArray(value)) return value.map((one) => renamed(one, names, `${place}[]`));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([member, inner]) => {
      const at = place === '' ? member : `${place}.${member}`;
      return [names[at] ?? member, renamed(inner, names, at)];
    }),
  );
}

export const withNames = (value: unknown, names: MemberNames): unknown => renamed(value, names, '');

const under = (place: string, names: MemberNames): MemberNames =>
  Object.fromEntries(Object.entries(names).map(([at, name]) => [`${place}.${at}`, name]));

/** Of a schedule as it is entered. */
export const SCHEDULE_NAMES: MemberNames = {
  'phases[].volume': 'dailyVolume',
  'phases[].volume.perDay': 'volume',
  'phases[].volume.floor': 'minimumFlow',
  'phases[].volume.ceiling': 'maximumFlow',
};

export const TASK_NAMES: MemberNames = { title: 'name' };

/** Of the factors that a calibration applies. */
export const CALIBRATION_NAMES: MemberNames = { badEnd: 'worstCase', readings: 'readingCount' };

const RISK_NAMES: MemberNames = { 'options[].risk.neededShare': 'requiredShare' };

const COMPARED_NAMES: MemberNames = {
  'options[].range': 'presentValueInterval',
  'options[].years': 'yearByYear',
  'options[].years[].running': 'runningCost',
  'options[].years[].cumulated': 'cumulativePresentValue',
  'options[].annualEnergyCost': 'annualCost',
  'options[].expectedLoss': 'annualExpectedLoss',
  'options[].attention': 'upkeep',
  'options[].attention.devices': 'pumpCount',
  'options[].attention.hours': 'annualHours',
  'options[].attention.cost': 'annualCost',
  'options[].assemblies[].servedShare': 'remainingShare',
  'options[].assemblies[].attentionHours': 'annualUpkeepHours',
  'options[].assemblies[].price': 'purchaseCost',
  'options[].assemblies[].lifeYears': 'expectedLifeYears',
  'sensitivity[].low': 'savingIfLower',
  'sensitivity[].high': 'savingIfHigher',
  'sensitivity[].effect': 'largestChange',
  'sensitivity[].flips': 'changesCheapest',
};

/** Of a comparison as it is stored: what was entered, and what was found. */
export const COMPARISON_NAMES: MemberNames = {
  ...under('question', RISK_NAMES),
  ...under('figures', COMPARED_NAMES),
};

/** Of an upgrade plan as it is stored. */
export const UPGRADE_PLAN_NAMES: MemberNames = {
  'question.candidates[].notBefore': 'firstYear',
  'question.candidates[].notAfter': 'lastYear',
  'question.candidates[].must': 'mandatory',
  'plan.spending[].budget': 'newBudget',
  'plan.spending[].carried': 'carriedOver',
};

const ofEach = (kind: string, names: MemberNames): MemberNames => under(`${kind}[]`, names);

/** Of a site that version 0.1 exported. */
export const EXPORT_NAMES: MemberNames = {
  ...ofEach('schedules', SCHEDULE_NAMES),
  ...ofEach('maintenanceTasks', TASK_NAMES),
  ...ofEach('comparisons', under('document', COMPARISON_NAMES)),
  ...ofEach('upgradePlans', under('document', UPGRADE_PLAN_NAMES)),
  ...ofEach('calibrations', { place: 'sequence', of: 'scope', ...under('calibration', CALIBRATION_NAMES) }),
};
