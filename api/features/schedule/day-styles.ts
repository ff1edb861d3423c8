/** Gives each line of the chart of a day its style. */
import type { LineStyle } from '../../drawing/kit/palette.ts';

export const DAY_LINE: LineStyle = { ink: 'deep', width: 2.2 };
/** Under the line of the settings, where they do not give what is required. */
export const SHORT_LINE: LineStyle = { ink: 'rust', width: 10, dash: '3 3' };
