/** Published sizes of plastic pipe [mm]. */

const ASTM = 'ASTM D1785 outside diameter and minimum wall; mean bore as trade tables print it (from memory)';

/** Mean bore, and the greatest bore OD - 2 x minimum wall; both to the printed 0.01 mm. */
export const INCH_BORES = [
  { name: 'sch40 1/2', mean: 15.29, greatest: 15.8, source: ASTM },
  { name: 'sch40 3/4', mean: 20.42, greatest: 20.93, source: ASTM },
  { name: 'sch40 1', mean: 26.14, greatest: 26.64, source: ASTM },
  { name: 'sch40 1-1/4', mean: 34.54, greatest: 35.05, source: ASTM },
  { name: 'sch40 1-1/2', mean: 40.39, greatest: 40.89, source: ASTM },
  { name: 'sch40 2', mean: 51.99, greatest: 52.5, source: ASTM },
  { name: 'sch40 2-1/2', mean: 62.1, greatest: 62.71, source: ASTM },
  { name: 'sch40 3', mean: 77.27, greatest: 77.93, source: ASTM },
  { name: 'sch40 4', mean: 101.55, greatest: 102.26, source: ASTM },
  { name: 'sch80 1/2', mean: 13.36, greatest: 13.87, source: ASTM },
  { name: 'sch80 3/4', mean: 18.34, greatest: 18.85, source: ASTM },
  { name: 'sch80 1', mean: 23.77, greatest: 24.31, source: ASTM },
  { name: 'sch80 1-1/4', mean: 31.88, greatest: 32.46, source: ASTM },
  { name: 'sch80 1-1/2', mean: 37.49, greatest: 38.1, source: ASTM },
  { name: 'sch80 2', mean: 48.59, greatest: 49.25, source: ASTM },
  { name: 'sch80 2-1/2', mean: 58.17, greatest: 59.0, source: ASTM },
  { name: 'sch80 3', mean: 72.75, greatest: 73.66, source: ASTM },
  { name: 'sch80 4', mean: 96.16, greatest: 97.18, source: ASTM },
] as const;

const SDR = 'EN ISO 1452-2: minimum wall not under outside diameter/SDR (SDR figures from memory)';

/** Standard dimension ratio of each metric series by outside diameter. */
export const METRIC_RATIOS = [
  { series: 'pn10', upTo: 90, ratio: 21, source: SDR },
  { series: 'pn10', upTo: 110, ratio: 26, source: SDR },
  { series: 'pn16', upTo: 90, ratio: 13.6, source: SDR },
  { series: 'pn16', upTo: 110, ratio: 17, source: SDR },
] as const;

const IS_4985 = 'IS 4985:2000, unplasticised PVC, class 5 (1.0 MPa), least and greatest wall';

/** Another standard's pipe of 1.0 MPa, whose wall and tolerance are close to PN 10. */
export const CLASS_5_WALLS = [
  { outsideDiameter: 32, least: 1.8, greatest: 2.2, source: IS_4985 },
  { outsideDiameter: 40, least: 2.2, greatest: 2.7, source: IS_4985 },
  { outsideDiameter: 50, least: 2.8, greatest: 3.3, source: IS_4985 },
  { outsideDiameter: 63, least: 3.5, greatest: 4.1, source: IS_4985 },
  { outsideDiameter: 75, least: 4.2, greatest: 4.9, source: IS_4985 },
  { outsideDiameter: 90, least: 5.0, greatest: 5.7, source: IS_4985 },
] as const;
