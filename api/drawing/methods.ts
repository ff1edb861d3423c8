/** Names the methods behind the figures of reports, with their sources. */

export const LOOP_METHODS = [
  'Water: density by UNESCO EOS-80 (Fofonoff and Millard 1983), viscosity by Sharqawy et al. 2010.',
  'Pipes: Darcy-Weisbach with Colebrook-White from Re 4000, laminar to Re 2000, joined smoothly between; fittings by their loss coefficients as tabled.',
  'Pump: curves fitted to the entered points by least squares, carried to other speeds by the affinity laws; the duty is the stable crossing of least flow.',
  'Uncertainty: acceptance grades of ISO 9906 and the one-sided 95 % scatter of the points about their fit.',
  'Intake screens: the 0.5 ft/s of 40 CFR 125.84, written for swimming fish, is a borrowed yardstick for small animals.',
] as const;

export const MONEY_METHODS = [
  'Life-cycle cost by its elements: Hydraulic Institute and Europump, Pump Life Cycle Costs (2001). A cost C of year n is worth C ((1+p)/(1+i))^n now, p the rise of its price, i the discount rate.',
  'Failures: counts over years watched, with their exact 95 % interval (Garwood 1936).',
  'Expected loss of a year: how often outlets fall short x value at risk x exp(-survival hours/mean hours to restore).',
] as const;
