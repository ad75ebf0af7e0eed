import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { BoatCheck } from "../../src/boat/check.js";
import { boatOf } from "../../src/boat/read.js";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { inputList } from "../../src/notebook/input-list.js";
import { plannedBoatOf } from "../../src/plan/boat-plan.js";
import type { PlanOption } from "../../src/plan/plan-option.js";
import { demoText, here, smallBoat, smallBoatWith } from "../boat/small-boat.js";
import { long } from "../long.js";
import { quietWorld } from "./quiet-world.js";

/** Files of the package that a new folder is made of. */
const packaged = [
  "notebooks/clinic/how-to.txt",
  "notebooks/clinic/our-boat.ipynb",
  "notebooks/clinic/worksheet.ipynb",
  "notebooks/a-line-plan.ipynb",
  "notebooks/boats/demo-skiff.yaml",
  "notebooks/boats/demo-shop.yaml",
  "notebooks/boats/boat.schema.json",
];

function world(files: Readonly<Record<string, string>> = {}) {
  const linked: string[] = [];
  const link: Surroundings["link"] = async (folder, path) => void linked.push(`${path} → ${folder}`);
  const quiet = quietWorld({ link });
  for (const name of packaged)
    quiet.disk.texts.set(`/package/${name}`, readFileSync(new URL(`../../${name}`, import.meta.url), "utf8"));
  for (const [name, text] of Object.entries(files)) quiet.disk.texts.set(`/boat/${name}`, text);
  return { ...quiet, said: Object.assign(quiet.said, { linked }) };
}

const weak = smallBoatWith(["safetyFactor: 5", "safetyFactor: 100"]);

