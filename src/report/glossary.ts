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
  /** Beginnings of words, one of which its sentence holds where the term is meant; without them it always is. */
  readonly beside?: readonly string[] | undefined;
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

/** Words of quantities that mean something else as well, with the beginnings of words beside which they mean the quantity. */
const beside: Partial<Record<QuantityName, readonly string[]>> = {
  stretch: "rope line halyard outhaul sheet creep gust fibre polyester groove tension stiff length elastic".split(" "),
};

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
  ...tradeWords.map(({ word, forms = [], onlyAs, behindNumber = [], beside, meaning }) => ({
    term: word,
    meaning,
    forms: (onlyAs ?? [...withPlural(word), ...forms]).filter((form) => !behindNumber.includes(form)),
    behindNumber,
    beside,
  })),
  ...Object.entries(vocabulary)
    .filter(([name]) => !everyday.has(name as QuantityName))
    .map(([name, { label, meaning }]) => ({
      term: label,
      meaning,
      forms: withPlural(label),
      behindNumber: [],
      beside: beside[name as QuantityName],
    })),
].sort((one, other) => one.term.localeCompare(other.term, "en"));
