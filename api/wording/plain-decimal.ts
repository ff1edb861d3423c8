/** Writes a number in decimal notation. */

/** The shortest digits that read back as the same number, without exponent or grouping. */
export function plainDecimal(value: number): string {
  const shortest = String(value === 0 ? 0 : value);
  const parts = /^(-?)(\d+)(?:\.(\d+))?e([+-]\d+)$/.exec(shortest);
  if (parts === null) return shortest;
  const [, sign = '', whole = '', fraction = '', exponent = '0'] = parts;
  const digits = whole + fraction;
  const point = whole.length + Number(exponent);
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`;
  if (point >= digits.length) return `${sign}${digits}${'0'.repeat(point - digits.length)}`;
  return `${sign}${digits.slice(0, point)}.${digits.slice(point)}`;
}
