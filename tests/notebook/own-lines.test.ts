import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { pageLines } from "../../src/calibration/page-lines.js";
import { ReadingError } from "../../src/calibration/reading-error.js";
import type { LineRequest } from "../../src/calibration/standing-line.js";
import { realDisk } from "../../src/cli/disk.js";
import { dispatch } from "../../src/cli/dispatch.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { readingsVariable } from "../../src/notebook/input.js";
import { lineSource, ownLine } from "../../src/notebook/own-lines.js";
import { ValueError } from "../../src/quantity/errors.js";
import { noEffects } from "../cli/no-effects.js";
import { limp } from "../reeving/builders.js";
import { runHarness } from "./harness.js";

const head = "line,load [N],haul [N],ease [N],resolution [N],wet";
const good = `${head}\nmainsheet,100,130,76,1,no\nmainsheet,200,262,152,1,no\n`;
const request: LineRequest = {
  name: "mainsheet",
  line: { rope: limp, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1, drag: 1 }] },
  uncertainInputs: [
    { name: "lead", turns: "bearing", record: { value: 0.1, low: 0.05, high: 0.4 } },
    { name: "drag", turns: "drag", record: { value: 1, low: 0.2, high: 4 } },
  ],
  load: 150,
};
const reading = (text: string) => ({ file: "/boat/readings.csv", read: () => text });

describe("the line of a page", () => {
  it("is that of the catalogue without a file", () => {
    for (const file of ["", undefined]) expect(ownLine(request, { file }).measured).toBe(false);
  });

  it("is the measured one where the file has it", () => {
    const own = ownLine(request, reading(good));
    expect(own.measured).toBe(true);
    expect(own.words).toContain("Mainsheet: measured, 2 readings. Ratio 1.3");
    expect(ownLine({ ...request, name: "halyard" }, reading(good)).measured).toBe(false);
  });

  it("reads YAML as well", () => {
    const text = "- { line: mainsheet, load: 100 N, haul: 130 N, ease: 76 N, resolution: 1 N }\n";
    expect(ownLine(request, { file: "readings.yaml", read: () => text }).measured).toBe(true);
  });

  it("is refused for a file that cannot be read, with file, row and reason", () => {
    const bad = reading(`${good}mainsheet,10 kg,13,8,1,no\nmainsheet,x,13,8,1,no\n`);
    expect(() => ownLine(request, bad)).toThrow(ValueError);
    expect(() => ownLine(request, bad)).toThrow(/readings in readings\.csv: got 2 rows.*row 4, load/u);
    expect(() => ownLine(request, reading(""))).toThrow(ReadingError);
  });
});

describe("the words of a page", () => {
  const [measured, other] = [ownLine(request, reading(good)), ownLine({ ...request, name: "halyard" }, reading(good))];
  const wet = ownLine({ ...request, wet: true }, reading(good));

  it("say that all is catalogue, of which lines, and where to go", () => {
    const { text, range } = lineSource([other, ownLine({ ...request, name: "jib sheet" }, { file: "" })], "More.");
    expect(text).toBe("catalogue values");
    expect(range).toBe(
      "No line of this page was measured on your boat (halyard; jib sheet). Measure yours: see the page “How do I measure my own boat?”. More.",
    );
  });

  it("say why readings do not count", () => {
    expect(lineSource([wet]).range).toContain("(mainsheet, wet). Mainsheet, wet: read dry only, and here it is wet;");
  });

  it("say which are measured, and what of each", () => {
    const { text, range } = lineSource([measured, other]);
    expect(text).toBe("measured: mainsheet");
    expect(range).toBe(`${measured.words} ${other.words}`);
  });

  it("need a note on a page without lines", () => {
    expect(lineSource([], "Strength only.")).toMatchObject({
      text: "your readings do not enter",
      range: "Strength only.",
    });
    expect(() => lineSource([])).toThrow(ValueError);
  });
});

const { scratch } = runHarness();
const folder = path.join(scratch.folder, "boat");
const cells = [
  `import { ownLine, lineSource } from "../../../../../dist/notebook/own-lines.js";
import { show, answer, result } from "../../../../../dist/notebook/display.js";
import { prepareLine } from "../../../../../dist/reeving/line.js";
const line = { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured" as const, name: "lead", tensionRatio: 1.1, drag: 1 }] };
const own = ownLine({ name: "mainsheet", line: line, uncertainInputs: [], load: 150 });
show(answer("It depends."));
show(lineSource([own]));
show(result({ label: "Haul", text: prepareLine(own.line(line)).handForce(100, "hauling").toFixed(0) + " N" }));`,
];

