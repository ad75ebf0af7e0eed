import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as haulbook from "../../src/index.js";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");

describe("README", () => {
  it("shows a worked line whose numbers are those of the library", () => {
    const block = /```ts\n([\s\S]*?)```/u.exec(readme)?.[1] ?? "";
    const code = block
      .replace(/^import .*$/mu, "")
      .replaceAll(" as const", "")
      .replace("sheet.handForces", "return sheet.handForces");
    const { prepareLine, tackle } = haulbook;
    const answer = new Function("prepareLine", "tackle", code)(prepareLine, tackle) as haulbook.HandForces;
    const shown = /\/\/ \{ (.*) \}/u.exec(block)?.[1] ?? "";
    const numbers = [...shown.matchAll(/(\w+): ([\d.]+)/gu)].map(([, name = "", value = ""]) => [name, value] as const);
    expect(numbers.map(([name]) => name)).toEqual(Object.keys(answer).filter((name) => name !== "flags"));
    for (const [name, value] of numbers) {
      const digits = value.split(".")[1]?.length ?? 0;
      expect(Number(answer[name as "hauling"].toFixed(digits)), name).toBe(Number(value));
    }
  });
});
