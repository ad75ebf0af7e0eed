import { describe, expect, it } from "vitest";
import { readCommand } from "../../src/cli/command.js";
import { fitReadings } from "../../src/cli/fit.js";
import { writeWorksheet } from "../../src/cli/worksheet.js";
import { memoryDisk } from "../report/memory.js";

function world() {
  const disk = memoryDisk();
  const said = { out: "", err: "" };
  const surroundings = {
    currentFolder: "/boat",
    disk,
    out: (text: string) => {
      said.out += text;
    },
    err: (text: string) => {
      said.err += text;
    },
  };
  return { disk, said, surroundings };
}

const head = "line,load [N],haul [N],ease [N],resolution [N],wet,turns";
const fitOf = async (text: string | undefined, file = "readings.csv") => {
  const { disk, said, surroundings } = world();
  if (text !== undefined) disk.texts.set(`/boat/${file}`, text);
  return { code: await fitReadings({ file }, surroundings), ...said };
};

describe("haulbook fit", () => {
  it("prints ratio, drag, a turn, what was left out and what to read next", async () => {
    const { code, out, err } = await fitOf(
      `${head}\nsheet,50,65,38,1,no,4\nsheet,100,127,78,1,no,4\nsheet,200,252,158,1,no,4\nsheet,200,100,158,1,no,4\n`,
    );
    expect(code).toBe(0);
    expect(err).toBe("");
    expect(out).toMatch(/^line +from +pulls +ratio k +95 % +drag c \[N\] +95 % +correlation\n/u);
    expect(out).toMatch(/sheet +readings alone +6 +1\.2\d+ +1\.\d+ to 1\.\d+ +/u);
    expect(out).toContain("with what was known");
    expect(out).toContain("one of 4 turns");
    expect(out).toContain(
      "Left out of the fit:\n  row 5, sheet, whole reading: easing took 158 N and hauling only 100 N",
    );
    expect(out).toMatch(/\nNext measurement: (?:Haul|Ease) sheet with /u);
  });

  it("takes a single reading, with what was known", async () => {
    const { code, out } = await fitOf(`${head}\nsheet,100,127,78,1,no,\n`);
    expect(code).toBe(0);
    expect(out).toContain("One load alone");
    expect(out).toMatch(/readings alone +2 +1\.2\d* .+ none +not told/u);
  });

  it("reads YAML by the ending of the file", async () => {
    const { code, out } = await fitOf(
      "- {line: sheet, load: 100 N, haul: 127 N, ease: 78 N, resolution: 1 N}\n",
      "r.YML",
    );
    expect(code).toBe(0);
    expect(out).toContain("sheet");
  });

  it("gives wider intervals for a hand that scatters more, and refuses one that cannot be", async () => {
    const intervalOf = async (scatter?: number) => {
      const { disk, said, surroundings } = world();
      disk.texts.set("/boat/r.csv", `${head}\nsheet,50,65,38,1,no,\nsheet,200,252,158,1,no,\n`);
      await fitReadings({ file: "r.csv", scatter }, surroundings);
      const [, low = "", high = ""] = /readings alone +4 +\S+ +(\S+) to (\S+)/u.exec(said.out) ?? [];
      return Number(high) - Number(low);
    };
    expect((await intervalOf(5)) / (await intervalOf())).toBeGreaterThan(1.8);
    for (const wrong of [0, -1, 80, Number.NaN]) await expect(intervalOf(wrong)).rejects.toThrow("share");
  });

  it("shows a formula as text", async () => {
    const { code, out } = await fitOf(`${head}\n=1+1,100,127,78,1,no,\n`);
    expect(code).toBe(0);
    expect(out).toMatch(/\n=1\+1 +readings alone/u);
  });

  it.each([
    [undefined, "There is no file readings.csv"],
    ["", "an empty file"],
    [
      `${head}\nsheet,100 kg,127,78,1,no,\n`,
      "readings.csv: 1 row cannot be read. Nothing was worked out.\n  row 2, load:",
    ],
    [`${head}\n${"sheet,x,127,78,1,no,\n".repeat(30)}`, "… and 10 more."],
  ])("fails with code 1 and says why: %j", async (text, words) => {
    const attempt = fitOf(text);
    const told = await attempt.catch((error: Error) => ({ code: 1, out: "", err: error.message }));
    expect(told.code).toBe(1);
    expect(told.out).toBe("");
    expect(told.err).toContain(words);
  });
});

describe("haulbook worksheet", () => {
  const ask = { lines: ["mainsheet", "halyard"], output: "sheet.html", force: false };

  it("writes a page, and never over a file that is there unless told so", async () => {
    const { disk, said, surroundings } = world();
    expect(await writeWorksheet(ask, surroundings)).toBe(0);
    expect(disk.texts.get("/boat/sheet.html")).toContain("halyard");
    expect(said.out).toBe("Sheet written. Open and print sheet.html\n");
    disk.texts.set("/boat/sheet.html", "mine");
    expect(await writeWorksheet(ask, surroundings)).toBe(1);
    expect(disk.texts.get("/boat/sheet.html")).toBe("mine");
    expect(said.err).toContain("stays as it is");
    expect(await writeWorksheet({ ...ask, force: true }, surroundings)).toBe(0);
    expect(disk.texts.get("/boat/sheet.html")).toContain("<!doctype html>");
  });
});

describe("the command line", () => {
  it("knows both verbs", async () => {
    expect(await readCommand(["worksheet", "--lines", "a", "b", "-o", "x.html"], "1")).toEqual({
      verb: "worksheet",
      options: { lines: ["a", "b"], output: "x.html", force: false },
    });
    expect(await readCommand(["worksheet"], "1")).toMatchObject({
      options: { lines: ["mainsheet"], output: "worksheet.html" },
    });
    expect(await readCommand(["fit", "r.csv"], "1")).toEqual({ verb: "fit", options: { file: "r.csv" } });
    expect(await readCommand(["fit", "r.csv", "--scatter", "5"], "1")).toEqual({
      verb: "fit",
      options: { file: "r.csv", scatter: 5 },
    });
  });

  it.each([[["fit"]], [["fit", "a", "b"]], [["worksheet", "--over"]]])("refuses %j", async (args) => {
    expect((await readCommand(args, "1")).verb).toBe("refuse");
  });
});
