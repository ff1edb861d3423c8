/** Makes a topic of cautions: its rows of the catalogue, and the one way to give them. */

/** `note`: know this; `warning`: check this; `danger`: it can hurt people, animals or the house. */
export type Severity = 'note' | 'warning' | 'danger';

export interface CautionRow {
  readonly severity: Severity;
  readonly sentence: string;
  /** On whose authority. */
  readonly source: string;
}

/** What figures of cautions can be; each is in the unit that its quantity has inside. */
export const CAUTION_QUANTITIES = [
  ...['flow', 'head', 'elevation', 'distance', 'depth', 'slot', 'velocity', 'pressure', 'volume', 'power'],
  ...['setting', 'speed'],
] as const;

export type CautionQuantity = (typeof CAUTION_QUANTITIES)[number];

/** A caution in figures: what was found, and what it was compared with. */
export interface Figures {
  /** Into the loop or the pump: a JSON Pointer. */
  readonly pointer?: string | undefined;
  /** Found [as quantity]. */
  readonly value?: number | undefined;
  /** Compared with [as quantity]. */
  readonly limit?: number | undefined;
  /** Of value and limit; undefined for plain numbers. */
  readonly quantity?: CautionQuantity | undefined;
}

/** A caution as an answer carries it. */
export interface Given<Code extends string> extends Figures {
  readonly code: Code;
  readonly severity: Severity;
  /** The sentence of the row, then in brackets what it is about here. */
  readonly detail: string;
  readonly source: string;
}

/** One of several places that a caution is about. */
export interface Place extends Figures {
  /** What the place is called. */
  readonly subject: string;
  /** Orders the places [any]: the larger, the worse. */
  readonly excess: number;
}

/** The rows of a subject with what gives them, so that a rule cannot give a code that its topic does not have. */
export interface Topic<Code extends string> {
  readonly rows: Readonly<Record<Code, CautionRow>>;
  /** The caution of a code, about the named subjects where there are any. */
  give(code: Code, subjects?: readonly string[], figures?: Figures): Given<Code>;
  /** The same where a condition holds, nothing where it does not. */
  when(holds: boolean, code: Code, subjects?: readonly string[], figures?: Figures): readonly Given<Code>[];
  /** One caution for each of the five worst places. */
  worst(code: Code, places: readonly Place[]): readonly Given<Code>[];
  /** One caution about all of the subjects, of which a few are named; nothing where there are none. */
  about(code: Code, subjects: readonly string[]): readonly Given<Code>[];
}

/** The cautions that one topic, or one of several, gives. */
export type CautionOf<T> = T extends Topic<infer Code> ? Given<Code> : never;

/** At most this many subjects are named in one caution of `about`; more are counted. */
const NAMED_MOST = 5;
/** At most this many places have a caution of `worst` each. */
const PLACES_MOST = 5;

export const COMMON_PRACTICE = 'common practice';

/** Makes the topic of some rows by their codes. */
export function topic<Code extends string>(rows: Readonly<Record<Code, CautionRow>>): Topic<Code> {
  const give = (code: Code, subjects: readonly string[] = [], figures: Figures = {}): Given<Code> => {
    const { severity, sentence, source } = rows[code];
    const about = subjects.length === 0 ? '' : ` (${subjects.join(', ')})`;
    return { code, severity, detail: `${sentence}${about}`, source, ...figures };
  };
  return {
    rows,
    give,
    when: (holds, code, subjects, figures) => (holds ? [give(code, subjects, figures)] : []),
    worst: (code, places) =>
      places
        .toSorted((a, b) => b.excess - a.excess)
        .slice(0, PLACES_MOST)
        .map(({ subject, excess, ...figures }) => give(code, [subject], figures)),
    about: (code, subjects) => {
      if (subjects.length === 0) return [];
      const more = subjects.length > NAMED_MOST ? [`and ${subjects.length - NAMED_MOST} more`] : [];
      return [give(code, [...subjects.slice(0, NAMED_MOST), ...more])];
    },
  };
}
