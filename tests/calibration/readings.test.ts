import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReadingError } from "../../src/calibration/reading-error.js";
import { readReadings } from "../../src/calibration/readings.js";

const head = "line,load [N],haul [N],ease [N],resolution [N],wet";
const refusal = (row: string, top = head) => {
  const { readings, refusals } = readReadings(`${top}\n${row}\n`);
  expect(readings).toEqual([]);
  expect(refusals).toHaveLength(1);
  return refusals[0]!;
};
const thrown = (text: string, format: "csv" | "yaml" = "csv") => {
  try {
    readReadings(text, format);
  } catch (error) {
    expect(error).toBeInstanceOf(ReadingError);
    return error as ReadingError;
  }
  throw new Error("it was not refused");
};

const kgf = 9.80665;

describe("a file of readings", () => {
  it("is read with units in the head", () => {
    const { readings, refusals } = readReadings(`${head}\nlead,100,110,91,1,yes\nlead,200,220,,1,\n`);
    expect(refusals).toEqual([]);
    expect(readings).toEqual([
      { row: 2, line: "lead", load: 100, haul: 110, ease: 91, resolution: 1, wet: true },
      { row: 3, line: "lead", load: 200, haul: 220, resolution: 1, wet: false },
    ]);
  });

  it("is read with units beside the numbers, which win over the head", () => {
    const { readings } = readReadings(`${head}\nlead,10 kgf,25 lbf,91,0.1 kgf,no\n`);
    expect(readings[0]!.load).toBeCloseTo(10 * kgf, 9);
    expect(readings[0]!.haul).toBeCloseTo(25 * 4.4482216, 5);
    expect(readings[0]!.ease).toBe(91);
  });

  it.each([
    ["Windows line ends", "line,load [N],haul [N],ease [N],resolution [N]\r\nlead,100,110,91,1\r\n"],
    ["old line ends", "line,load [N],haul [N],ease [N],resolution [N]\rlead,100,110,91,1\r"],
    ["a byte-order mark", "\ufeffline,load [N],haul [N],ease [N],resolution [N]\nlead,100,110,91,1\n"],
    ["decimal commas between semicolons", "line;load [N];haul [N];ease [N];resolution [N]\nlead;100,0;110,0;91,0;1\n"],
    ["decimal commas in quotes", 'line,load [N],haul [N],ease [N],resolution [N]\nlead,"100,0","110,0",91,1\n'],
    ["tabs", "line\tload [N]\thaul [N]\tease [N]\tresolution [N]\nlead\t100\t110\t91\t1\n"],
    [
      "round brackets, capitals and spaces",
      " Line , Load (N) , HAUL N, ease [ N ],resolution [N]\n lead , 100 ,110,91,1\n",
    ],
    ["no line end at its end", "line,load [N],haul [N],ease [N],resolution [N]\nlead,100,110,91,1"],
    [
      "empty cells at the end of rows",
      "line,load [N],haul [N],ease [N],resolution [N],,\nlead,100,110,91,1,,\n,,,,,,\n",
    ],
  ])("may have %s", (_, text) => {
    const { readings, refusals } = readReadings(text);
    expect(refusals).toEqual([]);
    expect(readings).toEqual([{ row: 2, line: "lead", load: 100, haul: 110, ease: 91, resolution: 1, wet: false }]);
  });

  it("counts rows as an editor does, remarks, blank rows and line breaks in cells included", () => {
    const text = `# made up, with a comma\n\n${head},note\nlead,100,110,91,1,no,"two\nlines"\n\n# more\nlead,200,220,182,1,no,\n`;
    expect(readReadings(text).readings.map(({ row }) => row)).toEqual([4, 8]);
  });

  it("may have a single reading", () => {
    expect(readReadings(`${head}\nlead,100,110,91,1,\n`).readings).toHaveLength(1);
  });

  it("keeps a formula as text and never works it out", () => {
    const formula = '=HYPERLINK("http://x","y")';
    const { readings } = readReadings(`${head}\n"${formula.replaceAll('"', '""')}",100,110,91,1,\n@sum,100,110,91,1,`);
    expect(readings.map(({ line }) => line)).toEqual([formula, "@sum"]);
    for (const cell of ["=1+1", "=A1*2", "+1+1", "-2+3", "=cmd|' /C calc'!A0", "100+10"]) {
      const error = refusal(`lead,${cell},110,91,1,`);
      expect(error).toMatchObject({ row: 2, column: "load", value: JSON.stringify(cell) });
      expect(error.message).toContain("formulas are not worked out");
    }
  });

  it("takes impossible pulls as they are: judging them is another matter", () => {
    expect(readReadings(`${head}\nlead,100,80,-3,1,\n`).readings[0]).toMatchObject({ haul: 80, ease: -3 });
  });
});

