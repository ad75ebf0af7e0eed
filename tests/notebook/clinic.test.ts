import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { linkFolder, realDisk } from "../../src/cli/disk.js";
import { dispatch } from "../../src/cli/dispatch.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { runNotebook } from "../../src/notebook/run.js";

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
    run: (notebook) =>
      runNotebook({ path: path.resolve(currentFolder, notebook), cellSeconds: 60, notebookSeconds: 120 }),
    plotly: async () => "window.Plotly = {};",
    panel: async () => "",
    open: async () => {},
    installKernel: async () => "",
    library: async () => undefined,
    remove: async () => {},
    link: linkFolder,
    signal: new AbortController().signal,
  };
  return { effects, said };
}

describe("a new clinic folder", () => {
  it("is made, refuses to be made again, and builds as it is", { timeout: 180_000 }, async () => {
    const first = surroundings(base);
    expect(await dispatch(["new", "clinic"], first.effects), first.said.text).toBe(0);
    expect(await dispatch(["new", "clinic"], first.effects)).toBe(1);
    const folder = path.join(base, "clinic");
    const { effects, said } = surroundings(folder);
    expect(await dispatch(["reports"], effects), said.text).toBe(0);
    expect(said.text).toContain("2 reports built");
    const page = readFileSync(path.join(folder, "reports/our-boat.html"), "utf8");
    for (const word of ["the demo skiff", "gennaker sheet", "invented", "Nearest change that passes"])
      expect(page).toContain(word);
    expect(readFileSync(path.join(folder, "reports/worksheet.html"), "utf8")).toContain("Print this and fill it in");
    const checked = surroundings(folder);
    expect(await dispatch(["check", "notebooks/boats/our-boat.yaml"], checked.effects)).toBe(0);
  });
});
