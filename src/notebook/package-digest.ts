import { readdir, readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { digestOf } from "./run-causes.js";

/** Folders of the compiled package that no cell can reach: what draws pages and what reads command lines. */
const beyondCells = ["report", "page", "cli"];

/** What the compiled package is, by digests. */
export interface PackageDigest {
  /** Of what cells can reach. */
  readonly core: string;
  /** Of all of it. */
  readonly whole: string;
  /** Of the engine, the kernel and the libraries. */
  readonly versions: string;
}

/**
 * Digests of the compiled package and of the versions of what it stands on.
 *
 * @param packageFolder  folder with `package.json` and `dist`
 * @returns digests
 */
export async function packageDigest(packageFolder: string): Promise<PackageDigest> {
  const dist = join(packageFolder, "dist");
  const names = (await readdir(dist, { recursive: true })).filter((name) => name.endsWith(".js")).sort();
  const digests = await Promise.all(names.map(async (name) => `${name} ${digestOf(await readFile(join(dist, name)))}`));
  const reached = digests.filter((line) => !beyondCells.includes(line.split(/[\\/]/u)[0]!));
  return {
    core: digestOf(reached.join("\n")),
    whole: digestOf(digests.join("\n")),
    versions: digestOf((await versionsOf(packageFolder)).join("\n")),
  };
}

async function versionsOf(packageFolder: string): Promise<string[]> {
  const { dependencies = {} } = await aboutOf(packageFolder);
  const known = Object.keys(dependencies).map(async (name) => `${name} ${await versionOf(name, packageFolder)}`);
  return [`node ${process.version}`, ...(await Promise.all(known))];
}

interface About {
  readonly version?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

async function aboutOf(folder: string): Promise<About> {
  return JSON.parse(await readFile(join(folder, "package.json"), "utf8")) as About;
}

/** Version of the library that the package would load: the nearest one on the way up. */
async function versionOf(name: string, folder: string): Promise<string> {
  try {
    return (await aboutOf(join(folder, "node_modules", name))).version ?? "unknown";
  } catch {
    const above = dirname(folder);
    return above === folder ? "missing" : versionOf(name, above);
  }
}