describe("a refusal", () => {
  it.each([
    ["lead,100 kg,110,91,1,", "load", "kgf"],
    ["lead,100 lbs,110,91,1,", "load", "lbf"],
    ["lead,100 m,110,91,1,", "load", "N, daN, kN"],
    ["lead,100 stone,110,91,1,", "load", "12 kgf"],
    ["lead,much,110,91,1,", "load", "a number"],
    ["lead,1e400,110,91,1,", "load", "1000 kN"],
    ["lead,5e9,110,91,1,", "load", "1000 kN"],
    ["lead,NaN,110,91,1,", "load", "a number"],
    ['lead,"1,250",110,91,1,', "load", "1250 or 1.25"],
    ['lead,"1.250,5",110,91,1,', "load", "a number"],
    ["lead,,110,91,1,", "load", "far end"],
    ["lead,100,,,1,", "haul", "a pull"],
    ["lead,100,110,91,,", "resolution", "step of the scale"],
    ["lead,100,110,91,0,", "resolution", "above 0"],
    [",100,110,91,1,", "line", "Name the line"],
    ["lead,100,110,91,1,maybe", "wet", "yes, no"],
    ["lead,100,110,91,1,constructor", "wet", "yes, no"],
    ['"a\nb",100,110,91,1,', "line", "hidden signs"],
    ["lead\u001b[31m,100,110,91,1,", "line", "hidden signs"],
  ])("of %j names row, column, value and what to do", (row, column, word) => {
    const error = refusal(row);
    expect(error.row).toBe(2);
    expect(error.column).toBe(column);
    expect(error.message).toMatch(/^row 2, .+: got .+; allowed: .+\. .+/u);
    expect(error.message).toContain(word);
    expect(error.message).not.toContain("\u001b");
  });

  it("is made of a number without any unit", () => {
    const error = refusal("lead,100,110,91,1", "line,load,haul [N],ease [N],resolution [N]");
    expect(error.message).toContain('row 2, load: got "100" without a unit');
  });

  it("explains decimal commas between commas", () => {
    expect(refusal("lead,100,5,110,5,91,0,1,no").message).toContain("A decimal comma in a file with commas");
  });

  it("takes a comma before three digits for what it is between semicolons, and refuses a point there", () => {
    const top = head.replaceAll(",", ";");
    expect(readReadings(`${top}\nlead;12,345;13,5;11;1;\n`).readings[0]!.load).toBeCloseTo(12.345, 12);
    expect(refusal("lead;1.250;1300;1100;1;", top).message).toContain("a thousand times");
  });

  it("of turns or purchase comes where they change within a line", () => {
    const { readings, refusals } = readReadings(
      `${head},turns,purchase\nlead,100,110,91,1,,4,\nlead,100,110,91,1,,5,\nlead,100,110,91,1,,4,2:1\nother,100,30,20,1,,x,4\n`,
    );
    expect(readings).toHaveLength(1);
    expect(refusals.map(({ row, column }) => [row, column])).toEqual([
      [3, "turns"],
      [4, "purchase"],
      [5, "turns"],
    ]);
    expect(refusals[0]!.message).toContain("as in row 2");
  });

  it("keeps the rows that can be read", () => {
    const { readings, refusals } = readReadings(`${head}\nlead,100,110,91,1,\nlead,x,110,91,1,\nlead,200,220,182,1,\n`);
    expect(readings.map(({ row }) => row)).toEqual([2, 4]);
    expect(refusals.map(({ row }) => row)).toEqual([3]);
  });

  it.each([
    ["", "an empty file"],
    ["\ufeff", "an empty file"],
    ["\r\n\r\n", "an empty file"],
    ["# only a remark\n", "an empty file"],
    [`${head}\n`, "no reading below it"],
    ["lead,100,110,91,1\nlead,100,110,91,1", 'head of the table: got "lead"'],
    ["line,load [N],hual [N],resolution [N]\nlead,1,1,1", '"hual [N]"'],
    ["line,load [N],resolution [N]\nlead,1,1", "neither haul nor ease"],
    ["line,haul [N]\nlead,1", "no column load, resolution"],
    ["line,load [N],load [N],haul [N],resolution [N]\nlead,1,1,1,1", "load twice"],
    ["line,load [kg],haul [N],resolution [N]\nlead,1,1,1", "write kgf"],
    [`${head}\n"lead,100,110,91,1,\n`, "quotation mark"],
    ["l\u0000i\u0000n\u0000e\u0000", "no text in UTF-8"],
    ["PK\u0003\u0004\ufffd\ufffd", "no text in UTF-8"],
  ])("of a whole file: %j", (text, word) => {
    expect(thrown(text).message).toContain(word);
  });
});

