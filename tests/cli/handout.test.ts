import { describe, expect, it } from "vitest";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { recordOf, recordText } from "../../src/report/record.js";
import { memoryDisk } from "../report/memory.js";
import { sample } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

const notebooks = ["how-hard-to-hold", "light-air", "not-built"];
const page = "/boat/handout/handout.html";
const print = "/boat/handout/handout.pdf";

function world(changed: Partial<Surroundings> = {}, refuse?: RegExp) {
  const disk = memoryDisk(refuse);
  for (const name of notebooks) disk.texts.set(`/boat/notebooks/${name}.ipynb`, "");
  const built = (name: string, folder = "reports") =>
    disk.texts.set(`/boat/${folder}/data/${name}.json`, recordText({ ...recordOf(sample, ""), name }));
  built("how-hard-to-hold");
  built("light-air");
  const printed: string[] = [];
  const run = async () => Promise.reject(new Error("nothing is run for a handout"));
  const print: Surroundings["print"] = async (from, to) => {
    printed.push(`${from} → ${to}`);
    return 2;
  };
  const quiet = quietWorld({ run, print, ...changed }, disk);
  return {
    disk,
    built,
    said: Object.assign(quiet.said, { printed }),
    tell: (...args: string[]) => quiet.tell("handout", ...args),
  };
}

describe("haulbook handout", () => {
  it("puts all reports that are built on one page, and says where it is", async () => {
    const { disk, said, tell } = world();
    expect(await tell()).toBe(0);
    expect(disk.texts.get(page)?.match(/<article /gu)).toHaveLength(2);
    expect(said.out).toBe("2 topics, one side each. Open and print handout/handout.html\n");
    expect(said.printed).toEqual([]);
  });

  it("takes the named ones in the order given, each once, with codes for their addresses", async () => {
    const { disk, tell } = world();
    expect(
      await tell(
        "light-air.ipynb",
        "how-hard-to-hold",
        "light-air",
        "--address",
        "https://club.example/a",
        "-o",
        "out",
      ),
    ).toBe(0);
    const links = [...(disk.texts.get("/boat/out/handout.html") ?? "").matchAll(/<a href="([^"]+)">/gu)];
    expect(links.map(([, address]) => address)).toEqual([
      "https://club.example/a/light-air.html",
      "https://club.example/a/how-hard-to-hold.html",
    ]);
  });

  it("reads reports from another folder when told", async () => {
    const { built, disk, tell } = world();
    built("not-built", "pages");
    expect(await tell("--reports", "pages")).toBe(0);
    expect(disk.texts.get(page)).toContain('id="not-built"');
  });

  it("prints when asked", async () => {
    const { said, tell } = world();
    expect(await tell("--pdf")).toBe(0);
    expect(said.printed).toEqual([`${page} → ${print}`]);
    expect(said.out).toContain("Printed to handout/handout.pdf");
  });

  it("replaces its own earlier files", async () => {
    const { disk, tell } = world();
    expect(await tell("light-air")).toBe(0);
    disk.texts.set(print, "%PDF-1.4 /Title (haulbook handout: 1 topic)");
    expect(await tell("--pdf")).toBe(0);
    expect(disk.texts.get(page)?.match(/<article /gu)).toHaveLength(2);
  });
});

describe("a handout that cannot be made", () => {
  it.each([
    [["ligth-air"], 2, 'Did you mean "light-air"?'],
    [["--address", "club.example"], 2, "https://club.example"],
    [["--address", `https://club.example/${"a".repeat(200)}`], 2, "Use a shorter address"],
    [["--adress", "https://club.example"], 2, "adress"],
    [["not-built", "light-air"], 1, "not-built: not built yet. Build first:\n  haulbook reports not-built\n"],
    [["--reports", "pages"], 1, "No report is built yet. Build first:\n  haulbook reports --output pages\n"],
  ])("%j ends with code %i and says what to do", async (args, code, words) => {
    const { disk, said, tell } = world();
    const before = new Map(disk.texts);
    expect(await tell(...args)).toBe(code);
    expect(said.err).toContain(words);
    expect(disk.texts).toEqual(before);
  });

  it("says which report was built by another version", async () => {
    const { disk, said, tell } = world();
    disk.texts.set("/boat/reports/data/light-air.json", '{"name":"light-air"}');
    expect(await tell()).toBe(1);
    expect(said.err).toContain("light-air.json: not a record of this version; build all reports again.");
  });

  it.each([
    ["handout.html", []],
    ["handout.pdf", ["--pdf"]],
  ])("leaves a %s that is something else", async (name, args) => {
    const { disk, said, tell } = world();
    disk.texts.set(`/boat/handout/${name}`, "mine");
    const before = new Map(disk.texts);
    expect(await tell(...args)).toBe(1);
    expect(said.err).toContain(`handout/${name} is there already, is no handout, and stays as it is.`);
    expect(disk.texts).toEqual(before);
  });

  it("says that a folder cannot be written", async () => {
    const { said, tell } = world({}, /handout/u);
    expect(await tell()).toBe(1);
    expect(said.err).toContain("handout cannot be written: no space");
    expect(said.err).toContain("Name another folder with --output.");
  });

  it("keeps the page where nothing prints, and where something did not fit", async () => {
    const none = world({ print: async () => Promise.reject(new Error("Chromium was not found.")) });
    expect(await none.tell("--pdf")).toBe(1);
    expect(none.said.err).toBe(
      "No PDF: Chromium was not found.\nhandout/handout.html stays: print it from a browser.\n",
    );
    expect(none.disk.texts.has(page)).toBe(true);
    const long = world({ print: async () => 3 });
    expect(await long.tell("--pdf")).toBe(1);
    expect(long.said.err).toContain("3 sides for 2 topics");
  });
});
