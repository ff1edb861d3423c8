/** How the demo shows a comparison. */
import { expect, it } from 'vitest';
import { comparisonLines, comparisonView } from '../../../../api/cli/demo/show-comparison.ts';
import { example } from '../../requests.ts';

it('sets the options side by side, element by element, and leaves out what costs nothing', () => {
  const lines = comparisonLines(comparisonView.parse(example('answers/comparison.json')));
  expect(lines[0]).toBe('Seahorse bank: three pumps or one: present value over 10 years in EUR');
  expect(lines[1]?.trim()).toBe('Three Inline 60   One Canister 250');
  const labels = lines.slice(2, -1).map((line) => line.trim().split(/ {2,}/)[0]);
  expect(labels).toEqual(['purchase', 'installation', 'energy', 'maintenance', 'downtime', 'in all']);
  expect(new Set(lines.slice(1, -1).map((line) => line.length)).size).toBe(1);
});
