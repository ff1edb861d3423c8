/** Documents the condition of a loop. */
import { z } from '@hono/zod-openapi';
import { METERS, UNIT_MIX_UPS } from '../../../models/condition/meter-error.ts';
import { VERDICTS } from '../../../models/condition/verdict.ts';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { evidenceSchema } from './evidence-schema.ts';
import { residualSeriesSchema } from './residual-series-schema.ts';
import { waitingSchema } from './waiting-schema.ts';

const date = (context: SchemaContext, description: string, example: string) =>
  described(context, z.iso.date(), { description, examples: [example] });

const instant = (context: SchemaContext, description: string) =>
  described(context, nullable(z.iso.datetime()), {
    description: `${description} Null without one.`,
    examples: ['2026-01-15T10:00:00.000Z'],
  });

const count = (context: SchemaContext, description: string, example: number) =>
  described(context, z.int(), { description, examples: [example] });

const slipSchema = perContext((context) =>
  named(
    context,
    'MeterSlip',
    z.strictObject({
      meter: described(context, z.enum(METERS), {
        description: 'The meter that is probably wrong.',
        examples: ['flow'],
      }),
      likely: described(context, nullable(z.enum(UNIT_MIX_UPS)), {
        description:
          'What was probably mistaken for what: a factor of 3.785 (US gallons) or 4.546, of 60, of 1000, volt-amperes for watts, feet, psi or kilopascals for metres, psi for kilopascals; null where the figure merely does not fit.',
        examples: ['gallons-and-litres'],
      }),
      factor: nullable(
        computedNumber(context, {
          description: 'Measured is about so many times what it should be; null where no factor is known.',
          example: 3.785,
        }),
      ),
    }),
    { description: 'Why a meter is probably wrong.' },
  ),
);

const shortfallSchema = perContext((context) =>
  named(
    context,
    'Shortfall',
    z.strictObject({
      outlet: described(context, z.string(), { description: 'The outlet.', examples: ['far end'] }),
      date: date(context, 'When its flow meets the required flow on the way down, in UTC.', '2026-08-14'),
      interval: z.strictObject({
        earliest: date(context, 'By the steep end of the interval of the trend.', '2026-07-20'),
        latest: nullable(
          date(context, 'By its flat end; null where that is not within ten years.', '2026-09-30'),
        ),
      }),
    }),
    { description: 'The first outlet to fall short at the installed setting, if things go on as they do.' },
  ),
);

const judgedSchema = (context: SchemaContext) =>
  z.strictObject({
    total: count(context, 'Readings in the range.', 365),
    judged: count(context, 'Those judged one by one: a sample, where there are over 20,000.', 365),
    used: count(context, 'Those of a running pump with every valve open.', 360),
    leftOut: z.strictObject({
      stopped: count(context, 'Left out because the pump was stopped.', 5),
      shutValve: count(
        context,
        'Left out because a valve was closed: a flow of 0 while the pump ran, or an outlet at 0.',
        0,
      ),
      otherSetting: count(
        context,
        'Left out for a setting that the installed pump does not have, or beyond the most frequent ones: 200, fewer on loops of over 100 branches.',
        0,
      ),
    }),
  });

const THRESHOLD_WORDS = {
  flowDown: 'Flow at a setting below its prediction by more than this is down.',
  flowUp: 'Flow above by more than this is up, which no fault explains.',
  flowWorn: 'Flow below by more than this, beside a head below the curve, is of a worn pump.',
  powerDown: 'Power below by more than this, beside less flow, is down.',
  outletDown: 'The flow of one outlet below by more than this is down.',
  powerUp: 'Power above by more than this is up.',
  powerFarDown: 'Power below by more than this, beside the flow expected, is far down.',
  suctionGap: 'Suction pressure below that of the measured flow by this share of the head: clogged intake.',
  dischargeGap: 'Discharge pressure above that of the measured flow by this share: clogged discharge.',
  pumpGap: 'Head below the curve at the measured flow by this share: worn pump.',
  headOff: 'Head elsewhere by more than this beside the flow expected: no fault explains it.',
  pressureOff: 'A pressure elsewhere by this share of the head beside the flow expected.',
  stoppedFlow: 'Flow within this of what fewer of several pumps give, and',
  stoppedPower: 'power within this of what they draw: a pump stands still.',
} as const;

