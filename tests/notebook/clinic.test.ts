import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { rename, rm } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { linkFolder, realDisk } from "../../src/cli/disk.js";
import { dispatch } from "../../src/cli/dispatch.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { runNotebook } from "../../src/notebook/run.js";
import { smallBoat, smallBoatWith } from "../boat/small-boat.js";
import { noEffects } from "../cli/no-effects.js";
import { isLong } from "../long.js";

const packageFolder = fileURLToPath(new URL("../../", import.meta.url));
const here = path.dirname(fileURLToPath(import.meta.url));
const base = mkdtempSync(path.join(here, `.scratch-${process.pid}-`));
afterAll(() => rmSync(base, { recursive: true, force: true }));

function surroundings(currentFolder: string): { effects: Surroundings; said: { text: string } } {
  const said = { text: "" };
  const say = (text: string) => {
    said.text += text;
  };
  const effects: Surroundings = {
    currentFolder,
    packageFolder,
    disk: realDisk("clinic"),
    out: say,
    err: say,
    now: () => performance.now(),
    run: (notebook, inputs) =>
      runNotebook({ path: path.resolve(currentFolder, notebook), inputs, cellSeconds: 120, notebookSeconds: 240 }),
    plotly: async () => "window.Plotly = {};",
    open: async () => {},
    installKernel: async () => "",
    link: linkFolder,
    ...noEffects,
    rename,
    remove: (folder) => rm(folder, { recursive: true, force: true }),
    signal: new AbortController().signal,
  };
  return { effects, said };
}

describe("a new clinic folder", () => {
  it("is made, refuses to be made again, and builds its own pages, and the plan of a boat that was sent", async () => {
    const first = surroundings(base);
    expect(await dispatch(["new", "clinic"], first.effects), first.said.text).toBe(0);
    expect(await dispatch(["new", "clinic"], first.effects)).toBe(1);
    const folder = path.join(base, "clinic");
    const { effects, said } = surroundings(folder);
    expect(await dispatch(["reports", "our-boat", "worksheet"], effects), said.text).toBe(0);
    expect(said.text).toContain("2 reports built");
    const asked = readFileSync(path.join(folder, "reports/our-boat.html"), "utf8");
    for (const word of ["the demo skiff", "gennaker sheet", "invented", "Nearest change that passes"])
      expect(asked).toContain(word);
    expect(readFileSync(path.join(folder, "reports/worksheet.html"), "utf8")).toContain("Print this and fill it in");
    const checked = surroundings(folder);
    expect(await dispatch(["check", "notebooks/boats/our-boat.yaml"], checked.effects)).toBe(0);
    const small = path.join(folder, "notebooks/boats/small-boat.yaml");
    writeFileSync(small, smallBoat);
    const sent = surroundings(folder);
    const command = ["plan", "notebooks/boats/small-boat.yaml", "--html", "our-plan.html"];
    expect(await dispatch(command, sent.effects), sent.said.text).toBe(0);
    const page = readFileSync(path.join(folder, "our-plan.html"), "utf8");
    expect(page).toContain("computed from the notebook a-line-plan.ipynb with small-boat.yaml");
    expect(page).not.toMatch(/\ssrc=|<link\b/u);
    expect(page).not.toContain(folder);
  });

  it.runIf(isLong)("builds all its pages, and makes a page also of what no plan can keep", async () => {
    const folder = path.join(base, "clinic");
    const { effects, said } = surroundings(folder);
    expect(await dispatch(["reports"], effects), said.text).toBe(0);
    expect(said.text).toContain("3 reports built");
    const planned = readFileSync(path.join(folder, "reports/a-line-plan-our-boat.html"), "utf8");
    for (const word of [
      "<title>Which ropes and blocks should the demo skiff carry?</title>",
      "Shopping list",
      "Cut list",
    ])
      expect(planned).toContain(word);
    const tight = path.join(folder, "notebooks/boats/tight-boat.yaml");
    writeFileSync(tight, smallBoatWith(["safetyFactor: 5", "safetyFactor: 100"]));
    const refused = surroundings(folder);
    const tightly = ["plan", "notebooks/boats/tight-boat.yaml", "--html", "tight-plan.html"];
    expect(await dispatch(tightly, refused.effects), refused.said.text).toBe(1);
    expect(refused.said.text).toContain("Page written to tight-plan.html");
    expect(readFileSync(path.join(folder, "tight-plan.html"), "utf8")).toMatch(
      /Nothing in the catalogue keeps mainsheet: strength of the rope/u,
    );
  });
});
