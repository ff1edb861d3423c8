/** Holds sentences to the rules of plain words. */
import type { Text } from './collected-texts.ts';

export interface Finding {
  readonly where: string;
  readonly rule: string;
  readonly text: string;
}

/** Words a sentence may have; 22 is the aim. */
export const SENTENCE_WORDS = 30;

/** Figures of speech, and words that the glossary has given up; each with what is written in its place. */
export const RETIRED_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\btells?\b|\btold\b|\btelling\b/i, 'determine, say, state'],
  [/\bmend(s|ed|ing)?\b/i, 'remedy, correct'],
  [/\bbeside\b/i, 'with, next to'],
  [/\banew\b/i, 'again'],
  [/\bstands?\b(?! for\b)|\bstood\b/i, 'is, lies'],
  [/\bhangs? on\b/i, 'depends on'],
  [/\bgo(es)? by\b/i, 'follow'],
  [/\bdoubt(s|ed|ful)?\b/i, 'uncertainty'],
  [/\bshut\b/i, 'closed'],
  [/\bbad end\b/i, 'worst case'],
  [/\bnow and then\b/i, 'installed and recommended'],
  [/\bneediest\b/i, 'limiting outlet'],
];

/**
 * Sentences that a rule does not hold for, each with its reason. A word that is quoted, or written as code, is not judged.
 */
export const EXCEPTIONS: readonly { readonly text: RegExp; readonly reason: string }[] = [];

const withoutQuotes = (text: string): string => text.replace(/`[^`]*`/g, 'code').replace(/"[^"]*"/g, 'name');

/** A value with its unit counts as one word, as does a formula of letters and signs. */
const countWords = (sentence: string): number =>
  sentence
    .replace(/-?\d+(?:[.,]\d+)*\s*(?:%|[A-Za-z/0-9]{1,6}\b)?/g, 'N ')
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Sentences end at a point, colon of a list or semicolon before a space and a capital, or at a new paragraph. */
const sentencesOf = (text: string): readonly string[] =>
  text
    .split(/\n\s*\n|\n(?=\s*[-*] )|(?<=[.!?])\s+(?=[\p{Lu}"`'(\d])/u)
    .map((sentence) => sentence.replace(/\s+/g, ' ').trim())
    .filter((sentence) => sentence !== '');

const isExcepted = (text: string): boolean => EXCEPTIONS.some((one) => one.text.test(text));

export function wordFindings(texts: readonly Text[]): readonly Finding[] {
  return texts.flatMap(({ where, text }) =>
    sentencesOf(withoutQuotes(text)).flatMap((sentence) => {
      if (isExcepted(sentence)) return [];
      const words = countWords(sentence);
      const long =
        words > SENTENCE_WORDS ? [{ where, rule: `a sentence of ${words} words`, text: sentence }] : [];
      const retired = RETIRED_WORDS.filter(([word]) => word.test(sentence)).map(([word, instead]) => ({
        where,
        rule: `${word.exec(sentence)?.[0]}: ${instead}`,
        text: sentence,
      }));
      return [...long, ...retired];
    }),
  );
}
