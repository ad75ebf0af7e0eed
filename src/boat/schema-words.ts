import { z } from "zod";
import { Refusal } from "../quantity/errors.js";
import { parseQuantity } from "../quantity/parse.js";
import { suggestion } from "../quantity/suggestion.js";
import { type QuantityName, vocabulary } from "../quantity/vocabulary.js";
import type { VocabularyEntry } from "../quantity/vocabulary-entry.js";
import type { Price } from "./boat.js";
import { newWordFor } from "./old-words.js";

/** What would have been accepted, and what to do, in one message of the schema. */
export function wanted(allowed: string, advice: string): string {
  return `${allowed}\n${advice}`;
}

/** The two parts of such a message; one that the schema wrote itself has no advice. */
export function wantedParts(message: string): { allowed: string; advice: string } {
  const [allowed = "", advice = ""] = message.split("\n");
  return { allowed, advice };
}

/** Most of a text of somebody's file that a message repeats. */
const mostRepeated = 80;

const cut = (text: string) => (text.length > mostRepeated ? `${text.slice(0, mostRepeated - 1)}…` : text);

/** A text of somebody's file in quotes: cut, and on one line whatever is in it. */
export function quotedForeign(text: string): string {
  return cut(JSON.stringify(text));
}

/** Key by key to a place in a file, such as `lines › mainsheet › hand`; each key cut, and on one line. */
export function wayTo(path: readonly PropertyKey[]): string {
  return path.map((key) => cut(JSON.stringify(String(key)).slice(1, -1))).join(" › ");
}

/** A question for a word that nobody knows. */
export function didYouMean(word: string, known: readonly string[]): string {
  const now = newWordFor(word);
  if (now !== undefined && known.includes(now)) return `This is called "${now}" now: write that.`;
  const near = suggestion(word, known);
  return near === undefined ? "Take one of these." : `Did you mean "${near}"?`;
}

/** Words in quotes, with commas. */
export function quoted(words: readonly string[]): string {
  return words.map((word) => `"${word}"`).join(", ");
}

/** A text with number and unit, read into SI. */
export function quantity(name: QuantityName, meaning: string) {
  const entry: VocabularyEntry = vocabulary[name];
  const { example } = entry;
  return z
    .string({
      error: () => wanted(`a text with a number and its unit, such as "${example}"`, "Write the unit with it."),
    })
    .meta({ description: meaning, examples: [example] })
    .transform((text, context): number => {
      try {
        return parseQuantity(name, text);
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        context.addIssue({ code: "custom", message: wanted(error.allowed, error.advice) });
        return z.NEVER;
      }
    });
}

/** A plain number of the vocabulary: a factor, a share, a count. */
export function plain(name: QuantityName, meaning: string, least?: number, most?: number) {
  const { minimum, maximum, example }: VocabularyEntry = vocabulary[name];
  const [low, high] = [least ?? minimum, most ?? maximum];
  const error = () => wanted(`a number from ${low} to ${high}, without a unit`, `Write it like ${example}.`);
  return z.number({ error }).min(low, { error }).max(high, { error }).meta({ description: meaning });
}

/** A whole number. */
export function count(meaning: string, least: number, most: number) {
  const error = () => wanted(`a whole number from ${least} to ${most}`, "Count them.");
  return z.int({ error }).min(least, { error }).max(most, { error }).meta({ description: meaning });
}

/** One of a few words, with a question for what was meant. */
export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words, meaning: string) {
  return z
    .enum(words, {
      error: ({ input }) => wanted(`one of ${quoted(words)}`, didYouMean(String(input), words)),
    })
    .meta({ description: meaning });
}

/** One of the names of a table of the library. */
export function nameIn<Table extends object>(table: Table, meaning: string) {
  return oneOf(Object.keys(table) as [keyof Table & string, ...(keyof Table & string)[]], meaning);
}

