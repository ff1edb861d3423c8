/** By what a report's figures were computed. */
import { type Markup, markup } from '../markup/markup.ts';

const METHODS = [
  'Water: density by UNESCO EOS-80 (Fofonoff and Millard 1983), viscosity by Sharqawy et al. 2010.',
  'Pipes: Darcy-Weisbach with Colebrook-White from Re 4000, laminar to Re 2000, joined smoothly between; fittings by their loss coefficients as tabled.',
  'Pump: curves fitted to the entered points by least squares, carried to other speeds by the affinity laws; the duty is the stable crossing of least flow.',
  'Doubt: acceptance grades of ISO 9906 and the one-sided 95 % scatter of the points about their fit.',
  'Intake screens: the 0.5 ft/s of 40 CFR 125.84, written for swimming fish, is a borrowed yardstick for small animals.',
] as const;

export const methodsSection = (): Markup =>
  markup`<section><h2>Sources and methods</h2><ul class="source">${METHODS.map((line) => markup`<li>${line}</li>`)}</ul></section>`;
