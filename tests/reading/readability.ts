import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";
import { standsIn, type TextRun, textRuns } from "../../src/report/textruns.js";

/**
 * How hard a text is to read: the school year in which it is read with ease, after
 * Kincaid, J. P., Fishburne, R. P., Rogers, R. L. and Chissom, B. S. (1975): Derivation of new readability formulas for
 * Navy enlisted personnel. Research Branch Report 8-75, Naval Technical Training Command:
 *
 *     grade = 0.39 words / sentences + 11.8 syllables / words − 15.59
 *
 * A word is what stands between spaces; a number and a unit count as one word of one syllable each.
 */
export interface Reading {
  readonly sentences: number;
  readonly words: number;
  readonly grade: number;
}

const notProse: ReadonlySet<string> = new Set([
  ..."script style code pre math svg table dl nav h1 h2 h3 h4 h5 h6 figure header footer".split(" "),
  ..."figure .formula .how .trace .rows .checks .sources .answers .working .trial".split(" "),
]);

const blocks = new Set(["p", "li", "summary"]);

function blockOf({ inside }: TextRun): unknown {
  return inside.findLast(({ name }) => blocks.has(name));
}

/** The prose of a piece of HTML: paragraphs and items of lists, each one text. */
export function proseOf(markup: string): string[] {
  const texts: string[] = [];
  let last: unknown;
  for (const run of textRuns(markup)) {
    const block = blockOf(run);
    if (block === undefined || standsIn(run, notProse)) continue;
    if (block === last) texts[texts.length - 1] += run.text;
    else texts.push(run.text);
    last = block;
  }
  return texts.map((text) => text.replace(/\s+/gu, " ").trim()).filter((text) => text !== "");
}

const sentenceEnds = new Intl.Segmenter("en", { granularity: "sentence" });

/** Sentences of a text; a colon before a list or a formula ends one as well. */
export function sentencesOf(text: string): string[] {
  return [...sentenceEnds.segment(text)].map(({ segment }) => segment.trim()).filter((one) => wordsOf(one).length > 0);
}

function wordsOf(text: string): string[] {
  return text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word));
}

/** The reading of a few sentences. */
export function readingOf(sentences: readonly string[]): Reading {
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  const counts = { sentence: sentences.length, word: words.length, syllable: syllables };
  return { sentences: sentences.length, words: words.length, grade: fleschKincaid(counts) };
}

/** Below this many words the formula says little about a sentence. */
const leastWords = 8;

/** The sentences that are hardest to read, the hardest first. */
export function hardest(
  sentences: readonly string[],
  count: number,
): { readonly text: string; readonly grade: number }[] {
  return sentences
    .map((text) => ({ text, ...readingOf([text]) }))
    .filter(({ words }) => words >= leastWords)
    .sort((one, other) => other.grade - one.grade)
    .slice(0, count);
}