/** `haulbook reports` in a folder with one notebook, with real kernels. */
async function build(...args: string[]) {
  const { runNotebook } = await import("../../src/notebook/run.js");
  let said = "";
  const surroundings: Surroundings = {
    currentFolder: folder,
    packageFolder: fileURLToPath(new URL("../../", import.meta.url)),
    disk: realDisk("own"),
    out: (text) => {
      said += text;
    },
    err: (text) => {
      said += text;
    },
    now: () => 0,
    run: (file, inputs, onFilesRead = () => {}, variables = {}) =>
      runNotebook({
        path: path.resolve(folder, file),
        inputs,
        onFilesRead,
        cellSeconds: 120,
        notebookSeconds: 240,
        environment: { ...process.env, ...variables },
      }),
    plotly: async () => "",
    ...noEffects,
    open: async () => {},
    installKernel: async () => "",
    link: async () => {},
    signal: new AbortController().signal,
  };
  const code = await dispatch(["reports", ...args], surroundings);
  const file = path.join(folder, "reports/hold.html");
  return { code, said, page: existsSync(file) ? readFileSync(file, "utf8") : "" };
}

describe("a build with readings", () => {
  it("changes the number on the page and says so; without, it says catalogue", async () => {
    const { mkdirSync, renameSync } = await import("node:fs");
    mkdirSync(path.join(folder, "notebooks"), { recursive: true });
    const made = scratch.notebook("hold", [{ type: "markdown", source: "# How hard?" }, ...cells]);
    renameSync(made, path.join(folder, "notebooks/hold.ipynb"));
    const before = await build();
    expect(before.code, before.said).toBe(0);
    expect(before.page).toContain("111 N");
    expect(before.page).toContain("catalogue values");
    expect(before.page).toContain("No line of this page was measured on your boat (mainsheet).");
    writeFileSync(path.join(folder, "readings.csv"), good);
    const after = await build("--readings", "readings.csv");
    expect(after.code, after.said).toBe(0);
    expect(after.page).toContain("measured: mainsheet");
    expect(Number(/(\d+) N/u.exec(after.page.slice(after.page.indexOf("Haul")))?.[1])).toBeGreaterThan(128);
    writeFileSync(path.join(folder, "bad.csv"), `${good}mainsheet,x,1,1,1,no\n`);
    const bad = await build("--readings", "bad.csv");
    expect(bad.code).toBe(1);
    expect(bad.said).toContain("bad.csv: 1 row cannot be read. Nothing was built.\n  row 4, load");
    expect(bad.page).toBe(after.page);
    const own = { env: process.env[readingsVariable] };
    process.env[readingsVariable] = path.join(folder, "readings.csv");
    const again = await build();
    if (own.env === undefined) delete process.env[readingsVariable];
    else process.env[readingsVariable] = own.env;
    expect(again.page).toBe(before.page);
  });
});

describe("every page of the package", () => {
  const notebooks = fileURLToPath(new URL("../../notebooks/", import.meta.url));
  const files = readdirSync(notebooks).filter((name) => name.endsWith(".ipynb"));
  const label = "Friction of the lines on this page";

  it.each(files)("%s says near its top where the friction of its lines comes from", (file) => {
    const { cells: all } = JSON.parse(readFileSync(path.join(notebooks, file), "utf8")) as {
      cells: { cell_type: string; source: string[] }[];
    };
    const code = all.filter(({ cell_type }) => cell_type === "code").map(({ source }) => source.join(""));
    const answered = code.findIndex((text) => text.includes("show(answer("));
    const said = code.findIndex((text) => text.includes("show(lineSource(") || text.includes(label));
    expect(said).toBe(answered);
    const asked = [...code.join("\n").matchAll(/ownLine\(\{\s*name: "([^"]+)"/gu)].map(([, name]) => name);
    for (const name of asked) expect(pageLines).toContain(name);
    const shown = code.join("\n").includes("show(lineSource([]");
    expect(shown).toBe(asked.length === 0 && !code.join("\n").includes(label));
  });
});
