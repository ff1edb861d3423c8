/** Documents the settings that a pump's controller offers. */

import { z } from '@hono/zod-openapi';
import { gridSize } from '../../../models/pump/settings-grid.ts';
import { FULL_SETTING } from '../../fields/full-setting.ts';
import { SETTINGS_MAX } from '../../fields/limits.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';

const DEFAULTS = { min: 30, max: FULL_SETTING, step: 1 } as const;

const grid = perContext((context) =>
  named(
    context,
    'Settings',
    z
      .strictObject({
        min: entered(context, 'setting', {
          description: 'The lowest setting at which the pump runs.',
          minimum: 0,
          aboveMinimum: true,
          maximum: FULL_SETTING,
          example: DEFAULTS.min,
          default: DEFAULTS.min,
        }),
        max: entered(context, 'setting', {
          description: 'The highest setting.',
          minimum: 0,
          aboveMinimum: true,
          maximum: FULL_SETTING,
          example: DEFAULTS.max,
          default: DEFAULTS.max,
        }),
        step: entered(context, 'setting', {
          description: 'The step between settings, counted from `min`.',
          minimum: 0,
          aboveMinimum: true,
          maximum: FULL_SETTING,
          example: DEFAULTS.step,
          default: DEFAULTS.step,
        }),
      })
      .superRefine((settings, issues) => {
        if (settings.min > settings.max) {
          issues.addIssue({ code: 'custom', path: ['max'], message: 'must not be below min' });
          return;
        }
        const actual = gridSize(settings);
        if (actual <= SETTINGS_MAX) return;
        const message = `makes ${actual} settings; ${SETTINGS_MAX} are the limit`;
        issues.addIssue({ code: 'custom', path: ['step'], message, params: { limit: SETTINGS_MAX, actual } });
      }),
    { description: 'The grid of settings: min, min + step and so on below max, and max.' },
  ),
);

/** In a request it may be left out, wholly or by its members. */
export const settings = perContext((context) =>
  context.side === 'answer'
    ? grid(context)
    : described(context, grid(context).default(DEFAULTS), {
        description: 'The grid of settings; 30 to 100 by 1 without it.',
      }),
);
