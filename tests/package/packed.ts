import { execFile, execFileSync } from "node:child_process";
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { promisify } from "node:util";
import { root } from "../house/project.js";

const run = promisify(execFile);

/** What the package says of itself, as far as it is used here. */
export interface About {
  readonly version: string;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly bin: Readonly<Record<string, string>>;
}

export const about = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as About;

/** An empty project into which the packed package was put as an installer would, without a network. */
export interface Project {
  readonly folder: string;
  /** Folder of the package in it. */
  readonly installed: string;
  /** Paths of all packed files, from the package's folder. */
  readonly packed: readonly string[];
  write(name: string, text: string): string;
  /** Runs a command in the project; answers with what it prints. */
  run(command: string, ...options: string[]): Promise<string>;
  remove(): void;
}

/**
 * Packs the built tree and puts it into a project, beside what it names as its dependencies and nothing else: what the package
 * forgot to name is not found.
 */
export function projectWithPackage(): Project {
  const folder = mkdtempSync(join(tmpdir(), "haulbook-package-"));
  const modules = join(folder, "node_modules");
  mkdirSync(join(modules, ".bin"), { recursive: true });
  const options = ["--json", "--ignore-scripts", "--pack-destination", folder];
  const [made] = JSON.parse(execFileSync("npm", ["pack", ...options], { cwd: root, encoding: "utf8" })) as [
    { readonly filename: string; readonly files: readonly { readonly path: string }[] },
  ];
  execFileSync("tar", ["-xzf", made.filename, "-C", modules], { cwd: folder });
  const installed = join(modules, "haulbook");
  renameSync(join(modules, "package"), installed);
  for (const name of Object.keys(about.dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(join(root, "node_modules", name), join(modules, name), "junction");
  }
  for (const [name, file] of Object.entries(about.bin)) {
    chmodSync(join(installed, file), 0o755);
    symlinkSync(join("..", "haulbook", file), join(modules, ".bin", name));
  }
  const write: Project["write"] = (name, text) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  write("package.json", JSON.stringify({ name: "club", private: true, type: "module" }));
  const { HAULBOOK_OUTPUT: _, ...env } = process.env;
  return {
    folder,
    installed,
    packed: made.files.map(({ path }) => path),
    write,
    run: async (command, ...given) => (await run(command, given, { cwd: folder, env })).stdout,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
