import { describe, expect, it } from "vitest";
import { projectFiles, read } from "./project.js";

const files = projectFiles();
const agreed = ["notebooks", "src", "tests", "reports", "package.json", "package-lock.json", "tsconfig.json"];
const papers = ["README.md", "DEVELOPERS.md", "LICENSE"];
const notebooks = files.filter((file) => /^notebooks\/.*\.ipynb$/u.test(file));

/** Split, so that this file does not hold the words that it looks for. */
const unwanted = [
  ["TO", "DO"],
  ["FIX", "ME"],
  ["/wo", "rk/"],
  ["../sha", "red"],
].map((parts) => parts.join(""));

interface Cell {
  readonly cell_type: string;
  readonly outputs?: readonly unknown[];
  readonly execution_count?: number | null;
}

describe("the repository", () => {
  it("has only the agreed names at its top", () => {
    const top = [...new Set(files.map((file) => file.split("/")[0]!))];
    const strangers = top.filter((name) => !name.startsWith(".") && ![...agreed, ...papers].includes(name));
    expect(strangers).toEqual([]);
  });

  it("keeps nothing of what it builds", () => {
    expect(files.filter((file) => /^(?:dist|node_modules)\//u.test(file))).toEqual([]);
    expect(files.filter((file) => file.startsWith("reports/"))).toEqual(["reports/README.md"]);
  });

  it("leaves no unfinished business and no path of one machine in its text", () => {
    const texts = files.filter((file) => /^(?:src|notebooks|reports)\/|^(?:README|DEVELOPERS)\.md$/u.test(file));
    expect(texts.length).toBeGreaterThan(80);
    const found = texts.flatMap((file) => {
      const text = read(file);
      return unwanted.filter((word) => text.includes(word)).map((word) => `${file}: ${word}`);
    });
    expect(found).toEqual([]);
  });

  it.runIf(notebooks.length > 0).each(notebooks)("keeps %s without outputs and counts", (file) => {
    const { cells } = JSON.parse(read(file)) as { cells: readonly Cell[] };
    const run = cells.filter(
      ({ cell_type, outputs, execution_count }) =>
        cell_type === "code" && ((outputs?.length ?? 0) > 0 || (execution_count ?? null) !== null),
    );
    expect(run).toEqual([]);
  });
});
