import { describe, expect, it } from "vitest";
import type { Surroundings } from "../../src/cli/surroundings.js";
import { sample } from "../report/sample.js";
import { quietWorld } from "./quiet-world.js";

const withInputs = (...inputs: unknown[]) => JSON.stringify({ metadata: { haulbook: { inputs } }, cells: [] });

function world(notebooks: Readonly<Record<string, string>>, run?: Surroundings["run"]) {
  const ran: [string, readonly string[] | undefined][] = [];
  const noted: Surroundings["run"] = async (path, inputs) => {
    ran.push([path, inputs]);
    return sample;
  };
  const quiet = quietWorld({ run: run ?? noted });
  for (const [name, text] of Object.entries(notebooks)) quiet.disk.texts.set(`/boat/notebooks/${name}.ipynb`, text);
  return { ...quiet, ran };
}

const boats = { plan: withInputs("boats/skiff.yaml", "boats/cat.yaml"), other: "{}" };
const file = "notebooks/plan.ipynb";

describe("a notebook with inputs", () => {
  it("becomes a page for each, with records, and its name stands for all of them", async () => {
    const { disk, ran, said, tell } = world(boats);
    expect(await tell("reports", "plan"), said.err).toBe(0);
    expect(ran).toEqual([
      [file, ["boats/skiff.yaml"]],
      [file, ["boats/cat.yaml"]],
    ]);
    expect(said.out).toContain("2 reports built");
    for (const name of ["plan-skiff", "plan-cat"]) {
      expect(disk.texts.get(`/boat/reports/${name}.html`)).toContain(
        `computed from the notebook plan.ipynb with ${name.slice(5)}.yaml`,
      );
      expect(JSON.parse(disk.texts.get(`/boat/reports/data/${name}.json`) ?? "")).toMatchObject({ name });
    }
    expect(disk.texts.get("/boat/reports/index.html")).toContain('href="plan-skiff.html"');
    expect(await tell("checks")).toBe(0);
    expect(said.out).toContain("on 2 reports");
  });

  it("is built for one of them by the name of its page, and all with all others", async () => {
    const one = world(boats);
    expect(await one.tell("reports", "plan-cat")).toBe(0);
    expect(one.ran).toEqual([[file, ["boats/cat.yaml"]]]);
    const all = world(boats);
    expect(await all.tell("reports")).toBe(0);
    expect(all.ran.map(([path]) => path)).toEqual(["notebooks/other.ipynb", file, file]);
    expect(all.ran[0]![1]).toBeUndefined();
  });

  it("is found by a name that is nearly right", async () => {
    const { ran, said, tell } = world(boats);
    expect(await tell("reports", "plan-ct", "pln")).toBe(2);
    expect(said.err).toContain('"plan-ct". Did you mean "plan-cat"?');
    expect(said.err).toContain('"pln". Did you mean "plan"?');
    expect(ran).toEqual([]);
  });

  it("says with which file it failed, and builds the others", async () => {
    const { said, tell } = world(boats, async (path, inputs) => {
      if (inputs?.[0] === "boats/cat.yaml") throw new Error(`${path}, cell 2, line 3: no such file`);
      return sample;
    });
    expect(await tell("reports")).toBe(1);
    expect(said.err).toContain("Run with boats/cat.yaml: notebooks/plan.ipynb, cell 2, line 3: no such file");
    expect(said.err).toContain("1 failed, 2 built");
  });

  it("does not write over the page of another notebook", async () => {
    const { said, tell } = world({ ...boats, "plan-cat": "{}" });
    expect(await tell("reports")).toBe(1);
    expect(said.err).toContain("plan.ipynb with cat.yaml makes a page of the same name");
    expect(said.err).toContain("2 failed, 2 built");
  });

  it("with a list that is wrong is left to the run, which refuses it", async () => {
    const { ran, tell } = world({ plan: withInputs("../skiff.yaml") });
    await tell("reports");
    expect(ran).toEqual([[file, undefined]]);
  });
});
