/** Shows a recommendation as lines for a terminal. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';

const outletSchema = z.object({
  name: z.string(),
  flow: z.number(),
  requiredFlow: nullable(z.number()),
});

const cautionsSchema = z.array(z.object({ code: z.string(), severity: z.string() }));

const dutySchema = z.object({
  pump: z.object({ name: z.string() }),
  count: z.int(),
  setting: z.number(),
  power: z.number(),
  annualEnergy: z.number(),
  annualCost: nullable(z.number()),
  limitingOutlet: nullable(z.string()),
  outlets: z.array(outletSchema),
  uncertainty: z.object({ power: z.object({ low: z.number(), high: z.number() }) }),
  npsh: z.object({ available: z.number(), required: z.number().optional() }),
  notChecked: z.array(z.string()),
  cautions: cautionsSchema,
});

export const recommendationView = z.object({
  best: nullable(dutySchema),
  summary: z.string(),
  /** Those of the loop, whatever the pump. */
  cautions: cautionsSchema,
  assumptions: z.object({ currency: z.string() }),
  units: z.object({ flow: z.string(), head: z.string() }),
});

export const dutyView = dutySchema;

type Duty = z.output<typeof dutySchema>;
type Outlet = z.output<typeof outletSchema>;

const FLOW_WIDTH = 14;

const pumpWords = ({ pump, count, setting }: Duty): string =>
  `${count === 1 ? '' : `${count} x `}${pump.name} at ${setting} %`;

const useWords = ({ power, annualEnergy, annualCost }: Duty, currency: string): string =>
  [
    `${power.toFixed(1)} W`,
    `${annualEnergy.toFixed(0)} kWh a year`,
    ...(annualCost === null ? [] : [`${annualCost.toFixed(2)} ${currency} a year`]),
  ].join(', ');

function outletLines(outlets: readonly Outlet[], limiting: string | null, unit: string): readonly string[] {
  const width = Math.max(...outlets.map(({ name }) => name.length), 'outlet'.length);
  const row = (name: string, flow: string, required: string, mark: string) =>
    `    ${name.padEnd(width)}${flow.padStart(FLOW_WIDTH)}${required.padStart(FLOW_WIDTH)}  ${mark}`.trimEnd();
  const mark = ({ name, flow, requiredFlow }: Outlet): string => {
    if (requiredFlow !== null && flow < requiredFlow) return 'short';
    return name === limiting ? 'limits' : '';
  };
  return [
    row('outlet', `flow [${unit}]`, `needs [${unit}]`, ''),
    ...outlets.map((outlet) =>
      row(outlet.name, outlet.flow.toFixed(0), outlet.requiredFlow?.toFixed(0) ?? '-', mark(outlet)),
    ),
  ];
}

const codesOf = (cautions: z.output<typeof cautionsSchema>): string =>
  cautions.map(({ code, severity }) => (severity === 'note' ? code : `${code} (${severity})`)).join(', ') ||
  'none';

/** What is known of the figures: between which watts they lie, what stands before the pump, what nobody could judge. */
function knownLines({ uncertainty: { power }, npsh, notChecked }: Duty, unit: string): readonly string[] {
  const required = npsh.required === undefined ? '' : ` of ${npsh.required.toFixed(1)} required`;
  return [
    `    power: ${power.low.toFixed(1)} to ${power.high.toFixed(1)} W; NPSH: ${npsh.available.toFixed(1)} ${unit}${required}`,
    `    not checked: ${notChecked.join(', ') || 'nothing'}`,
  ];
}

/** What is wrong with what runs now, apart from what holds for the loop whatever its pump. */
function faultsOf({ outlets, cautions }: Duty, ofLoop: ReadonlySet<string>): string {
  const short = outlets.filter((one) => one.requiredFlow !== null && one.flow < one.requiredFlow);
  const dangers = cautions.filter(({ code, severity }) => severity === 'danger' && !ofLoop.has(code));
  return [
    ...(short.length === 0 ? [] : [`short: ${short.map(({ name }) => name).join(', ')}`]),
    ...(dangers.length === 0 ? [] : [codesOf(dangers)]),
  ]
    .map((fault) => `; ${fault}`)
    .join('');
}

/** What runs now, what to run instead, what each outlet then gets, what to know. */
export function recommendationLines(
  loopName: string,
  { best, summary, cautions, assumptions: { currency }, units }: z.output<typeof recommendationView>,
  installed: Duty,
): readonly string[] {
  const ofLoop = new Set(cautions.map(({ code }) => code));
  const now = `  now     ${pumpWords(installed)}: ${useWords(installed, currency)}${faultsOf(installed, ofLoop)}`;
  if (best === null) return [loopName, now, `  ${summary}`];
  return [
    loopName,
    now,
    `  advice  ${pumpWords(best)}: ${useWords(best, currency)}`,
    ...outletLines(best.outlets, best.limitingOutlet, units.flow),
    ...knownLines(best, units.head),
    `    cautions: ${codesOf(best.cautions)}`,
    `    of the loop: ${codesOf(cautions)}`,
  ];
}
