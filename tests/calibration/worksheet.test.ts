import { describe, expect, it } from "vitest";
import { readReadings } from "../../src/calibration/readings.js";
import { worksheet } from "../../src/calibration/worksheet.js";
import { ReevingError, ValueError } from "../../src/quantity/errors.js";
import { worksheetHtml } from "../../src/report/worksheetpage.js";

describe("the sheet", () => {
  it("has a row for each load of each line, and some to spare", () => {
    const { rows, columns } = worksheet([{ name: "mainsheet" }, { name: "halyard", masses: [2.5] }]);
    expect(rows.filter(([name]) => name !== "").map(([name, mass]) => [name, mass])).toEqual([
      ["mainsheet", "5 kg"],
      ["mainsheet", "10 kg"],
      ["mainsheet", "20 kg"],
      ["halyard", "2.5 kg"],
    ]);
    expect(new Set(rows.map(({ length }) => length))).toEqual(new Set([columns.length]));
  });

  it("shows a way of typing that can be read back", () => {
    const { readings, refusals } = readReadings(worksheet([{ name: "mainsheet" }]).example.join("\r\n"));
    expect(refusals).toEqual([]);
    expect(readings[0]!.load).toBeCloseTo(98.0665, 9);
  });

  it("refuses names and masses that cannot be", () => {
    for (const name of ["", "  ", "x".repeat(81)]) expect(() => worksheet([{ name }])).toThrow(ValueError);
    expect(() => worksheet([{ name: "a" }, { name: "a" }])).toThrow("twice");
    expect(() => worksheet([{ name: "a", masses: [0] }])).toThrow(ValueError);
    expect(() => worksheet([])).toThrow(ReevingError);
    expect(() => worksheet(Array.from({ length: 21 }, (_, index) => ({ name: String(index) })))).toThrow(ReevingError);
  });

  it("becomes a page that carries everything, with names as text", () => {
    const page = worksheetHtml(worksheet([{ name: '<img src=x onerror="1">=1+1' }]));
    expect(page).not.toContain("<img");
    expect(page).toContain("&lt;img");
    expect(page).not.toMatch(/<script|<link/u);
    expect(page).toMatch(/@page\{size:A4/u);
    expect(page).toContain("Take care");
    expect(worksheetHtml(worksheet([{ name: '<img src=x onerror="1">=1+1' }]))).toBe(page);
  });
});
