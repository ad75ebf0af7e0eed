import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { publishedChecks } from "../../src/published/registry.js";
import { topics } from "../../src/published/row.js";
import { bibliography, type SourceId, sourceOf } from "../../src/sources/bibliography.js";
import type { Source } from "../../src/sources/source.js";

const ids = Object.keys(bibliography) as SourceId[];
const root = new URL("../../src/", import.meta.url);
const texts = (readdirSync(root, { recursive: true }) as string[])
  .filter((name) => name.endsWith(".ts") && !name.endsWith("bibliography.ts"))
  .map((name) => readFileSync(new URL(name, root), "utf8"));
const named = (id: string) => new RegExp(`(["'\`]${id}["'\`])|(Source: [^\\n]*\\b${id}\\b)`, "u");

describe("bibliography", () => {
  it.each(ids)("%s is named by a coefficient, a check or a doc comment", (id) => {
    expect(texts.some((text) => named(id).test(text))).toBe(true);
  });

  it.each(ids)("%s has a title, and a plausible year and address where it has them", (id) => {
    const { title, year, address }: Source = sourceOf(id);
    expect(title.length).toBeGreaterThan(5);
    expect(id).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/u);
    if (year !== undefined) expect(year > 1700 && year < 2030 && Number.isInteger(year)).toBe(true);
    if (address !== undefined) expect(new URL(address).protocol).toMatch(/^https?:$/u);
  });

  it("gives no two sources one title", () => {
    const titles = ids.map((id) => sourceOf(id).title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it("marks no value as published whose source is only remembered, but for identities", () => {
    const checks = topics.flatMap(publishedChecks);
    const wrong = checks.filter(
      ({ source, status, evidence }) =>
        status === "published" &&
        evidence === "published" &&
        (source === undefined || sourceOf(source).seen === "from memory"),
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });
});
