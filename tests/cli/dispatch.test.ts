import { describe, expect, it } from "vitest";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { CellThrewError } from "../../src/notebook/errors.js";
import { sample, sampleChecks } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

function world(changed: Partial<Surroundings> = {}, notebooks = ["how-hard-to-hold.ipynb", "light-air.ipynb"]) {
  const noted = {
    opened: [] as string[],
    ran: [] as string[],
    linked: [] as string[],
    variables: [] as object[],
  };
  const quiet = quietWorld({
    run: async (path, _inputs, _onFilesRead, variables = {}) => {
      noted.ran.push(path);
      noted.variables.push(variables);
      return sample;
    },
    open: async (path) => void noted.opened.push(path),
    installKernel: async () => "/home/kernels/haulbook",
    link: async (folder, path) => void noted.linked.push(`${path} → ${folder}`),
    ...changed,
  });
  for (const name of notebooks) quiet.disk.texts.set(`/boat/notebooks/${name}`, "");
  return { ...quiet, said: Object.assign(quiet.said, noted) };
}

describe("help and version", () => {
  it("shows all verbs with examples, on standard output", async () => {
    const { said, tell } = world();
    expect(await tell("--help")).toBe(0);
    for (const word of ["reports [names..]", "checks", "worksheet", "fit <file>", "kernel", "Examples:", "Exit code"])
      expect(said.out).toContain(word);
    expect(said.err).toBe("");
  });

  it.each([
    [["reports", "--help"], "--single-file"],
    [["checks", "--help"], "--output"],
    [["worksheet", "--help"], "--lines"],
    [["fit", "--help"], "CSV or YAML"],
    [["kernel", "install", "--help"], "--prefix"],
  ])("explains %j", async (args, word) => {
    const { said, tell } = world();
    expect(await tell(...args)).toBe(0);
    expect(said.out).toContain(word);
    expect(said.ran).toEqual([]);
  });

  it("tells the version of the package", async () => {
    const { said, tell } = world();
    expect(await tell("--version")).toBe(0);
    expect(said.out).toBe("1.2.3\n");
  });
});

describe("wrong use", () => {
  it.each([
    [[], "Name a verb"],
    [["report"], "Did you mean reports?"],
    [["mooring"], "mooring"],
    [["reports", "--singlefile"], "singlefile"],
    [["checks", "--open"], "open"],
    [["checks", "extra"], "extra"],
    [["kernel"], "install"],
    [["kernel", "remove"], "remove"],
    [["reports", "--output"], "output"],
  ])("refuses %j with code 2 and a hint", async (args, word) => {
    const { said, tell } = world();
    expect(await tell(...args)).toBe(2);
    expect(said.err).toContain(word);
    expect(said.err).toContain("--help");
    expect(said.out).toBe("");
    expect(said.ran).toEqual([]);
  });

  it("knows what was probably meant by an unknown report", async () => {
    const { said, tell } = world();
    expect(await tell("reports", "how-hrad-to-hold", "light")).toBe(2);
    expect(said.err).toContain('No report is called "how-hrad-to-hold". Did you mean "how-hard-to-hold"?');
    expect(said.err).toContain('"light". Did you mean "light-air"?');
    expect(said.ran).toEqual([]);
    const far = world();
    expect(await far.tell("reports", "zzz")).toBe(2);
    expect(far.said.err).toBe('No report is called "zzz".\nThere are: how-hard-to-hold, light-air.\n');
  });
});

describe("haulbook reports", () => {
  it("builds all and says where to look", async () => {
    const { disk, said, tell } = world();
    expect(await tell("reports")).toBe(0);
    expect(said.ran.sort()).toEqual(["notebooks/how-hard-to-hold.ipynb", "notebooks/light-air.ipynb"]);
    expect(said.out).toMatch(
      /Time of each notebook, side by side:\n {2}how-hard-to-hold +0\.0 s\n {2}light-air +0\.0 s\n/u,
    );
    expect(said.out).toMatch(/2 reports built\. Open reports\/index\.html\n$/u);
    expect(disk.texts.has("/boat/reports/light-air.html")).toBe(true);
    expect(said.opened).toEqual([]);
  });

  it.each(["light-air", "light-air.ipynb", "notebooks/light-air.ipynb"])("builds one, named %s", async (name) => {
    const { said, tell } = world();
    expect(await tell("reports", name, "--open", "--output", "handout")).toBe(0);
    expect(said.ran).toEqual(["notebooks/light-air.ipynb"]);
    expect(said.out).toContain("1 report built. Open handout/index.html");
    expect(said.opened).toEqual(["/boat/handout/index.html"]);
  });

  it("carries everything in one file when asked", async () => {
    const { disk, tell } = world();
    expect(await tell("reports", "--single-file")).toBe(0);
    expect(disk.texts.get("/boat/reports/light-air.html")).toContain("window.Plotly = {};");
  });

  it("takes the package's notebooks where the current folder has none", async () => {
    const { disk, said, tell } = world({}, []);
    disk.texts.set("/package/notebooks/sheet.ipynb", "");
    disk.texts.set("/package/notebooks/README.md", "");
    expect(await tell("reports")).toBe(0);
    expect(said.ran).toEqual(["/package/notebooks/sheet.ipynb"]);
    expect(disk.texts.has("/boat/reports/sheet.html")).toBe(true);
  });

  it("fails with code 1 where there are no notebooks", async () => {
    const { said, tell } = world({}, []);
    expect(await tell("reports")).toBe(1);
    expect(said.err).toContain("No notebooks in /package/notebooks");
  });

  it("fails with code 1 when a cell throws, and names it", async () => {
    const { said, tell } = world({
      run: async (path) => {
        if (path.includes("light")) throw new CellThrewError({ notebook: path, cell: 2, line: 3, text: "no wind" });
        return sample;
      },
    });
    expect(await tell("reports", "--open")).toBe(1);
    expect(said.err).toContain("notebooks/light-air.ipynb, cell 2, line 3: no wind");
    expect(said.err).toContain("1 failed, 1 built. Earlier pages of what failed are kept");
    expect(said.opened).toEqual([]);
  });

  it("succeeds even if the desktop cannot open the page", async () => {
    const { said, tell } = world({
      open: async () => {
        throw new Error("no desktop");
      },
    });
    expect(await tell("reports", "--open")).toBe(0);
    expect(said.err).toContain("no desktop");
  });
});

