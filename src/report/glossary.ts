import { type QuantityName, vocabulary } from "../quantity/vocabulary.js";
import { tradeWords } from "./tradewords.js";

/** A word that pages explain. */
export interface GlossaryTerm {
  readonly term: string;
  readonly meaning: string;
  /** Everything that a text may say for it, plurals among them. */
  readonly forms: readonly string[];
  /** What a text may say for it behind a number only. */
  readonly behindNumber: readonly string[];
}

/** Quantities whose names mean in a text what they mean everywhere, or something else than the quantity. */
const everyday: ReadonlySet<QuantityName> = new Set([
  "lineLength",
  "mass",
  "duration",
  "depth",
  "share",
  "count",
  "height",
  "age",
  "temperature",
  "lift",
  "travel",
  "drive",
  "work",
  "strain",
  "stress",
  "turnCount",
  "sheaveCount",
  "strands",
  "tailShare",
  "heat",
  "boatLength",
  "lengthsSailed",
  "lineCount",
]);

/**
 * A term and its plural.
 *
 * @param term  words in the singular; the last one is counted
 * @returns both, or the term alone where it is a plural already
 * Example: withPlural("belly") → ["belly", "bellies"]
 */
export function withPlural(term: string): string[] {
  if (/(?<!s)s$/u.test(term)) return [term];
  if (/[^aeiou]y$/u.test(term)) return [term, `${term.slice(0, -1)}ies`];
  return [term, `${term}${/(?:s|x|ch|sh)$/u.test(term) ? "es" : "s"}`];
}

/** Every term, in the order of the alphabet. */
export const glossary: readonly GlossaryTerm[] = [
  ...tradeWords.map(({ word, forms = [], onlyAs, behindNumber = [], meaning }) => ({
    term: word,
    meaning,
    forms: (onlyAs ?? [...withPlural(word), ...forms]).filter((form) => !behindNumber.includes(form)),
    behindNumber,
  })),
  ...Object.entries(vocabulary)
    .filter(([name]) => !everyday.has(name as QuantityName))
    .map(([, { label, meaning }]) => ({ term: label, meaning, forms: withPlural(label), behindNumber: [] })),
].sort((one, other) => one.term.localeCompare(other.term, "en"));