describe("a YAML list", () => {
  const good =
    "# made up\nreadings:\n  - line: lead\n    load: 10,5 kgf\n    haul: 12 kgf\n    ease: 9 kgf\n    resolution: 0.1 kgf\n    wet: no\n  - { line: lead, load: 20 kgf, haul: 23 kgf, resolution: 0.1 kgf }\n";

  it("is read like a table", () => {
    const { readings, refusals } = readReadings(good, "yaml");
    expect(refusals).toEqual([]);
    expect(readings.map(({ row, line, wet }) => [row, line, wet])).toEqual([
      [3, "lead", false],
      [9, "lead", false],
    ]);
    expect(readings[0]!.load).toBeCloseTo(10.5 * kgf, 9);
    expect(readings[1]).not.toHaveProperty("ease");
  });

  it("may stand alone, begin with a byte-order mark, and have Windows line ends", () => {
    const text = "\ufeff- line: lead\r\n  load: 100 N\r\n  haul: 110 N\r\n  resolution: 1 N\r\n";
    expect(readReadings(text, "yaml").readings).toEqual([
      { row: 1, line: "lead", load: 100, haul: 110, resolution: 1, wet: false },
    ]);
  });

  it("names the line of what it cannot take", () => {
    const { refusals } = readReadings(good.replace("20 kgf", "20 kg"), "yaml");
    expect(refusals.map(({ row, column }) => [row, column])).toEqual([[9, "load"]]);
  });

  it.each([
    ["", "an empty file"],
    ["[]", "without readings"],
    ["just words", "no list of readings"],
    ["- 5\n", "without keys"],
    ["- line: [a, b]\n  load: 1 N\n", "a list or a group"],
    ["- line: &x lead\n  load: *x\n", "a single value"],
    ["- line: a\n line: b\n", "YAML"],
    ["- line: a\n  line: b\n", "YAML"],
  ])("is refused: %j", (text, word) => {
    expect(thrown(text, "yaml").message).toContain(word);
  });

  it("is refused when it is very long", () => {
    expect(thrown(`# ${"x".repeat(2_000_000)}`, "yaml").message).toContain("Write a large log as CSV");
  });
});

describe("any text at all", () => {
  const pieces = fc.constantFrom(
    ...[
      "line",
      "load [N]",
      "haul",
      "ease [kgf]",
      "resolution",
      "wet",
      "12",
      "3,5",
      "1.250",
      "-",
      "=1+1",
      "N",
      "kg",
      ",",
      ";",
      "\t",
      "\n",
      "\r\n",
      '"',
      "#",
      ": ",
      "- ",
      "&a",
      "*a",
      "{",
      "[",
      "\ufeff",
      "__proto__",
    ],
  );
  it.each(["csv", "yaml"] as const)("is read or refused as %s, and nothing else", (format) => {
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string({ maxLength: 6 })), { maxLength: 40 }), (parts) => {
        try {
          const { readings, refusals } = readReadings(parts.join(""), format);
          expect(readings.length + refusals.length).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(ReadingError);
        }
      }),
      { seed: 7, numRuns: 1500 },
    );
  });

  it("below a good head gives readings with finite forces, or refusals of their rows", () => {
    const cell = fc.oneof(
      pieces.filter((piece) => !/["\r\n]/u.test(piece)),
      fc.integer({ min: -500, max: 500 }).map(String),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 5, maxLength: 7 }), { minLength: 1, maxLength: 8 }), (rows) => {
        try {
          const { readings } = readReadings(
            [head.replaceAll(",", ";"), ...rows.map((row) => row.join(";"))].join("\n"),
          );
          for (const { load, haul, ease } of readings)
            for (const force of [load, haul ?? 0, ease ?? 0]) expect(Number.isFinite(force)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(ReadingError);
        }
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe("a very long file", () => {
  it("of a million readings is read, and one more is refused", () => {
    const text = `${head}\n${"lead,100.5,110.25,91,1,no\n".repeat(1_000_000)}`;
    const { readings, refusals } = readReadings(text);
    expect(refusals).toEqual([]);
    expect(readings).toHaveLength(1_000_000);
    expect(readings[999_999]).toMatchObject({ row: 1_000_001, haul: 110.25 });
    expect(thrown(`${text}lead,100,110,91,1,no\n`).message).toContain("at most 1000000");
  });

  it("of wrong rows stops after a hundred refusals", () => {
    expect(readReadings(`${head}\n${"lead,x,110,91,1,no\n".repeat(5000)}`).refusals).toHaveLength(100);
  });
});