const threshold = (context: SchemaContext, description: string) =>
  computedNumber(context, { description, example: 0.05 });

const thresholdsSchema = (context: SchemaContext) =>
  z.strictObject({
    flowDown: threshold(context, THRESHOLD_WORDS.flowDown),
    outletDown: threshold(context, THRESHOLD_WORDS.outletDown),
    flowUp: threshold(context, THRESHOLD_WORDS.flowUp),
    flowWorn: threshold(context, THRESHOLD_WORDS.flowWorn),
    powerDown: threshold(context, THRESHOLD_WORDS.powerDown),
    powerUp: threshold(context, THRESHOLD_WORDS.powerUp),
    powerFarDown: threshold(context, THRESHOLD_WORDS.powerFarDown),
    suctionGap: threshold(context, THRESHOLD_WORDS.suctionGap),
    dischargeGap: threshold(context, THRESHOLD_WORDS.dischargeGap),
    pumpGap: threshold(context, THRESHOLD_WORDS.pumpGap),
    headOff: threshold(context, THRESHOLD_WORDS.headOff),
    pressureOff: threshold(context, THRESHOLD_WORDS.pressureOff),
    stoppedFlow: threshold(context, THRESHOLD_WORDS.stoppedFlow),
    stoppedPower: threshold(context, THRESHOLD_WORDS.stoppedPower),
  });

export const conditionSchema = perContext((context) =>
  named(
    context,
    'Condition',
    z.strictObject({
      verdict: described(context, z.enum(VERDICTS), {
        description:
          'The first that applies. `not-enough-readings`: under three of flow or power, which a verdict needs. `meter-doubtful`: see meterSlip. `pump-stopped`: flow and power as with fewer of several pumps. `draws-more-than-its-curve`: power up, flow not. `clogged-branch`: outlets down while the others measured are not. Flow down: `clogged-intake` (suction pressure below that of the flow measured), `clogged-discharge` (discharge pressure above it), `worn-pump` (head below the curve at that flow), whichever is farthest over its threshold; without such pressures `clogged` where power is down too or the pump is on its curve, else `less-flow`; that also where one outlet alone is measured and down. `entries-doubtful`: flow up, power far down, head or a pressure elsewhere. Else `as-expected`. See `thresholds`; a residual must also differ from 0 at 95 %, by the t of Student for few readings.',
        examples: ['clogged-intake'],
      }),
      summary: described(context, z.string(), {
        description: 'The answer in a few plain sentences.',
        examples: ['Kelp flume: the loop does as its data say.'],
      }),
      evidence: described(context, z.array(evidenceSchema(context)), {
        description: 'One row for each thing that was measured at least three times.',
      }),
      meterSlip: nullable(slipSchema(context)),
      places: described(context, z.array(z.string()), {
        description: 'The outlets of a `clogged-branch`; none else.',
        examples: [[]],
      }),
      pumpsRunning: described(context, nullable(z.int()), {
        description: 'How many of several pumps seem to run where one stands still; null else.',
        examples: [null],
      }),
      also: described(context, nullable(z.enum(VERDICTS)), {
        description: 'What pressures show besides a pump that draws more than its curve; null else.',
        examples: [null],
      }),
      shortfall: nullable(shortfallSchema(context)),
      waiting: nullable(waitingSchema(context)),
      dataBasis: described(context, z.enum(['entered', 'calibrated']), {
        description: 'Whether predictions rest on the data as entered or on a calibration of the loop.',
        examples: ['entered'],
      }),
      cleanings: described(context, z.array(z.iso.datetime()), {
        description:
          'When screen or wet end were cleaned in the meantime, by the completions of their checks: trends are taken between them, the latest 50.',
        examples: [[]],
      }),
      from: instant(context, 'The first reading judged.'),
      to: instant(context, 'The last.'),
      readings: judgedSchema(context),
      thresholds: thresholdsSchema(context),
      series: described(context, z.array(residualSeriesSchema(context)), {
        description: 'The residuals day by day with their trend, for a picture of them.',
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What to know before acting on it.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'What was measured on a loop against its data, what that means, what to expect.' },
  ),
);
