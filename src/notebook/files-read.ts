import { readFile } from "node:fs/promises";

/** Environment variable that names the file in which a kernel notes what it reads. */
export const filesReadVariable = "HAULBOOK_FILES_READ";

/**
 * Notes every file and folder that the code of cells opens for reading; packages are left out. Runs in the kernel.
 */
export const noteFilesRead = `
  const target = process.env.${filesReadVariable};
  if (target !== undefined) {
    const fs = require("node:fs");
    const { dirname, resolve } = require("node:path");
    const { fileURLToPath } = require("node:url");
    const { appendFileSync } = fs;
    const seen = new Set();
    const note = (path, flags) => {
      if (typeof flags === "string" && !flags.startsWith("r")) return;
      const text = path instanceof URL ? fileURLToPath(path) : Buffer.isBuffer(path) ? path.toString() : path;
      if (typeof text !== "string" || text.startsWith("node:")) return;
      const whole = resolve(text);
      if (seen.has(whole) || dirname(whole) === dirname(target) || /[\\\\/]node_modules[\\\\/]/.test(whole)) return;
      seen.add(whole);
      appendFileSync(target, JSON.stringify(whole) + "\\n");
    };
    const watch = (owner, name, flagged) => {
      const own = owner[name];
      owner[name] = Object.assign(function (path, second, ...rest) {
        note(path, flagged ? second : undefined);
        return own.call(this, path, second, ...rest);
      }, own);
    };
    for (const name of ["readFileSync", "readFile", "createReadStream", "readdirSync", "readdir"]) watch(fs, name, false);
    for (const name of ["openSync", "open"]) watch(fs, name, true);
    for (const name of ["readFile", "readdir"]) watch(fs.promises, name, false);
    watch(fs.promises, "open", true);
    require("node:module").syncBuiltinESMExports();
  }`;

/**
 * What a kernel noted.
 *
 * @param target  path of the file of notes
 * @returns whole paths, each once, in alphabetical order
 */
export async function filesReadBy(target: string): Promise<string[]> {
  const text = await readFile(target, "utf8").catch(() => "");
  const lines = text.split("\n").filter((line) => line !== "");
  return [...new Set(lines.map((line) => String(JSON.parse(line))))].sort();
}