describe("haulbook check", () => {
  it("prints a row for every line, the sums, what to mend first and a caution", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("check", "small.yaml")).toBe(0);
    const rows = said.out.split("\n");
    expect(rows[0]).toMatch(/^small boat: 3 lines, \d enough, \d can't tell, \d not enough\.$/u);
    const numbers = rows.find((row) => row.includes("haul [N]"))!;
    for (const word of ["hold [N]", "out [N]", "dry [g]", "wet [g]", "EUR"]) expect(numbers).toContain(word);
    expect(said.out).toMatch(/mainsheet +[\d.]+ \([\d.]+–[\d.]+\)/u);
    for (const name of ["mainsheet", "halyard", "outhaul"]) expect(rows.some((row) => row.startsWith(name))).toBe(true);
    expect(said.out).toMatch(/All lines: [\d.]+ kg dry/u);
    expect(said.out).toMatch(/(?:One thing|Two things|Three things) to do\n1\. |Nothing to do\./u);
    expect(said.out).toContain("rated strength");
    expect(said.err).toBe("");
  });

  it("fails with code 1 where a line is too weak, and says which change helps or that none does", async () => {
    const { said, tell } = world({ "weak.yaml": weak });
    expect(await tell("check", "weak.yaml")).toBe(1);
    expect(said.out).toMatch(/1\. \w+: [\s\S]*?Because of strength of/u);
    expect(said.out).toMatch(/Nothing\s+in\s+the\s+catalogue\s+mends\s+it/u);
    expect(said.out).toMatch(/strength of .* \(injury\):\s+not\s+enough/u);
  });

  it("fails with code 1 where a fast ease burns the hand, and says what to try", async () => {
    const eased = [
      "    use: season\n  halyard",
      "    use: season\n    ease: { speed: 15 m/s, duration: 3 s }\n  halyard",
    ];
    const { said, tell } = world({ "fast.yaml": smallBoatWith(eased as [string, string]) });
    expect(await tell("check", "fast.yaml")).toBe(1);
    expect(said.out).toMatch(/1\. mainsheet: [\s\S]*?hand\s+on\s+a\s+fast\s+ease/u);
    expect(said.out.replaceAll(/\s+/gu, " ")).toMatch(/it holds [\d.]+ N \([\d.]+ kgf\)\./u);
  });

  it("says of each demand that is open its margin, and what each line costs and weighs with its range", async () => {
    const own = ["    touches: [mainsheet]\n", "    limits: { mass: 900 g, cost: 9 EUR }\n"];
    const { said, tell } = world({ "small.yaml": smallBoatWith(own as [string, string]) });
    expect(await tell("check", "small.yaml")).toBe(0);
    const text = said.out.replaceAll(/\s+/gu, " ");
    expect(text).toMatch(
      /halyard, cost of the line \(race\): not enough, 0\.\d+ of what is asked, .* It costs [\d.]+ EUR; 9 EUR are allowed/u,
    );
    const halyard = said.out.split("\n").find((row) => row.startsWith("halyard"))!;
    expect(halyard).toMatch(/\([\d.]+–[\d.]+\).*not enough$/u);
  });

  it("keeps customs and comfort for those who ask", async () => {
    const thin = smallBoatWith(["diameter: 7 mm", "diameter: 5 mm"]);
    const quiet = world({ "thin.yaml": thin });
    await quiet.tell("check", "thin.yaml");
    expect(quiet.said.out).toMatch(/\d notes? of custom and comfort/u);
    expect(quiet.said.out).not.toContain("diameter in the hand");
    const told = world({ "thin.yaml": thin });
    await told.tell("check", "thin.yaml", "--notes");
    expect(told.said.out).toContain("diameter in the hand");
  });

  it("takes a boat without a currency", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat.replaceAll(" EUR", "") });
    expect(await tell("check", "small.yaml")).toBe(0);
    expect(said.out).toMatch(/kg wet, cost [\d.]+\.\n/u);
    const plan = world({ "small.yaml": smallBoat.replaceAll(" EUR", "") });
    expect(await plan.tell("plan", "small.yaml")).toBe(0);
    expect(plan.said.out).not.toMatch(/EUR|euro/u);
  });

  it("prints the whole check as JSON", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("check", "small.yaml", "--json")).toBe(0);
    const check = JSON.parse(said.out) as BoatCheck;
    expect(check.lines.map(({ name }) => name)).toEqual(Object.keys(boatOf(smallBoat, here).lines));
    expect(check.lines[0]!.demands[0]).toMatchObject({
      consequence: "injury",
      margins: { middle: expect.any(Number) },
    });
    expect(check.safe).toBe(true);
  });

  it("takes the catalogue that lies beside the file", async () => {
    const [above, catalogue = "", below = ""] = smallBoat.split(/^catalogue:\n|^(?=limits:)/mu);
    const files = {
      "boats/small.yaml": `${above}catalogue: shop.yaml\n${below}`,
      "boats/shop.yaml": catalogue.replace(/^ {2}/gmu, ""),
    };
    const { said, tell } = world(files);
    expect(await tell("check", "boats/small.yaml")).toBe(0);
    expect(said.out).toContain("small boat");
    const alone = world({ "small.yaml": files["boats/small.yaml"] });
    expect(await alone.tell("check", "small.yaml")).toBe(1);
    expect(alone.said.err).toMatch(/small\.yaml:\d+:12: catalogue: found "shop.yaml", which is not there/u);
  });

  it("fails with code 1 and the place of every fault of a file", async () => {
    const { said, tell } = world({
      "bad.yaml": smallBoatWith(["area: 8 m^2", "area: 8"], ["kind: halyard", "kind: haliard"]),
    });
    expect(await tell("check", "bad.yaml")).toBe(1);
    expect(said.err).toContain("bad.yaml:18:11: sails › main › area: found the plain number 8");
    expect(said.err).toContain('Did you mean "halyard"?');
    expect(said.out).toBe("");
  });

  it("fails with code 1 where there is no such file", async () => {
    const { said, tell } = world();
    expect(await tell("check", "none.yaml")).toBe(1);
    expect(said.err).toContain("none.yaml: found no such file");
    expect(said.err).toContain("haulbook new");
  });
});

describe("haulbook compare", () => {
  it("shows two versions line by line, with what changed", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat, "weak.yaml": weak });
    expect(await tell("compare", "small.yaml", "weak.yaml")).toBe(0);
    expect(said.out).toMatch(/^small boat \(\d enough, .*\) → small boat \(/u);
    expect(said.out).toMatch(/What changed, the gravest first\n- \w+, strength of .* \(injury\): enough → not enough/u);
    expect(said.out).toMatch(/All lines: .* kg dry/u);
  });

  it("prints the whole comparison as JSON", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("compare", "small.yaml", "small.yaml", "--json")).toBe(0);
    const { lines } = JSON.parse(said.out) as { lines: { changed: unknown[] }[] };
    expect(lines.map(({ changed }) => changed)).toEqual([[], [], []]);
  });
});

