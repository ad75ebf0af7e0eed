import { describe, expect, it } from "vitest";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { smallBoat, smallBoatWith } from "../boat/small-boat.js";
import { sample } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

function world(files: Readonly<Record<string, string>> = {}, changed: Partial<Surroundings> = {}) {
  const ran: [string, readonly string[] | undefined][] = [];
  const run: Surroundings["run"] = async (path, inputs) => {
    ran.push([path, inputs]);
    return sample;
  };
  const quiet = quietWorld({ run, ...changed });
  for (const [name, text] of Object.entries(files)) quiet.disk.texts.set(`/boat/${name}`, text);
  return { ...quiet, ran };
}

const boat = { "small.yaml": smallBoat };
const planned = ["plan", "small.yaml", "--html"] as const;

describe("a plan as a page", () => {
  it("is made by the package's own notebook from the file, in one file, and nothing else is written", async () => {
    const { disk, ran, said, tell } = world(boat);
    const before = [...disk.texts.keys()];
    expect(await tell(...planned, "plan.html"), said.err).toBe(0);
    expect(ran).toEqual([["/package/notebooks/a-line-plan.ipynb", ["/boat/small.yaml"]]]);
    expect([...disk.texts.keys()]).toEqual([...before, "/boat/plan.html"]);
    const page = disk.texts.get("/boat/plan.html") ?? "";
    expect(page).toContain("computed from the notebook a-line-plan.ipynb with small.yaml");
    expect(page).not.toMatch(/\ssrc=|<link\b/u);
    expect(page).not.toContain("/boat");
    expect(said.out).toContain("Price of the limits");
    expect(said.err).toBe("Page written to plan.html.\n");
  });

  it("takes the place of an older page, and of nothing else", async () => {
    const { disk, ran, said, tell } = world({ ...boat, "letter.html": "<p>Dear coach</p>", "pages/old.txt": "" });
    await tell(...planned, "plan.html");
    expect(await tell(...planned, "plan.html")).toBe(0);
    expect(await tell(...planned, "letter.html")).toBe(1);
    expect(said.err).toContain("letter.html is there already, is no report, and stays as it is");
    expect(disk.texts.get("/boat/letter.html")).toBe("<p>Dear coach</p>");
    expect(await tell(...planned, "small.yaml")).toBe(1);
    expect(disk.texts.get("/boat/small.yaml")).toBe(smallBoat);
    expect(await tell(...planned, "pages")).toBe(1);
    expect(said.err).toContain("pages is a folder");
    expect(ran).toHaveLength(2);
  });

  it("says that its folder is missing before it works anything out", async () => {
    const { disk, ran, said, tell } = world(boat);
    expect(await tell(...planned, "pages/plan.html")).toBe(1);
    expect(said.err).toBe("The folder pages is not there. Make it first, or name another file with --html.\n");
    expect(said.out).toBe("");
    expect(ran).toEqual([]);
    disk.texts.set("/boat/pages/other.txt", "");
    expect(await tell(...planned, "pages/plan.html")).toBe(0);
    expect(disk.texts.has("/boat/pages/plan.html")).toBe(true);
  });

  it("is written where limits conflict, too: the page names them", async () => {
    const { disk, tell } = world({ "small.yaml": smallBoatWith(["safetyFactor: 5", "safetyFactor: 100"]) });
    expect(await tell(...planned, "plan.html")).toBe(1);
    expect(disk.texts.has("/boat/plan.html")).toBe(true);
  });

  it("that fails leaves the older page, and says what failed", async () => {
    const failing = async () => Promise.reject(new Error("a-line-plan.ipynb, cell 3: no such rope"));
    const { disk, said, tell } = world(boat, { run: failing });
    disk.texts.set("/boat/plan.html", "This report is computed from the notebook a-line-plan.ipynb");
    const before = new Map(disk.texts);
    expect(await tell(...planned, "plan.html")).toBe(1);
    expect(said.err).toContain("no such rope");
    expect(disk.texts).toEqual(before);
  });
});

describe("a comparison as a page", () => {
  it("is made from both files", async () => {
    const { disk, ran, tell } = world({ ...boat, "other.yaml": smallBoat });
    expect(await tell("compare", "small.yaml", "other.yaml", "--html", "both.html")).toBe(0);
    expect(ran).toEqual([["/package/notebooks/before-and-after.ipynb", ["/boat/small.yaml", "/boat/other.yaml"]]]);
    expect(disk.texts.get("/boat/both.html")).toContain("before-and-after.ipynb with small.yaml and other.yaml");
    disk.texts.set("/boat/notes.txt", "mine");
    expect(await tell("compare", "small.yaml", "other.yaml", "--html", "notes.txt")).toBe(1);
    expect(disk.texts.get("/boat/notes.txt")).toBe("mine");
  });
});
