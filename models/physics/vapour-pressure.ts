/** Finds the vapour pressure of fresh water. */

const CRITICAL_TEMPERATURE = 647.096;
const CRITICAL_PRESSURE = 22.064e6;
const ICE_POINT = 273.15;

/**
 * Saturation pressure [Pa] of fresh water, the auxiliary equation of the IAPWS,
 * ln(p/pc) = (Tc/T)(a1 t + a2 t^1.5 + a3 t^3 + a4 t^3.5 + a5 t^4 + a6 t^7.5), t = 1 - T/Tc.
 *
 * @param temperature [degC] 0.01..373.9; used for 0..45.
 * Accuracy: 0.02 % against IAPWS-95 at 10..30 degC (test/models/physics/vapour-pressure.test.ts).
 * Source: Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22, 783 (IAPWS SR1-86(1992)).
 */
export function vapourPressure(temperature: number): number {
  const kelvin = temperature + ICE_POINT;
  const t = 1 - kelvin / CRITICAL_TEMPERATURE;
  const sum =
    -7.85951783 * t +
    1.84408259 * t ** 1.5 -
    11.7866497 * t ** 3 +
    22.6807411 * t ** 3.5 -
    15.9618719 * t ** 4 +
    1.80122502 * t ** 7.5;
  return CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / kelvin) * sum);
}
