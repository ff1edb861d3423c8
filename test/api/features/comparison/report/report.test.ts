/** The printable report of a comparison. */
import { describe, expect, it } from 'vitest';
import { comparisonReport } from '../../../../../api/features/comparison/report/report.ts';
import type { ComparisonAnswer } from '../../../../../api/features/comparison/report/report-figures.ts';
import { inertPage, readable } from '../../../drawing/read-page.ts';
import { madeUpComparison } from './made-up-comparison.ts';

const page = (change: Partial<ComparisonAnswer> = {}, system: 'metric' | 'us' = 'metric'): string =>
  inertPage(
    comparisonReport({
      siteName: 'Skerry Point Marine Station',
      comparison: madeUpComparison(change),
      date: '2026-01-15',
      program: '0.0.0-test',
      system,
    }),
  );

describe('the report of a comparison', () => {
  it('has the answer first: which option, at what cost', () => {
    const text = readable(page());
    const answer = text.slice(text.indexOf('Answer'), text.indexOf('Options'));
    expect(answer).toContain('One large costs least');
    expect(answer).toContain('EUR 1,900.00 over 10 years');
  });

  it('holds the options side by side, by element, with what they pay back', () => {
    const text = readable(page());
    expect(text).toContain('Three small EUR 4,000.00 3970 to 4090 1000 kWh 1.5 h 50 reference');
    expect(text).toContain('One large EUR 1,900.00 1870 to 1990 1000 kWh 1.5 h 50 3 years');
    expect(text).toContain('One large 900 1000 1900');
  });

  it('draws it, and says what it hangs on', () => {
    const text = page();
    expect(text.match(/<svg [^>]*role="img"/g)).toHaveLength(1);
    expect(readable(text)).toContain('energy price 1560 2640 no');
    expect(readable(text)).toContain('Electricity at 0.09 EUR per kWh would make both cost the same.');
  });

  it('carries assumptions, cautions, sources, versions and words of safety', () => {
    const text = readable(page());
    expect(text).toContain('Years looked at 10');
    expect(text).toContain('Canister 250 states no failures: none are expected.');
    expect(text).toContain('Mains electricity beside water. (common practice)');
    expect(text).toContain('Pump Life Cycle Costs (2001)');
    expect(text).toContain('Loops loop-1 version 2');
    expect(text).toContain("never replace the limits that a pump's maker states");
  });

  it('says that it is out of date where what it rests on has moved', () => {
    expect(readable(page({ stale: true }))).toContain('Out of date: A loop, pump, tariff');
    expect(readable(page())).not.toContain('Out of date');
  });

  it('says that none serves where none does', () => {
    const { options } = madeUpComparison();
    const text = readable(
      page({ cheapest: null, options: options.map((one) => ({ ...one, feasible: false })) }),
    );
    expect(text).toContain('None of the options serves');
    expect(text).toContain('Three small (does not serve)');
  });

  it('is on Letter where US units are in force', () => {
    expect(page({}, 'us')).toContain('size: letter');
  });

  it.each(['<script>alert(1)</script>', '</title></style>"\'', 'حوض', 'x'.repeat(120)])(
    'keeps hostile and foreign names inert: %s',
    (name) => {
      const { options } = madeUpComparison();
      expect(readable(page({ name, options: options.map((one) => ({ ...one, name })) }))).toContain(name);
    },
  );
});