/** A mapping whose keys are all known; an unknown one is refused with a question for what was meant. */
export function mapping<Shape extends z.core.$ZodLooseShape>(shape: Shape, meaning: string) {
  const known = Object.keys(shape);
  return z
    .strictObject(shape, {
      error: (issue) =>
        issue.code === "unrecognized_keys"
          ? wanted(`the keys ${quoted(known)}`, issue.keys.map((key: string) => didYouMean(key, known)).join(" "))
          : wanted(`a mapping with the keys ${quoted(known)}`, "Write one key a line, each with its value."),
    })
    .meta({ description: meaning });
}

/** Letters of most scripts, spelled out so that every editor reads the pattern of the JSON Schema alike. */
const letters = "A-Za-z\\u00c0-\\u024f\\u0370-\\u1fff\\u3040-\\ud7ff0-9";
const nameForm = new RegExp(`^[${letters}][${letters} .,:()+/'-]{0,59}$`);
/** Letters that show nothing: fillers, and vowel marks without a sign of their own. */
const fillers = ["\u115f", "\u1160", "\u17b4", "\u17b5", "\u180e", "\u3164"];
/** A colon stands between two numbers only, as in 4:1: elsewhere it would make an address of a name. */
const isPlain = (name: string) => !/(?<!\d):|:(?!\d)/u.test(name);
const isSeen = (name: string) =>
  isPlain(name) && [...name].some((sign) => /[\p{L}\p{N}]/u.test(sign) && !fillers.includes(sign));

const nameAdvice = wanted(
  "a name of 1 to 60 letters, digits, spaces or . , ( ) + / ' -, or a colon between two digits, a letter or digit first",
  "Choose a short name.",
);

/** A name that the user chooses. */
export function chosenName(meaning: string) {
  return z
    .string({ error: () => nameAdvice })
    .regex(nameForm, { error: () => nameAdvice })
    .refine(isSeen, { error: () => nameAdvice })
    .meta({ description: meaning });
}

/** Things by names that the user chooses. */
export function named<Thing extends z.ZodType>(thing: Thing, meaning: string) {
  return z
    .record(
      z
        .string()
        .regex(nameForm, { error: () => nameAdvice })
        .refine(isSeen, { error: () => nameAdvice }),
      thing,
      {
        error: (issue) =>
          issue.code === "invalid_key" ? nameAdvice : wanted("a mapping of names to things", "Write one name a line."),
      },
    )
    .meta({ description: meaning });
}

/** A list, with something in it where nothing else is said. */
export function list<Thing extends z.ZodType>(thing: Thing, most: number, meaning: string, least = 1) {
  const error = () => wanted(`a list of ${least} to ${most}`, "Write one a line, each after a dash.");
  return z.array(thing, { error }).min(least, { error }).max(most, { error }).meta({ description: meaning });
}

/** Free words. */
export function words(meaning: string) {
  const error = () => wanted("a text of up to 2000 letters", "Put it in quotes.");
  return z.string({ error }).max(2000, { error }).meta({ description: meaning });
}

/** Yes or no. */
export function yesOrNo(meaning: string) {
  return z
    .boolean({ error: () => wanted("true or false", "Write true or false, without quotes.") })
    .meta({ description: meaning });
}

const amount = "(\\d{1,7}(?:\\.\\d{1,2})?)";
const currency = "(?: ([\\p{L}\\p{Sc}]{1,12}))?";
const money = {
  whole: new RegExp(`^${amount}${currency}$`, "u"),
  metre: new RegExp(`^${amount}${currency} ?/m$`, "u"),
};

/** A price, of a piece or of a metre, with the user's own word for the currency or without one. */
export function price(of: keyof typeof money, meaning: string) {
  const example = of === "metre" ? "2.40 EUR/m" : "18 EUR";
  const message = wanted(
    `a price such as "${example}"${of === "metre" ? ' or "2.40/m"' : " or 18"}`,
    "Write the amount, a word for the currency if you like, and /m for rope.",
  );
  const error = () => message;
  return z
    .union([z.string({ error }), z.number({ error })], { error })
    .meta({ description: meaning, examples: [example] })
    .transform((written, context): Price => {
      const [, sum, word = ""] = money[of].exec(String(written)) ?? [];
      if (sum !== undefined) return { amount: Number(sum), currency: word };
      context.addIssue({ code: "custom", message });
      return z.NEVER;
    });
}
