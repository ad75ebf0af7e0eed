import { describe, expect, it } from "vitest";
import { exportsOf, filesBelow, importsOf, read } from "./project.js";

const order = [
  "quantity",
  "sources",
  "numerics",
  "materials",
  "wind",
  "rope",
  "reeving",
  "crew",
  "motion",
  "uncertainty",
  "calibration",
  "boat",
  "plan",
  "working",
  "published",
  "notebook",
  "live",
  "report",
  "page",
  "cli",
];

const sources = filesBelow("src");
const rank = (file: string) => (file === "src/index.ts" ? order.length : order.indexOf(file.split("/")[1]!));
const graph = new Map(sources.map((file) => [file, importsOf(file)]));

describe("the order of the folders", () => {
  it("knows every folder of src", () => {
    expect(sources.filter((file) => rank(file) < 0)).toEqual([]);
    expect(sources.length).toBeGreaterThan(80);
  });

  it("is kept: a folder imports only from itself and from folders before it", () => {
    const upward = [...graph].flatMap(([file, imports]) =>
      imports.filter(({ from }) => rank(from) > rank(file)).map(({ from }) => `${file} imports ${from}`),
    );
    expect(upward).toEqual([]);
  });

  it("leads to files that exist", () => {
    const missing = [...graph].flatMap(([file, imports]) =>
      imports.filter(({ from }) => !graph.has(from)).map(({ from }) => `${file} imports ${from}`),
    );
    expect(missing).toEqual([]);
  });

  it("leaves no circle among the files", () => {
    const circles: string[] = [];
    const state = new Map<string, "open" | "done">();
    const visit = (file: string, path: readonly string[]): void => {
      if (state.get(file) === "done") return;
      if (state.get(file) === "open") {
        circles.push([...path.slice(path.indexOf(file)), file].join(" → "));
        return;
      }
      state.set(file, "open");
      for (const { from } of graph.get(file) ?? []) visit(from, [...path, file]);
      state.set(file, "done");
    };
    for (const file of sources) visit(file, []);
    expect(circles).toEqual([]);
  });
});

describe("what a file exports", () => {
  it("is used by another file of src, or by a test", () => {
    const tests = filesBelow("tests");
    const used = new Set<string>();
    for (const [file, imports] of [...graph, ...tests.map((file) => [file, importsOf(file)] as const)])
      for (const { from, names } of imports) for (const name of names) if (from !== file) used.add(`${from} ${name}`);
    const unused = sources
      .flatMap((file) => exportsOf(file).map(({ name }) => [file, name] as const))
      .filter(([file, name]) => !used.has(`${file} ${name}`) && !used.has(`${file} *`))
      .filter(([file, name]) => !namedInOwnExports(file, name));
    expect(unused.map(([file, name]) => `${file}: ${name}`)).toEqual([]);
  });
});

/** A type that another export of the same file speaks of must be exported for the emitted declarations. */
function namedInOwnExports(file: string, name: string): boolean {
  const declared = exportsOf(file).find((exported) => exported.name === name)!;
  if (!/^(?:export )?(?:interface|type)\b/u.test(declared.node.getText())) return false;
  return [...read(file).matchAll(new RegExp(`\\b${name}\\b`, "gu"))].length > 1;
}
