import { describe, expect, it } from "vitest";
import { filesBelow, read } from "./project.js";

const sizes = filesBelow("src").map((file) => ({ file, lines: read(file).split("\n").length - 1 }));

describe("files of src", () => {
  it("have at most 400 lines, but for the table of contents", () => {
    const others = sizes.filter(({ file }) => file !== "src/index.ts");
    expect(others.filter(({ lines }) => lines > 400)).toEqual([]);
  });

  it("have 20 to 160 lines in the middle", () => {
    const sorted = sizes.map(({ lines }) => lines).sort((a, b) => a - b);
    const median = sorted[Math.floor(sorted.length / 2)]!;
    expect(median).toBeGreaterThanOrEqual(20);
    expect(median).toBeLessThanOrEqual(160);
  });
});