describe("haulbook plan", () => {
  it("prints what to change, the front with proofs, prices of limits, the lists and a caution", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("plan", "small.yaml")).toBe(0);
    expect(said.out.split("\n")[0]).toBe("small boat");
    for (const word of ["haul [N]", "before", "after", "proven optimal", "Price of the limits", "To buy", "To cut"])
      expect(said.out).toContain(word);
    for (const name of ["mainsheet", "halyard", "outhaul"]) expect(said.out).toMatch(new RegExp(`^${name} `, "mu"));
    expect(said.out).toContain("rated strength");
    expect(said.err).toBe("");
  });

  it("shows 25 points where there are so many, each with its proof, and says when there are fewer", async () => {
    const files = {
      "large.yaml": demoText(long("demo-keelboat.yaml", "demo-skiff.yaml")),
      "demo-shop.yaml": demoText("demo-shop.yaml"),
      "small.yaml": smallBoat,
    };
    const { said, tell } = world(files);
    expect(await tell("plan", "large.yaml")).toBe(0);
    expect(said.out.match(/0 g +\d+ {2}proven optimal$/gmu)).toHaveLength(25);
    expect(Math.max(...said.out.split("\n").map(({ length }) => length))).toBeLessThanOrEqual(100);
    const few = world(files);
    expect(await few.tell("plan", "small.yaml", "--points", "200")).toBe(0);
    const shown = few.said.out.match(/proven optimal$/gmu)!.length;
    expect(few.said.out).toContain(`The front has only ${shown} points, fewer than the 200 asked for: these are all.`);
    const three = world(files);
    expect(await three.tell("plan", "small.yaml", "--points", "3")).toBe(0);
    expect(three.said.out.match(/proven optimal$/gmu)).toHaveLength(3);
    expect(three.said.out).toContain("There are more between them.");
    const none = world(files);
    expect(await none.tell("plan", "small.yaml", "--points", "0")).toBe(2);
    expect(none.said.err).toContain("whole number from 1 to 200");
  });

  it("carries in its JSON limits, options, prices, priorities, lists and a proof for every point", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("plan", "small.yaml", "--json")).toBe(0);
    const all = JSON.parse(said.out) as Record<string, unknown> & {
      front: { points: { proofs: { gap: number; status: string }[] }[] };
      lines: { name: string; options: { id: string }[] }[];
      before: { choice: { line: string; option: string }[] };
    };
    expect(all).toMatchObject({ name: "small boat", robust: false, currency: "EUR" });
    for (const key of ["limits", "prices", "priorities", "lists", "best"]) expect(all).toHaveProperty(key);
    for (const { proofs } of all.front.points)
      expect(proofs.map(({ gap, status }) => [gap, status])).toEqual(proofs.map(() => [0, "proven optimal"]));
    expect(all.before.choice.map(({ option }) => option)).toEqual(all.lines.map(() => "as it is"));
    expect(all.lines[0]!.options.length).toBeGreaterThan(5);
  });

  it("prints a plan as JSON that keeps what the file limits", async () => {
    const { said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("plan", "small.yaml", "--json")).toBe(0);
    const { best, front } = JSON.parse(said.out) as {
      best: { totals: { dry: number }; choice: { line: string }[] };
      front: { points: { totals: { dry: number; handForce: number } }[] };
    };
    expect(best.choice.map(({ line }) => line)).toEqual(["mainsheet", "halyard", "outhaul"]);
    expect(front.points[0]!.totals.dry).toBe(best.totals.dry);
    for (const { totals } of front.points) expect(totals.dry).toBeGreaterThanOrEqual(best.totals.dry);
    const limit = Math.round(1000 * best.totals.dry);
    const tight = world({
      "tight.yaml": smallBoatWith(["safetyFactor: 5", `safetyFactor: 5\n  mass: ${limit - 5} g`]),
    });
    expect(await tight.tell("plan", "tight.yaml", "--json")).toBe(1);
    expect(tight.said.out).toContain("dry mass at most");
  });

  it("writes the lists where none are yet, and writes over nothing", async () => {
    const { disk, said, tell } = world({ "small.yaml": smallBoat });
    expect(await tell("plan", "small.yaml", "--lists", "lists")).toBe(0);
    for (const name of ["before-after", "shopping-list", "cut-list", "mass-budget"])
      expect(disk.texts.get(`/boat/lists/${name}.csv`), name).toMatch(/,.*\r\n/u);
    expect(said.err).toContain("Lists written to lists");
    const before = new Map(disk.texts);
    expect(await tell("plan", "small.yaml", "--lists", "lists")).toBe(1);
    expect(said.err).toContain("lists/before-after.csv is there already and stays as it is");
    expect(new Map(disk.texts)).toEqual(before);
  });

  it("fails with code 1 where limits conflict, and names them", async () => {
    const { disk, said, tell } = world({ "weak.yaml": weak });
    expect(await tell("plan", "weak.yaml", "--lists", "lists")).toBe(1);
    const text = said.out.replaceAll(/\s+/gu, " ");
    for (const name of ["mainsheet", "halyard", "outhaul"]) {
      expect(text).toMatch(new RegExp(`Nothing in the catalogue keeps ${name}: [^.]*strength of`, "u"));
      expect(text).toContain(`The ${name} stays as it is and is not planned: somebody could be hurt.`);
    }
    expect([...disk.texts.keys()].some((path) => path.startsWith("/boat/lists"))).toBe(true);
  });

  it("asks more of a plan that must hold at the bad end of the range", async () => {
    const { lines } = plannedBoatOf(boatOf(smallBoat, here));
    const least = (of: (option: PlanOption) => number) =>
      Math.max(...lines.map(({ options }) => Math.min(...options.map(of))));
    const [middle, bad] = [least(({ handForce }) => handForce), least(({ handForceRobust }) => handForceRobust!)];
    const pull = Math.round((middle + bad) / 2);
    const { said, tell } = world({ "small.yaml": smallBoatWith(["pull: 250 N", `pull: ${pull} N`]) });
    expect(await tell("plan", "small.yaml")).toBe(0);
    expect(await tell("plan", "small.yaml", "--robust")).toBe(1);
    expect(said.out).toContain(`hauling at most ${pull} N`);
  });
});

