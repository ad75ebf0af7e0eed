import { mkdir, mkdtemp, readFile, realpath, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { realDisk } from "../../src/cli/disk.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { trustedFolders, trustFile } from "../../src/cli/trusted-folders.js";
import { memoryDisk } from "../report/memory.js";
import { sample } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

describe("the file of trusted folders", () => {
  it("stands among a person's settings", () => {
    const homeFolder = "/home/a";
    const usual = "/home/a/.config/haulbook/trusted.json";
    expect(trustFile({ env: {}, platform: "linux", homeFolder })).toBe(usual);
    expect(trustFile({ env: { XDG_CONFIG_HOME: "/etc/a" }, platform: "linux", homeFolder })).toBe(
      "/etc/a/haulbook/trusted.json",
    );
    // A folder of settings inside whatever folder one happens to be in could bring its own list.
    for (const XDG_CONFIG_HOME of ["", ".", "config"])
      expect(trustFile({ env: { XDG_CONFIG_HOME }, platform: "linux", homeFolder })).toBe(usual);
    expect(trustFile({ env: { APPDATA: "C:/a" }, platform: "win32", homeFolder })).toBe("C:/a/haulbook/trusted.json");
  });
});

describe("trust on a real disk", () => {
  let base = "";
  beforeEach(async () => {
    base = await realpath(await mkdtemp(join(tmpdir(), "haulbook-trust-")));
    for (const name of ["package", "boat", "other"]) await mkdir(join(base, name, "notebooks"), { recursive: true });
  });
  afterEach(() => rm(base, { recursive: true, force: true }));
  const notebooks = (name: string) => join(base, name, "notebooks");
  const trust = () =>
    trustedFolders({
      file: join(base, "config", "trusted.json"),
      always: [notebooks("package")],
      disk: realDisk("trust"),
      realPath: (folder) => realpath(folder),
    });

  it("holds for the package, for what was added, and for nothing else", async () => {
    expect(await trust().holds(notebooks("package"))).toBe(true);
    expect(await trust().holds(notebooks("boat"))).toBe(false);
    expect(await trust().add(notebooks("boat"))).toBe(join(base, "config", "trusted.json"));
    await trust().add(notebooks("boat"));
    expect(await trust().holds(notebooks("boat"))).toBe(true);
    expect(await trust().holds(notebooks("other"))).toBe(false);
    expect(await trust().holds(join(base, "boat"))).toBe(false);
    expect(JSON.parse(await readFile(join(base, "config", "trusted.json"), "utf8"))).toEqual({
      folders: [notebooks("boat")],
    });
  });

  it("goes by the true path: a link neither lends it nor keeps it when it leads elsewhere", async () => {
    await symlink(notebooks("other"), join(base, "shown"));
    await trust().add(join(base, "shown"));
    expect(await trust().holds(notebooks("other"))).toBe(true);
    await rm(join(base, "shown"));
    await symlink(notebooks("boat"), join(base, "shown"));
    expect(await trust().holds(join(base, "shown"))).toBe(false);
  });

  it.each(["{", '"text"', "null", '{"folders":"/"}', '{"folders":[1]}'])("never writes over %s", async (text) => {
    const file = join(base, "config", "trusted.json");
    await mkdir(join(base, "config"));
    await writeFile(file, text);
    await expect(trust().holds(notebooks("boat"))).rejects.toThrow("is no list of trusted folders");
    await expect(trust().add(notebooks("boat"))).rejects.toThrow("is no list of trusted folders");
    expect(await readFile(file, "utf8")).toBe(text);
  });
});

function world(changed: Partial<Surroundings> = {}) {
  const disk = memoryDisk();
  disk.texts.set("/boat/notebooks/hold.ipynb", "");
  const ran: string[] = [];
  const run: Surroundings["run"] = async (path) => {
    ran.push(path);
    return sample;
  };
  const trust = trustedFolders({
    file: "/config/trusted.json",
    always: ["/package/notebooks"],
    disk,
    realPath: async (folder) => folder,
  });
  return { ...quietWorld({ run, trust, ...changed }, disk), ran };
}

describe.each(["reports", "watch"])("haulbook %s", (verb) => {
  it("runs nothing of a folder that nobody trusts, and says why and what to do", async () => {
    const { disk, ran, said, tell } = world();
    expect(await tell(verb)).toBe(2);
    expect(ran).toEqual([]);
    expect([...disk.texts.keys()].filter((path) => path.includes("/reports/"))).toEqual([]);
    expect(said.err).toContain("/boat/notebooks are programs: they run with your rights");
    expect(said.err).toContain(`haulbook ${verb} --trust`);
    expect(said.out).toBe("");
  });
});

describe("trust in a folder", () => {
  it("is said once", async () => {
    const { disk, ran, said, tell } = world();
    expect(await tell("reports", "--trust")).toBe(0);
    expect(said.err).toContain("are programs: they run with your rights");
    expect(said.err).toContain("noted in /config/trusted.json");
    expect(JSON.parse(disk.texts.get("/config/trusted.json") ?? "")).toEqual({ folders: ["/boat/notebooks"] });
    said.err = "";
    expect(await tell("reports")).toBe(0);
    expect(said.err).toBe("");
    expect(ran).toHaveLength(2);
  });

  it("is not asked for the package's own notebooks, wherever one is", async () => {
    const { disk, ran, said, tell } = world();
    disk.texts.delete("/boat/notebooks/hold.ipynb");
    disk.texts.set("/package/notebooks/sheet.ipynb", "");
    expect(await tell("reports"), said.err).toBe(0);
    expect(ran).toEqual(["/package/notebooks/sheet.ipynb"]);
    expect(disk.texts.has("/config/trusted.json")).toBe(false);
  });

  it("comes with a folder that the program made itself", async () => {
    const { disk, said, tell } = world();
    for (const file of ["clinic/our-boat.ipynb", "clinic/worksheet.ipynb", "a-line-plan.ipynb"])
      disk.texts.set(`/package/notebooks/${file}`, '{"metadata":{}}');
    for (const file of ["clinic/how-to.txt", "boats/demo-skiff.yaml", "boats/demo-shop.yaml", "boats/boat.schema.json"])
      disk.texts.set(`/package/notebooks/${file}`, "");
    expect(await tell("new", "clinic"), said.err).toBe(0);
    expect(JSON.parse(disk.texts.get("/config/trusted.json") ?? "")).toEqual({ folders: ["/boat/clinic/notebooks"] });
  });

  it("is not lost silently when the list cannot be read", async () => {
    const { disk, ran, said, tell } = world();
    disk.texts.set("/config/trusted.json", "{");
    expect(await tell("reports", "--trust")).toBe(1);
    expect(said.err).toContain("/config/trusted.json is no list of trusted folders");
    expect(ran).toEqual([]);
  });
});
