/** Negotiates the media type by the header Accept (RFC 9110). */

interface Range {
  readonly type: string;
  readonly quality: number;
}

function parseRange(text: string): Range {
  const [type = '', ...parameters] = text.split(';').map((part) => part.trim().toLowerCase());
  const quality = parameters.find((parameter) => parameter.startsWith('q='))?.slice(2);
  return { type, quality: quality === undefined ? 1 : Number(quality) || 0 };
}

/** How well a range names a media type: exactly 2, by its first half 1, as anything 0; undefined not at all. */
function specificity(range: string, mediaType: string): number | undefined {
  if (range === mediaType) return 2;
  if (range === '*/*' || range === '*') return 0;
  return range.endsWith('/*') && mediaType.startsWith(range.slice(0, -1)) ? 1 : undefined;
}

function qualityOf(ranges: readonly Range[], mediaType: string): number {
  let best = { specificity: -1, quality: 0 };
  for (const { type, quality } of ranges) {
    const found = specificity(type, mediaType);
    if (found !== undefined && found > best.specificity) best = { specificity: found, quality };
  }
  return best.quality;
}

/**
 * The offer that the caller likes most, the first of several equals; undefined when it takes none. The helper of the web package
 * prefers what the caller likes most to what is named most specifically, and takes a malformed weight as 1.
 */
export function negotiate<T extends string>(accept: string | undefined, offers: readonly T[]): T | undefined {
  if (accept === undefined || accept.trim() === '') return offers[0];
  const ranges = accept.split(',').map(parseRange);
  let best: { offer: T; quality: number } | undefined;
  for (const offer of offers) {
    const quality = qualityOf(ranges, offer);
    if (quality > (best?.quality ?? 0)) best = { offer, quality };
  }
  return best?.offer;
}
