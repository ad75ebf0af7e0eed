import { lstat, mkdir, readdir, rename, rm, symlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { readText } from "./read-text.js";
import type { Disk } from "./surroundings.js";

/** Ending of a file that is being written. */
const part = ".part";

/** Answers with nothing where a file or folder is not there. */
async function ifThere<Found>(found: Promise<Found>): Promise<Found | undefined> {
  try {
    return await found;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "ENOENT" || code === "ENOTDIR") return undefined;
    throw error;
  }
}

/**
 * The real disk.
 *
 * @param mark  what tells the temporary files of this process from those of another
 * @returns files that are replaced whole: written beside, then renamed
 * Example: await realDisk("4711").replace("reports/index.html", page)
 */
export function realDisk(mark: string): Disk {
  let written = 0;
  return {
    read: (path) => ifThere(readText(path)),
    list: async (folder) => (await ifThere(readdir(folder)))?.sort(),
    replace: async (path, text) => {
      // Two pages may bring the same file at once.
      const beside = `${path}.${mark}-${written++}${part}`;
      await mkdir(dirname(path), { recursive: true });
      await refuseOtherThanFile(path);
      try {
        await writeFile(beside, text);
        await rename(beside, path);
      } catch (error) {
        await rm(beside, { force: true });
        throw error;
      }
    },
  };
}

/** Only a plain file is replaced: not a link, a folder, a device or a pipe. */
async function refuseOtherThanFile(path: string): Promise<void> {
  const there = await ifThere(lstat(path));
  if (there === undefined || there.isFile()) return;
  const what = there.isSymbolicLink() ? "a link" : there.isDirectory() ? "a folder" : "a device or a pipe";
  throw new Error(`${path} is ${what}, and stays as it is: only plain files are replaced. Name another file.`);
}

/** Makes a folder known under a second path; on Windows as a junction, which needs no rights. */
export async function linkFolder(folder: string, path: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await symlink(folder, path, "junction");
}

/** Takes away the half-written files that a killed process left in a folder and below. */
export async function sweepParts(folder: string): Promise<void> {
  const names = (await ifThere(readdir(folder, { recursive: true }))) ?? [];
  const left = names.filter((name) => name.endsWith(part) || name.endsWith(".left"));
  await Promise.all(left.map((name) => rm(join(folder, name), { force: true })));
}
