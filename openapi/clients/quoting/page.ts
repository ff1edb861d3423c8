/** The client's page: one HTML file without a script, for the screen and for paper. */
import type { Quote, QuoteLine } from './quote.ts';

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

const STYLE = `body { font: 11pt/1.45 serif; color: #111; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; margin: 1rem 0; }
th, td { border-bottom: 1px solid #888; padding: .3rem .5rem; text-align: start; vertical-align: top; }
td:first-child { min-width: 7rem; }
th.figure, td.figure { text-align: end; overflow-wrap: normal; }
tr.first td { font-weight: bold; }
@media print { body { margin: 0; max-width: none; } tr { break-inside: avoid; } }`;

const named = ({ pump, count }: { pump: string; count: number }): string =>
  escaped(count === 1 ? pump : `${count} × ${pump}`);

const rounded = (value: number | null, digits: number): string =>
  value === null ? '–' : value.toFixed(digits);

const lineRow = (line: QuoteLine, place: number): string => `<tr${place === 0 ? ' class="first"' : ''}>
<td><bdi>${named(line)}</bdi></td>
<td class="figure">${line.setting} %</td>
<td class="figure">${rounded(line.power, 1)}</td>
<td class="figure">${rounded(line.annualEnergy, 0)}</td>
<td class="figure">${rounded(line.annualCost, 2)}</td>
<td class="figure">${rounded(line.purchase, 2)}</td>
<td class="figure">${rounded(line.presentValue, 0)}</td>
<td class="figure">${rounded(line.payback, 1)}</td>
</tr>`;

const outletRow = ({ name, flow, margin }: QuoteLine['outlets'][number]): string =>
  `<tr><td><bdi>${escaped(name)}</bdi></td><td class="figure">${rounded(flow, 0)}</td><td class="figure">${margin === null ? '–' : `${rounded(100 * margin, 1)} %`}</td></tr>`;

const list = (items: readonly string[]): string =>
  `<ul>\n${items.map((item) => `<li>${item}</li>`).join('\n')}\n</ul>`;

function outletsOf(quote: Quote): string {
  const [first] = quote.lines;
  if (first === undefined) return '';
  return `<h2>What each outlet then gets</h2>
<table><thead><tr><th>Outlet</th><th class="figure">${escaped(quote.flowUnit)}</th><th class="figure">above its need</th></tr></thead>
<tbody>${first.outlets.map(outletRow).join('\n')}</tbody></table>`;
}

function leftOutOf({ leftOut }: Quote): string {
  if (leftOut.length === 0) return '';
  const items = leftOut.map((one) => `<bdi>${named(one)}</bdi>: ${escaped(one.why)}`);
  return `<h2>What does not serve, and why</h2>\n${list(items)}`;
}

export function quotePage(quote: Quote): string {
  const { client, loop, summary, lifeCycle, years, lines, currency, price, cautions, basis } = quote;
  const all = [...new Set([...cautions, ...(lines[0]?.cautions ?? [])])];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(`${loop}: pumps compared`)}</title>
<style>${STYLE}</style>
</head>
<body>
<h1><bdi>${escaped(loop)}</bdi>: pumps compared</h1>
<p>For <bdi>${escaped(client)}</bdi>.</p>
<p>${escaped(summary)}</p>
<p>${escaped(lifeCycle)}</p>
<table>
<thead><tr><th>Pump</th><th class="figure">Setting</th><th class="figure">W</th><th class="figure">kWh a year</th><th class="figure">${escaped(currency)} a year</th><th class="figure">Purchase, ${escaped(currency)}</th><th class="figure">All of ${years} years, ${escaped(currency)} of today</th><th class="figure">Back after, years</th></tr></thead>
<tbody>
${lines.map(lineRow).join('\n')}
</tbody>
</table>
${outletsOf(quote)}
${leftOutOf(quote)}
<h2>To keep in mind</h2>
${list(all.map(escaped))}
<p>Energy at ${price} ${escaped(currency)} per kWh. Estimates from entered points, by formulas of version ${escaped(basis)}; the maker's limits, local code and licensed practice come first.</p>
</body>
</html>
`;
}