describe("haulbook new", () => {
  it("makes a folder with everything in it and says how to go on", async () => {
    const { disk, said, tell } = world();
    expect(await tell("new", "clinic")).toBe(0);
    for (const name of [
      "how-to.txt",
      "notebooks/our-boat.ipynb",
      "notebooks/worksheet.ipynb",
      "notebooks/a-line-plan.ipynb",
      "notebooks/boats/our-boat.yaml",
    ])
      expect(disk.texts.has(`/boat/clinic/${name}`), name).toBe(true);
    const planning = disk.texts.get("/boat/clinic/notebooks/a-line-plan.ipynb") ?? "";
    expect(inputList((JSON.parse(planning) as { metadata: unknown }).metadata)).toEqual(["boats/our-boat.yaml"]);
    expect(planning).not.toContain("demo-");
    expect(said.linked).toEqual(["/boat/clinic.half-made/node_modules/haulbook → /package"]);
    expect(said.out).toContain("cd clinic, then haulbook reports");
    expect(await tell("check", "clinic/notebooks/boats/our-boat.yaml")).toBe(0);
  });

  it("overwrites nothing", async () => {
    const { disk, said, tell } = world({ "clinic/how-to.txt": "mine" });
    const before = new Map(disk.texts);
    expect(await tell("new", "clinic")).toBe(1);
    expect(said.err).toContain("clinic is not empty: it holds how-to.txt");
    expect(new Map(disk.texts)).toEqual(before);
    expect(said.linked).toEqual([]);
  });

  it("makes nothing where the package is not whole", async () => {
    const { disk, said, tell } = world();
    disk.texts.delete("/package/notebooks/clinic/worksheet.ipynb");
    expect(await tell("new", "clinic")).toBe(1);
    expect(said.err).toContain("The package lacks notebooks/clinic/worksheet.ipynb");
    expect([...disk.texts.keys()].filter((path) => path.startsWith("/boat/"))).toEqual([]);
  });
});

describe("wrong use", () => {
  it.each([
    [["check"], "Not enough"],
    [["compare", "one.yaml"], "Not enough"],
    [["plan"], "Not enough"],
    [["plan", "a.yaml", "--lists"], "lists"],
    [["new"], "Not enough"],
    [["check", "a.yaml", "--jsn"], "jsn"],
    [["comparee"], "Did you mean compare?"],
  ])("refuses %j with code 2 and a hint", async (args, word) => {
    const { said, tell } = world();
    expect(await tell(...args)).toBe(2);
    expect(said.err).toContain(word);
    expect(said.err).toContain("--help");
  });

  it.each([
    [["check", "--help"], "Boat file"],
    [["compare", "--help"], "side by side"],
    [["plan", "--help"], "nothing is written over"],
    [["new", "--help"], "not there yet"],
  ])("explains %j", async (args, word) => {
    const { said, tell } = world();
    expect(await tell(...args)).toBe(0);
    expect(said.out).toContain(word);
  });
});
