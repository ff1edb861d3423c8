/** Folds long lines of a calendar (RFC 5545, 3.1). */

const OCTETS = 75;

/** The line, in pieces of at most 75 octets of UTF-8, each but the first after a space; no character is cut. */
export function foldedLine(line: string): string {
  if (Buffer.byteLength(line) <= OCTETS) return line;
  const pieces: string[] = [];
  let piece = '';
  let octets = 0;
  for (const character of line) {
    const size = Buffer.byteLength(character);
    if (octets + size > OCTETS) {
      pieces.push(piece);
      piece = ' ';
      octets = 1;
    }
    piece += character;
    octets += size;
  }
  return [...pieces, piece].join('\r\n');
}
