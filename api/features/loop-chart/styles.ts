/** Gives each line of the chart of a loop its style. */
import type { MarkStyle } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';

export const SYSTEM_LINE: LineStyle = { ink: 'rust', width: 2, dash: '9 5' };
export const DUTY: MarkStyle = { shape: 'circle', ink: 'ink', isFilled: true, size: 90 };
export const REQUIRED: MarkStyle = { shape: 'square', ink: 'rust', isFilled: false, size: 80 };
export const OTHER_CROSSING: MarkStyle = { shape: 'cross', ink: 'slate', isFilled: false };
export const MEASURED: MarkStyle = { shape: 'triangle', ink: 'sea', isFilled: true, size: 46 };
export const MEASURED_ELSEWHERE: MarkStyle = { shape: 'triangle', ink: 'sea', isFilled: false, size: 46 };
/** A flow without a head, at the foot of the plot. */
export const MEASURED_FLOW: LineStyle = { ink: 'sea', width: 1.6 };
