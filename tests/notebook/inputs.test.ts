import { afterEach, describe, expect, it, test } from "vitest";
import { NotANotebookError } from "../../src/notebook/errors.js";
import { inputFile, secondInputFile } from "../../src/notebook/input.js";
import { inputList, inputReportName } from "../../src/notebook/input-list.js";
import { outputsOf, runHarness } from "./harness.js";

const listed = (...inputs: unknown[]) => ({ haulbook: { inputs } });

describe("files that a notebook is run with", () => {
  it("are those of its metadata, in their order", () => {
    expect(inputList(listed("boats/a.yaml", "our boat.yaml"))).toEqual(["boats/a.yaml", "our boat.yaml"]);
  });

  it.each([[undefined], [null], [{}], [{ haulbook: {} }], [{ haulbook: { place: 3 } }]])(
    "are none in %j",
    (metadata) => {
      expect(inputList(metadata)).toBeUndefined();
    },
  );

  it.each([
    ["../a.yaml", "leads out of the folder"],
    ["boats/../../a.yaml", "leads out of the folder"],
    ["/etc/a.yaml", "root of a disk"],
    ["C:/a.yaml", "root of a disk"],
    ["boats\\a.yaml", "backslash"],
    ["boats//a.yaml", "no plain path"],
    ["./a.yaml", "no plain path"],
    ["boats/.a.yaml", "no plain path"],
    ["", "no plain path"],
    ["a\n.yaml", "no plain path"],
  ])("refuse %j", (path, why) => {
    expect(() => inputList(listed("good.yaml", path))).toThrow(why);
    expect(() => inputList(listed(path))).toThrow(JSON.stringify(path));
  });

  it.each([[listed()], [listed(1)], [{ haulbook: { inputs: "a.yaml" } }]])("refuse %j", (metadata) => {
    expect(() => inputList(metadata)).toThrow("no list of paths");
  });

  it("need names of their own, as their pages are named by them", () => {
    expect(() => inputList(listed("one/boat.yaml", "other/boat.yaml"))).toThrow('two inputs called "boat"');
    expect(inputReportName("a-line-plan", "boats/demo-skiff.yaml")).toBe("a-line-plan-demo-skiff");
    expect(inputReportName("plan", "v1.2.yaml")).toBe("plan-v1.2");
  });
});

describe("inputFile", () => {
  afterEach(() => {
    delete process.env.HAULBOOK_INPUT;
    delete process.env.HAULBOOK_INPUT_2;
  });

  it("is what the build gives, otherwise what the notebook says", () => {
    expect(inputFile("boats/usual.yaml")).toBe("boats/usual.yaml");
    expect(secondInputFile()).toBeUndefined();
    process.env.HAULBOOK_INPUT = "boats/other.yaml";
    process.env.HAULBOOK_INPUT_2 = "boats/second.yaml";
    expect(inputFile("boats/usual.yaml")).toBe("boats/other.yaml");
    expect(secondInputFile()).toBe("boats/second.yaml");
  });
});

describe("a run", () => {
  const { scratch, run, failure } = runHarness();
  const asking = `import { inputFile, secondInputFile } from "../../../dist/notebook/input.js";\nconsole.log(inputFile("usual.yaml"), secondInputFile() ?? "none");`;
  const told = async (more: Parameters<typeof run>[1]) =>
    outputsOf(await run(scratch.notebook("asks", [asking]), more)).flat();

  test("hands its files to the notebook, and none that are left over", async () => {
    const environment = { ...process.env, HAULBOOK_INPUT: "stray.yaml", HAULBOOK_INPUT_2: "stray too.yaml" };
    const said = (text: string) => [{ kind: "stream", stream: "stdout", text }];
    expect(await told({ environment, inputs: ["boats/one.yaml"] })).toEqual(said("boats/one.yaml none\n"));
    expect(await told({ environment, inputs: ["a.yaml", "b c.yaml"] })).toEqual(said("a.yaml b c.yaml\n"));
    expect(await told({ environment })).toEqual(said("usual.yaml none\n"));
  });

  test("refuses a notebook whose files lie outside its folder", async () => {
    const file = scratch.notebook("astray", [asking], { metadata: listed("../boats/one.yaml") });
    const error = await failure(file);
    expect(error).toBeInstanceOf(NotANotebookError);
    expect(error.message).toContain('astray.ipynb: has the input "../boats/one.yaml", which leads out of the folder');
  });
});
