import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { installKernelspec } from "../../src/notebook/kernelspec.js";
import { importDisplay, type Scratch, scratchFolder } from "./scratch.js";

const hasJupyter = spawnSync("jupyter", ["--version"]).status === 0;
const listCommand = hasJupyter ? kernelspecCommand() : [];

/** Some systems install Jupyter's library without the command: then the library itself is asked. */
function kernelspecCommand(): string[] {
  if (spawnSync("jupyter", ["kernelspec", "--version"]).status === 0) return ["jupyter", "kernelspec"];
  const script = execFileSync("which", ["jupyter"], { encoding: "utf8" }).trim();
  const interpreter =
    readFileSync(script, "utf8")
      .split("\n")[0]
      ?.replace(/^#!\s*/, "")
      .trim()
      .split(" ") ?? [];
  return [...interpreter, "-m", "jupyter_client.kernelspecapp"];
}

const otherSpec = JSON.stringify({ argv: ["true"], display_name: "other", language: "other" });
let folder: string;
let scratch: Scratch;

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "haulbook-spec-"));
  scratch = scratchFolder();
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  scratch.remove();
});

test("the folder follows the platform", async () => {
  const where = (platform: NodeJS.Platform, env: Record<string, string>) =>
    installKernelspec({ env, platform, homeFolder: "/home/a", write: async () => {} });
  expect(await where("linux", {})).toBe("/home/a/.local/share/jupyter/kernels/haulbook/kernel.json");
  expect(await where("linux", { XDG_DATA_HOME: "/data" })).toBe("/data/jupyter/kernels/haulbook/kernel.json");
  expect(await where("darwin", {})).toBe("/home/a/Library/Jupyter/kernels/haulbook/kernel.json");
  expect(await where("win32", { APPDATA: "/app" })).toBe("/app/jupyter/kernels/haulbook/kernel.json");
  expect(await where("darwin", { JUPYTER_DATA_DIR: "/jupyter" })).toBe("/jupyter/kernels/haulbook/kernel.json");
});

test("a prefix means all its users, whatever the user's own folder is", async () => {
  const env = { JUPYTER_DATA_DIR: "/jupyter" };
  const install = { prefix: "/usr/local", env, platform: "linux", homeFolder: "/home/a" } as const;
  expect(await installKernelspec({ ...install, write: async () => {} })).toBe(
    "/usr/local/share/jupyter/kernels/haulbook/kernel.json",
  );
});

test("an earlier kernelspec of ours is replaced, nothing else is touched", async () => {
  const install = () => installKernelspec({ dataFolder: folder, env: {}, platform: "linux", homeFolder: "/absent" });
  mkdirSync(path.join(folder, "kernels", "haulbook"), { recursive: true });
  mkdirSync(path.join(folder, "kernels", "other"));
  writeFileSync(path.join(folder, "kernels", "other", "kernel.json"), otherSpec);
  writeFileSync(path.join(folder, "kernels", "haulbook", "kernel.json"), "old");
  const file = await install();
  const spec = JSON.parse(readFileSync(file, "utf8"));
  expect(spec).toMatchObject({ display_name: "haulbook (TypeScript)", language: "typescript" });
  expect(spec.argv[0]).toBe(process.execPath);
  expect(spec.argv.slice(-3)).toEqual(["kernel", "--config-path", "{connection_file}"]);
  expect(existsSync(spec.argv.at(-4))).toBe(true);
  await install();
  expect(readdirSync(path.dirname(file))).toEqual(["kernel.json"]);
  expect(readFileSync(path.join(folder, "kernels", "other", "kernel.json"), "utf8")).toBe(otherSpec);
});

test.runIf(hasJupyter)("Jupyter lists the kernel", async () => {
  const file = await installKernelspec({
    env: { JUPYTER_DATA_DIR: folder },
    platform: process.platform,
    homeFolder: "/absent",
  });
  const [program = "", ...parameters] = listCommand;
  const listed = execFileSync(program, [...parameters, "list", "--json"], {
    encoding: "utf8",
    stdio: "pipe",
    env: { ...process.env, JUPYTER_DATA_DIR: folder },
  });
  expect(JSON.parse(listed).kernelspecs.haulbook.resource_dir).toBe(path.dirname(file));
});

test.runIf(hasJupyter)("Jupyter runs a notebook in it; texts and things show themselves", async () => {
  await installKernelspec({ env: { JUPYTER_DATA_DIR: folder }, platform: process.platform, homeFolder: "/absent" });
  const file = scratch.notebook("live", [
    `${importDisplay}show(answer("About 80 N."));\nconst pull: number = 6 * 7;`,
    'console.log("pull", pull);\nfor (let line = 0; line < 900; line += 1) console.log(line);\nshow(result({ label: "Pull", text: pull + " N" }));',
  ]);
  const { HAULBOOK_OUTPUT: _, ...env } = process.env;
  execFileSync("jupyter", ["nbconvert", "--to", "notebook", "--execute", "--output", "ran.ipynb", file], {
    env: { ...env, JUPYTER_DATA_DIR: folder },
    stdio: "pipe",
  });
  const ran = JSON.parse(readFileSync(path.join(scratch.folder, "ran.ipynb"), "utf8"));
  expect(ran.cells[0].outputs[0].data["text/html"].join?.("") ?? ran.cells[0].outputs[0].data["text/html"]).toBe(
    "<p><strong>About 80 N.</strong></p>",
  );
  const texts = ran.cells[1].outputs
    .filter((output: { name?: string }) => output.name === "stdout")
    .flatMap((output: { text: string[] }) => output.text);
  expect(texts.join("")).toBe(`pull 42\n${Array.from({ length: 900 }, (_, line) => `${line}\n`).join("")}`);
  expect(JSON.stringify(ran.cells[1].outputs.at(-1))).toContain("<strong>42 N</strong>");
  expect(JSON.stringify(ran.cells)).not.toContain("ExperimentalWarning");
});
