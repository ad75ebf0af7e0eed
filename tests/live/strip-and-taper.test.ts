import { describe, expect, it } from "vitest";
import { along, falls, named, rises, value } from "./asked.js";

const model = "strip-and-taper";
const line = named(model);

describe("a line whose cover ends on the way", () => {
  it("lets the cover go out by the purchase times the travel", () => {
    const at = (settings: Record<string, number | string>) =>
      value(line, "Cover begins before the cleat, let out", settings);
    expect(at({ cover: 0.4, parts: "4", travel: 0.3 })).toBeCloseTo(1.6, 12);
    expect(at({ cover: 1, parts: "1", travel: 2 })).toBeCloseTo(3, 12);
  });

  it("has a longer thin part and saves more, the sooner the cover ends", () => {
    expect(falls(along(model, "Thin part", "cover"))).toBe(true);
    expect(falls(along(model, "Saved dry", "cover"))).toBe(true);
    expect(rises(along(model, "Saved wet", "reach"))).toBe(true);
  });

  it("saves more wet than dry where a thirsty cover is gone", () => {
    expect(value(line, "Saved wet", { join: "strip" })).toBeGreaterThan(value(line, "Saved dry", { join: "strip" }));
  });

  it("breaks later the thicker the thin part is, by its square", () => {
    const label = "Thin part breaks at, new and straight";
    expect(value(line, label, { thin: 3 }) / value(line, label, { thin: 1.5 })).toBeCloseTo(4, 9);
    const polyester = value(line, label, { fibre: "polyester" });
    for (const fibre of ["hmpe", "aramid"]) expect(value(line, label, { fibre })).toBeGreaterThan(2 * polyester);
  });

  it("jams where the cover reaches the first block, and says what helps", () => {
    const said = (block: number) => line.compute({ block }).sentence;
    expect(said(1.6)).toContain("clears the first block");
    expect(said(1.4)).toMatch(/jams.*What helps: start the cover 0\.2 m before the cleat/u);
    expect(said(0.3)).toMatch(/jams[^?]*nearer\.$/u);
  });
});
