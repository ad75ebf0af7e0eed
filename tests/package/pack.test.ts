import { existsSync, readdirSync, readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { join } from "node:path";
import typescript from "typescript";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { tslabRequire } from "../../src/notebook/tslab.js";
import { panelAsset } from "../../src/report/document.js";
import { filesBelow, root } from "../house/project.js";
import { long } from "../long.js";
import { about, type Project, projectWithPackage } from "./packed.js";

let project: Project;
beforeAll(() => {
  project = projectWithPackage();
});
afterAll(() => project?.remove());

const read = (file: string) => readFileSync(join(project.installed, file), "utf8");

describe("what is packed", () => {
  it("is the compiled library with its declarations, whole", () => {
    const compiled = filesBelow("src").filter((file) => !/^src\/page\/|\.d\.ts$/u.test(file));
    const wanted = compiled.flatMap((file) => {
      const name = file.replace(/^src\/(.*)\.ts$/u, "dist/$1");
      return [`${name}.js`, `${name}.d.ts`];
    });
    expect(wanted.length).toBeGreaterThan(500);
    expect(wanted.filter((file) => !project.packed.includes(file))).toEqual([]);
  });

  it("holds what computes the panels of pages, and the notebooks with their data", () => {
    const panels = readdirSync(join(root, "src/page/models")).map((file) => file.replace(/\.ts$/u, ".js"));
    const names = ["around-a-ring.ipynb", "clinic/our-boat.ipynb", "boats/demo-skiff.yaml", "data/demo-readings.csv"];
    const wanted = [
      ...panels.map((file) => `dist/page/bundles/${file}`),
      ...names.map((name) => `notebooks/${name}`),
      ...["LICENSE", "README.md", "package.json"],
    ];
    expect(panels.length).toBeGreaterThan(0);
    expect(wanted.filter((file) => !project.packed.includes(file))).toEqual([]);
  });

  it("is nothing else: no source, no test, no report, no notes of the compiler", () => {
    const belongs =
      /^(?:LICENSE|README\.md|package\.json|dist\/(?!page\/)[\w/-]+\.(?:js|d\.ts)|dist\/page\/bundles\/[\w-]+\.js|notebooks\/(?:clinic\/)?[\w-]+\.(?:ipynb|txt)|notebooks\/(?:boats|data)\/[\w.-]+\.(?:yaml|json|csv))$/u;
    expect(project.packed.filter((file) => !belongs.test(file))).toEqual([]);
  });

  it("names every package that it imports, and none that it does not use", () => {
    const code = project.packed.filter((file) => /^dist\/(?!page\/).*\.(?:js|d\.ts)$/u.test(file)).map(read);
    const named = /(?:\bfrom |\bimport\(|require\(|\.resolve\()"((?:@[\w-]+\/)?[\w-][\w.:-]*)[^"]*"/gu;
    const found = new Set(code.flatMap((text) => [...text.matchAll(named)].map((match) => match[1]!)));
    // The kernel brings its own compiler, which is looked for from there.
    found.delete("@tslab/typescript-for-tslab");
    const unnamed = [...found].filter((name) => !isBuiltin(name) && !(name in about.dependencies));
    expect(unnamed).toEqual([]);
    expect(Object.keys(about.dependencies).filter((name) => !found.has(name))).toEqual([]);
  });
});

const lineOfFourParts = `
const sheave = { kind: "measured", name: "sheave", tensionRatio: 1.09 } as const;
const rope = { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const purchase = tackle({ parts: 4, hauledFrom: "fixed", turn: sheave });
const sheet = prepareLine({ rope, stations: [{ kind: "tackle", name: "4:1", reeving: purchase }] });
`;

describe("what a program does with it", () => {
  it("computes, from JavaScript", async () => {
    const code = lineOfFourParts.replace(" as const", "");
    project.write(
      "compute.js",
      `import { prepareLine, tackle } from "haulbook";${code}console.log(JSON.stringify(sheet.handForces(1000)));`,
    );
    const forces = JSON.parse(await project.run(process.execPath, "compute.js")) as { readonly hauling: number };
    // Each part carries 1.09 times less than the one before it, seen from the hand.
    const parts = [1, 2, 3, 4].map((turns) => 1.09 ** -turns);
    expect(forces.hauling).toBeCloseTo(1000 / parts.reduce((sum, part) => sum + part, 0), 6);
  });

  const consumer = `import { type HandForces, prepareLine, tackle } from "haulbook";
${lineOfFourParts}
export const forces: HandForces = sheet.handForces(1000);
// @ts-expect-error: a word is no number of parts
tackle({ parts: "four", hauledFrom: "fixed", turn: sheave });
`;
  const kernels = tslabRequire("@tslab/typescript-for-tslab") as typeof typescript;
  const { ModuleKind, ModuleResolutionKind, ScriptTarget } = typescript;

  const program = { module: ModuleKind.NodeNext, moduleResolution: ModuleResolutionKind.NodeNext };
  it.each([
    ...long([], [["a program", typescript, program] as const]),
    ["the notebooks' kernel", kernels, { module: ModuleKind.ESNext, moduleResolution: ModuleResolutionKind.Node10 }],
  ] as const)("has types that hold in %s, strictly", (_, ts, resolution) => {
    const file = project.write("consumer.ts", consumer);
    const strict = { strict: true, noUncheckedIndexedAccess: true, exactOptionalPropertyTypes: true };
    const options = { ...strict, ...resolution, target: ScriptTarget.ES2022, esModuleInterop: true, noEmit: true };
    const checked = ts.createProgram([file], { ...options, types: [] });
    const own = checked.getSourceFiles().filter(({ fileName }) => /\/haulbook\/dist\/|consumer\.ts$/u.test(fileName));
    expect(own.length).toBeGreaterThan(200);
    const faults = own.flatMap((source) => [
      ...checked.getSyntacticDiagnostics(source),
      ...checked.getSemanticDiagnostics(source),
    ]);
    const texts = [...checked.getOptionsDiagnostics(), ...checked.getGlobalDiagnostics(), ...faults].map(
      ({ file: place, messageText }) => `${place?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
    );
    expect(texts).toEqual([]);
  });
});

describe("what a person does with it", () => {
  const haulbook = (...words: string[]) => project.run("npx", "--no-install", "haulbook", ...words);

  it("reads the help and the version", async () => {
    expect(await haulbook("--help")).toContain("haulbook <verb>");
    expect(await haulbook("--version")).toBe(`${about.version}\n`);
  });

  it("builds a report of a packaged notebook, with its panel", async () => {
    expect(await haulbook("reports", "around-a-ring")).toContain("1 report built");
    const page = readFileSync(join(project.folder, "reports", "around-a-ring.html"), "utf8");
    expect(page).toContain("<h1");
    const panel = readFileSync(join(project.folder, "reports", panelAsset("around-a-ring")), "utf8");
    expect(panel).toBe(read("dist/page/bundles/around-a-ring.js"));
    expect(page).toContain(panelAsset("around-a-ring"));
  });

  it("makes its kernel known to Jupyter", async () => {
    await haulbook("kernel", "install", "--prefix", "environment");
    const file = join(project.folder, "environment/share/jupyter/kernels/haulbook/kernel.json");
    const { argv } = JSON.parse(readFileSync(file, "utf8")) as { readonly argv: readonly string[] };
    expect(argv[0]).toBe(process.execPath);
    expect(existsSync(argv.at(-4)!)).toBe(true);
  });
});
