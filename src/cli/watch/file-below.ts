import { constants } from "node:fs";
import { open, realpath } from "node:fs/promises";
import { join, relative, sep } from "node:path";

/** What stands for a path that leads nowhere. */
const gone: readonly string[] = ["ENOENT", "ENOTDIR", "ELOOP", "EACCES", "EPERM", "ENAMETOOLONG", "ENXIO", "EISDIR"];

/**
 * A file below a folder, by its true place: links that lead out of the folder, or to what is hidden in it, lead nowhere.
 *
 * @param folder  that may be read
 * @param parts  names on the way, none of them upwards
 * @returns bytes, or nothing where there is no such file
 * Example: await fileBelow("reports", ["assets", "page.css"])
 */
export async function fileBelow(folder: string, parts: readonly string[]): Promise<Uint8Array | undefined> {
  try {
    const whole = await realpath(join(folder, ...parts));
    const names = relative(await realpath(folder), whole).split(sep);
    if (names.some((name) => name === "" || name.startsWith("."))) return undefined;
    // A link that takes the place of the file in this moment is not followed, and a pipe is not waited for.
    const file = await open(whole, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0));
    try {
      return (await file.stat()).isFile() ? await file.readFile() : undefined;
    } finally {
      await file.close();
    }
  } catch (error) {
    if (gone.includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
    throw error;
  }
}
