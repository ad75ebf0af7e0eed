import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import { NotANotebookError } from "../../src/notebook/errors.js";
import { readNotebook } from "../../src/notebook/read.js";
import { long } from "../long.js";
import { damaged, seeded } from "./random.js";

const cases = long(1000, 10_000);
const folder = mkdtempSync(join(tmpdir(), "haulbook-fuzzed-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const whole = readFileSync(fileURLToPath(new URL("../../notebooks/around-a-ring.ipynb", import.meta.url)), "utf8");

/** A notebook of the demo with its first cells only, so that accidents meet its structure as often as its texts. */
const short = () => {
  const { cells, ...rest } = JSON.parse(whole) as { cells: unknown[] };
  return JSON.stringify({ ...rest, cells: cells.slice(0, 3) }, null, 1);
};

/** Values that stand where others are wanted. */
const strangers: readonly unknown[] = [
  null,
  0,
  -1,
  1e308,
  "",
  "x",
  "__proto__",
  [],
  [[]],
  {},
  [null],
  true,
  { cells: 1 },
];

/** Puts a stranger in the place of a value somewhere below. */
function displaced(value: unknown, random: () => number): unknown {
  const stranger = () => strangers[Math.floor(random() * strangers.length)];
  if (typeof value !== "object" || value === null || random() < 0.15) return stranger();
  const keys = Object.keys(value);
  if (keys.length === 0) return stranger();
  const key = keys[Math.floor(random() * keys.length)] as string;
  if (random() < 0.1) return Object.fromEntries(Object.entries(value).filter(([name]) => name !== key));
  const inner = displaced((value as Record<string, unknown>)[key], random);
  return Array.isArray(value)
    ? value.map((item: unknown, index) => (String(index) === key ? inner : item))
    : { ...value, [key]: inner };
}

test(`${cases} damaged notebooks: each is read, or refused as no notebook`, async () => {
  const random = seeded(7);
  const text = short();
  const file = join(folder, "hurt.ipynb");
  const counts = { read: 0, refused: 0 };
  for (let number = 0; number < cases; number += 1) {
    const hurt = number % 2 === 0 ? damaged(text, random) : JSON.stringify(displaced(JSON.parse(text), random));
    writeFileSync(file, hurt);
    try {
      const { cells } = await readNotebook(file);
      expect(cells.every(({ source }) => typeof source === "string")).toBe(true);
      counts.read += 1;
    } catch (error) {
      if (!(error instanceof NotANotebookError)) throw new Error(`case ${number} of seed 7: ${hurt}`, { cause: error });
      expect(error.message).toContain("hurt.ipynb");
      counts.refused += 1;
    }
  }
  expect(counts.read + counts.refused).toBe(cases);
  expect(Math.min(counts.read, counts.refused)).toBeGreaterThan(cases / 50);
});