describe("haulbook reports with readings", () => {
  const head = "line,load [N],haul [N],ease [N],resolution [N]";
  const told = async (text: string | undefined, ...args: string[]) => {
    const { disk, said, tell } = world();
    if (text !== undefined) disk.texts.set("/boat/own.csv", text);
    const code = await tell("reports", "light-air", "--readings", "own.csv", ...args);
    return { code, ...said, disk };
  };

  it("hands the file to every notebook, and nothing without the flag", async () => {
    const { code, err, variables } = await told(`${head}\nmainsheet,100,110,91,1\n`);
    expect([code, err]).toEqual([0, ""]);
    expect(variables).toEqual([{ HAULBOOK_READINGS: "/boat/own.csv" }]);
    const { said, tell } = world();
    await tell("reports", "light-air");
    expect(said.variables).toEqual([{ HAULBOOK_READINGS: "" }]);
  });

  it.each([
    [undefined, "There is no file own.csv"],
    ["", "own.csv: 1 row cannot be read. Nothing was built."],
    [`${head}\nmainsheet,100 kg,110,91,1\n`, "own.csv: 1 row cannot be read. Nothing was built.\n  row 2, load:"],
    [`${head}\nmain sheet,100,110,91,1\n`, 'no page knows a line "main sheet". Did you mean "mainsheet"?'],
  ])("builds nothing of a file that cannot be used: %j", async (text, words) => {
    const { code, err, ran, disk } = await told(text);
    expect(code).toBe(1);
    expect(err).toContain(words);
    expect(ran).toEqual([]);
    expect([...disk.texts.keys()].some((path) => path.startsWith("/boat/reports"))).toBe(false);
  });

  it("names a line that no page knows, and builds with the others", async () => {
    const { code, err, ran } = await told(`${head}\nmainsheet,100,110,91,1\nkite string,100,110,91,1\n`);
    expect(code).toBe(0);
    expect(err).toBe(
      'own.csv: no page knows a line "kite string". Its readings are not used.\nPages know: mainsheet, jib sheet, gennaker sheet, halyard, outhaul.\n',
    );
    expect(ran).toEqual(["notebooks/light-air.ipynb"]);
  });
});

describe("haulbook checks", () => {
  it("asks to build first", async () => {
    const { said, tell } = world();
    expect(await tell("checks")).toBe(1);
    expect(said.err).toContain("Build them first: haulbook reports");
  });

  it("prints each check once, in columns, with totals", async () => {
    const { said, tell } = world();
    await tell("reports");
    said.out = "";
    expect(await tell("checks")).toBe(0);
    const lines = said.out.trimEnd().split("\n");
    expect(lines).toHaveLength(1 + sampleChecks.length + 2);
    expect(lines[0]).toMatch(/check +computed +expected +allowed +used +unit +evidence +status/u);
    expect(said.out).toMatch(/ok +capstan-one-turn +1\.8745 +1\.9 +0\.05 +51 % +published/u);
    expect(lines[lines.length - 1]).toBe(
      "5 checks on 2 reports: 2 published, 0 independent, 1 exact, 0 recorded; 2 apart (common practice, from memory, or made up).",
    );
  });

  it("fails with code 1 when a check does not hold", async () => {
    const { disk, said, tell } = world();
    await tell("reports");
    for (const [path, text] of disk.texts) {
      if (path.includes("/data/")) disk.texts.set(path, text.replace('"holds": true', '"holds": false'));
    }
    expect(await tell("checks")).toBe(1);
    expect(said.out).toContain("FAILS  capstan-one-turn");
    expect(said.err).toContain("check capstan-one-turn fails: Ratio at one whole turn: computed 1.87");
  });

  it("fails with code 1 on a record that cannot be read", async () => {
    const { disk, said, tell } = world();
    await tell("reports");
    disk.texts.set("/boat/reports/data/light-air.json", "{");
    expect(await tell("checks")).toBe(1);
    expect(said.err).toContain("build all reports again");
  });
});

describe("haulbook kernel install", () => {
  it("says where the kernel stands", async () => {
    const { said, tell } = world();
    expect(await tell("kernel", "install")).toBe(0);
    expect(said.out).toContain("/home/kernels/haulbook");
  });

  it("takes a prefix, seen from the current folder", async () => {
    const prefixes: (string | undefined)[] = [];
    const installKernel = async (prefix: string | undefined) => {
      prefixes.push(prefix);
      return "";
    };
    const { tell } = world({ installKernel });
    expect(await tell("kernel", "install", "--prefix", "/usr/local")).toBe(0);
    expect(await tell("kernel", "install", "--prefix", "environment")).toBe(0);
    expect(await tell("kernel", "install")).toBe(0);
    expect(prefixes).toEqual(["/usr/local", "/boat/environment", undefined]);
    expect(await tell("kernel", "install", "--prefix")).toBe(2);
  });

  it("fails with code 1 when it cannot be written", async () => {
    const { said, tell } = world({
      installKernel: async () => {
        throw new Error("folder is read-only");
      },
    });
    expect(await tell("kernel", "install")).toBe(1);
    expect(said.err).toBe("folder is read-only\n");
  });
});
