import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { markdownBlocks, PageIds } from "../../src/report/markdown.js";
import { hardest, proseOf, readingOf, sentencesOf } from "./readability.js";

/** A club sailor of fifteen is in the ninth school year or above; words of the trade, which the formula does not know, take the rest. */
const highestGrade = 7;

/** No single sentence may ask for more than school teaches to its end, with a good part of college. */
const highestOfOne = 18;

const folder = new URL("../../notebooks/", import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith(".ipynb"));

interface Cell {
  readonly cell_type: string;
  readonly source: string | readonly string[];
}

/** Sentences of the prose of a notebook. */
function sentencesOfNotebook(name: string): string[] {
  const { cells } = JSON.parse(readFileSync(fileURLToPath(new URL(name, folder)), "utf8")) as {
    cells: readonly Cell[];
  };
  return cells
    .filter(({ cell_type: type }) => type === "markdown")
    .map(({ source }) => (typeof source === "string" ? source : source.join("")))
    .flatMap((source) => proseOf(markdownBlocks(source, { place: name, ids: new PageIds() }).text))
    .flatMap(sentencesOf);
}

describe("readability", () => {
  it("counts sentences, words and syllables of a text whose counts are known", () => {
    // 2 sentences, 10 words, 13 syllables.
    const sentences = sentencesOf("The sheet runs over a sheave. It loses its pulling.");
    expect(sentences).toHaveLength(2);
    const { words, grade } = readingOf(sentences);
    expect(words).toBe(10);
    expect(grade).toBeCloseTo(0.39 * (10 / 2) + 11.8 * (13 / 10) - 15.59, 9);
  });

  it("leaves out code, formulas, tables and headings", () => {
    const source =
      "# A heading\n\nOne `code` word $x^2$.\n\n$$y$$\n\n| a | b |\n|---|---|\n| c | d |\n\n- An item\n\n```ts\nno\n```";
    const texts = proseOf(markdownBlocks(source, { place: "", ids: new PageIds() }).text);
    expect(texts).toEqual(["One word .", "An item"]);
  });

  it("grows with longer sentences and longer words", () => {
    const short = readingOf(["The line runs.", "It stops."]).grade;
    expect(readingOf(["The line runs and it stops."]).grade).toBeGreaterThan(short);
    expect(readingOf(["The manufacturer considerably overestimates.", "It stops."]).grade).toBeGreaterThan(short);
  });
});

describe("prose of the notebooks", () => {
  it.each(names)("%s can be read at fifteen", (name) => {
    const sentences = sentencesOfNotebook(name);
    expect(sentences.length).toBeGreaterThan(10);
    const { grade } = readingOf(sentences);
    const worst = hardest(sentences, 6);
    const list = worst.map(({ text, grade: own }) => `${own.toFixed(1)}: ${text}`).join("\n");
    expect(grade, list).toBeLessThanOrEqual(highestGrade);
    expect(worst[0]?.grade, list).toBeLessThanOrEqual(highestOfOne);
  });
});
