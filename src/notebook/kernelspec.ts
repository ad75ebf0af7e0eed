import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { kernelCommand } from "./tslab.js";

/** Name under which the notebooks ask Jupyter for the kernel. */
const kernelName = "haulbook";

/** Writes a file, by way of another one, so that a reader sees the old content or the new one and nothing between. */
export type WriteFile = (file: string, content: string) => Promise<void>;

export interface InstallKernelspec {
  /** Jupyter's data folder; by default that of the prefix, or the user's own. */
  readonly dataFolder?: string;
  /** Folder of a system or environment whose users all get the kernel, as `/usr/local`. */
  readonly prefix?: string | undefined;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly homeFolder: string;
  readonly write?: WriteFile;
}

/**
 * Lets Jupyter know the kernel: writes its kernelspec into a Jupyter data folder; an earlier one of ours is replaced.
 *
 * @param dataFolder  Jupyter's data folder; by default that of the prefix, JUPYTER_DATA_DIR or the user's own folder on this platform
 * @param prefix  folder of a system or environment, for all its users
 * @returns path of the file written
 * Example: await installKernelspec({ env: process.env, platform: process.platform, homeFolder: homedir() }) → "/…/kernels/haulbook/kernel.json"
 */
export async function installKernelspec(install: InstallKernelspec): Promise<string> {
  const folder = install.dataFolder ?? jupyterDataFolder(install);
  const file = path.join(folder, "kernels", kernelName, "kernel.json");
  const spec = {
    argv: kernelCommand("{connection_file}"),
    display_name: "haulbook (TypeScript)",
    language: "typescript",
    interrupt_mode: "signal",
  };
  await (install.write ?? writeThenRename)(file, `${JSON.stringify(spec, null, 2)}\n`);
  return file;
}

function jupyterDataFolder({ prefix, env, platform, homeFolder }: InstallKernelspec): string {
  if (prefix !== undefined) return path.join(prefix, "share", "jupyter");
  if (env.JUPYTER_DATA_DIR) return env.JUPYTER_DATA_DIR;
  if (platform === "darwin") return path.join(homeFolder, "Library", "Jupyter");
  if (platform === "win32") return path.join(env.APPDATA ?? path.join(homeFolder, "AppData", "Roaming"), "jupyter");
  return path.join(env.XDG_DATA_HOME || path.join(homeFolder, ".local", "share"), "jupyter");
}

async function writeThenRename(file: string, content: string): Promise<void> {
  await mkdir(path.dirname(file), { recursive: true });
  const draft = `${file}.${process.pid}.new`;
  try {
    await writeFile(draft, content);
    await rename(draft, file);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}
