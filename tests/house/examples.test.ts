import { describe, expect, it } from "vitest";
import * as haulbook from "../../src/index.js";
import { publicFunctions } from "./project.js";

/** `Example: call → value` at the end of a doc comment, the call in one line or several. */
const examples = publicFunctions().flatMap(({ name, comment }) => {
  const text = comment.replace(/\s*\*\/$/u, "").replaceAll(/\n\s*\*\s?/gu, " ");
  return [...text.matchAll(/Example: (.+?) → (.+?)(?= Example: |$)/gu)].map(
    (match) => [name, match[1]!.trim(), match[2]!.trim()] as const,
  );
});

const offered = Object.entries(haulbook);

function run(call: string): unknown {
  const names = offered.map(([name]) => name);
  return new Function(...names, `"use strict"; return (${call});`)(...offered.map(([, value]) => value));
}

/** False for an example that names data of its reader, such as `rows` or `title`: it is shown, and cannot be run. */
function runnable(call: string): boolean {
  try {
    run(call);
    return true;
  } catch (error) {
    if (error instanceof ReferenceError) return false;
    throw error;
  }
}

const notebookNames = new Set(
  publicFunctions()
    .filter(({ file }) => file.startsWith("src/notebook/"))
    .map(({ name }) => name),
);

/** Digits after the point of a printed number. */
function digitsOf(printed: string): number {
  return printed.split(".")[1]?.length ?? 0;
}

describe("examples of the doc comments", () => {
  it("are many, and those of the calculations can all be run", () => {
    expect(examples.length).toBeGreaterThan(60);
    const shown = examples.filter(([, call]) => !runnable(call)).map(([name]) => name);
    expect(shown.filter((name) => !notebookNames.has(name))).toEqual([]);
    expect(shown.length).toBeLessThanOrEqual(2);
  });

  it.each(examples.filter(([, call]) => runnable(call)))("%s: %s → %s", (name, call, printed) => {
    expect(call).toContain(name);
    const value = run(call);
    const number = printed.replace("−", "-").replace(/\s.*$/u, "");
    if (/^-?\d/u.test(number) && typeof value === "number") {
      const digits = digitsOf(number);
      expect(Number(value.toFixed(digits))).toBe(Number(number));
      return;
    }
    expect(value).toEqual(run(printed));
  });
});
