import { describe, expect, it } from "vitest";
import { printBand, printRange, printWithRange } from "../../src/uncertainty/printed-band.js";

const band = { value: 84.6, low: 70.2, high: 108.2 };

describe("a printed range", () => {
  it("has two figures where two are enough", () => {
    expect(printRange(band)).toBe("70 to 110");
    expect(printWithRange(band)).toBe("84.6 (70 to 110)");
  });

  it("has three where two would leave out the middle", () => {
    expect(printRange({ value: 10.04, low: 9.96, high: 10.1 })).toBe("9.96 to 10.1");
    expect(printRange({ value: 147, low: 144, high: 147.4 })).toBe("144 to 147");
  });

  it("has three where two would move an end by much of the width", () => {
    expect(printRange({ value: 112, low: 106, high: 124 })).toBe("106 to 124");
  });

  it("has as many as are asked for", () => {
    expect(printRange(band, 3)).toBe("70.2 to 108");
    expect(printWithRange(band, 2)).toBe("85 (70 to 110)");
    expect(printBand(band, 3)).toBe("84.6 (70.2 to 108)");
  });

  it("is left out where both ends print alike", () => {
    const sure = { value: 3, low: 3, high: 3 };
    for (const print of [printBand, printWithRange]) expect(print(sure)).toBe("3");
    expect(printBand({ value: 1000, low: 999.9, high: 1000.1 })).toBe("1000");
  });

  it("says where it has no end", () => {
    const open = { value: 4, low: 2.5, high: Number.POSITIVE_INFINITY };
    expect(printRange(open)).toBe("2.5 to no end");
    expect(printBand(open)).toBe("4 (2.5 to no end)");
    expect(printWithRange(open, 2)).toBe("4 (2.5 to no end)");
  });
});
