/** Documents the tables that figures follow from. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const text = (context: SchemaContext, description: string, example: string) =>
  described(context, z.string(), { description, examples: [example] });

const yesOrNo = (context: SchemaContext, description: string) =>
  described(context, z.boolean(), { description, examples: [false] });

const pipeRow = (context: SchemaContext) =>
  z.strictObject({
    name: text(context, 'What a loop calls it.', 'sch80 1-1/2'),
    standard: text(context, 'The standard of its sizes.', 'ASTM D1785'),
    nominal: text(context, 'Its nominal size.', '1-1/2'),
    outsideDiameter: computed(context, 'diameter', { description: 'Outside diameter.', example: 48.26 }),
    minimumWall: computed(context, 'diameter', { description: 'Least wall.', example: 5.08 }),
    insideDiameter: computed(context, 'diameter', {
      description: 'Mean bore, which friction takes.',
      example: 37.49,
    }),
    roughness: computed(context, 'roughness', { description: 'Roughness of the wall.', example: 0.0015 }),
    source: text(context, 'Where the figures come from.', 'ASTM D1785'),
  });

export const pipesSchema = perContext((context) =>
  named(
    context,
    'PipeTable',
    z.strictObject({
      items: described(context, z.array(pipeRow(context)), { description: 'A row a size.' }),
      units: unitsField(context),
    }),
    { description: 'The standard pipes that a loop may name.' },
  ),
);

const partOpening = (context: SchemaContext) =>
  z.strictObject({
    opening: computedNumber(context, { description: 'Opening [%].', example: 50 }),
    addedLossCoefficient: computedNumber(context, {
      description: 'K above that of the valve fully open.',
      example: 5.5,
    }),
  });

const numberOrNull = (context: SchemaContext, words: { description: string; example: number }) =>
  described(context, nullable(computedNumber(context, words)), {
    description: words.description,
    examples: [words.example],
  });

const fittingRow = (context: SchemaContext) =>
  z.strictObject({
    name: text(context, 'What a loop calls it.', 'elbow-90'),
    kind: described(context, z.enum(['fitting', 'valve']), {
      description: 'Whether it is an element `fitting` or `valve`.',
      examples: ['fitting'],
    }),
    method: text(
      context,
      '`equivalent-diameters`: K = value x fT of the bore; `fixed-k`: K = value; `two-k`: K = laminarValue/Re + value (1 + 1 in/D); `three-k`: K = laminarValue/Re + value (1 + sizeValue/D^0.3), D in inches; `two-bores`: as the source says, from the bores of the pipes before and after it.',
      'equivalent-diameters',
    ),
    value: numberOrNull(context, {
      description: 'The figure of the method, of a valve fully open; null for `two-bores`.',
      example: 30,
    }),
    laminarValue: numberOrNull(context, {
      description: 'Coefficient of 1/Re of `two-k` and `three-k`; null for other methods.',
      example: 800,
    }),
    sizeValue: numberOrNull(context, {
      description: 'Coefficient of the size of `three-k`; null for other methods.',
      example: 4,
    }),
    angle: numberOrNull(context, {
      description: 'Whole angle of the cone of `two-bores` in degrees, 180 a step; null for other methods.',
      example: 30,
    }),
    partOpenings: described(context, z.array(partOpening(context)), {
      description: 'What a valve adds part open, from wide to narrow; empty where no table is known.',
    }),
    description: text(context, 'What it is.', 'Elbow, 90 degrees, standard'),
    source: text(context, 'Where the figures come from.', 'Crane Technical Paper 410, K = n fT'),
    partOpeningSource: described(context, nullable(z.string()), {
      description: 'Where the part openings come from; null without any.',
      examples: [null],
    }),
    fromMemory: yesOrNo(context, 'Whether the figure is recalled and was not looked up.'),
  });

export const fittingsSchema = perContext((context) =>
  named(
    context,
    'FittingTable',
    z.strictObject({
      items: described(context, z.array(fittingRow(context)), { description: 'A row a fitting or valve.' }),
    }),
    { description: 'The fittings and valves that a loop may name.' },
  ),
);

export const waterSchema = perContext((context) =>
  named(
    context,
    'WaterProperties',
    z.strictObject({
      temperature: computed(context, 'temperature', { description: 'Of the water.', example: 25 }),
      salinity: computed(context, 'salinity', { description: 'Of the water.', example: 35 }),
      density: computedNumber(context, {
        description: 'Density at one atmosphere [kg/m3].',
        example: 1023.34,
      }),
      viscosity: computedNumber(context, { description: 'Dynamic viscosity [Pa s].', example: 0.000958828 }),
      kinematicViscosity: computedNumber(context, {
        description: 'Kinematic viscosity [m2/s].',
        example: 9.36956e-7,
      }),
      vapourPressure: computed(context, 'pressure', {
        description: 'Vapour pressure of fresh water, absolute.',
        example: 3.1699,
      }),
      source: text(context, 'Where the formulas come from.', 'UNESCO EOS-80; Sharqawy et al. 2010'),
      units: unitsField(context),
    }),
    { description: 'What water weighs and how it resists shear, as every computation takes it.' },
  ),
);
