import { readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { Boat } from "./boat.js";
import { boatOf } from "./read.js";
import { BoatFileError } from "./trouble.js";
import { yamlLimits } from "./yaml-text.js";

/** Bytes of a text of the longest length that is taken, all letters wide. */
const mostBytes = 4 * yamlLimits.characters;

/**
 * Reads a boat file from disk, with the catalogue that lies beside it.
 *
 * @param path  the file, from the working folder
 * @returns the boat, all quantities in SI
 * @throws BoatFileError for a file that is not there, is too large, or is no boat file
 */
export function loadBoat(path: string): Boat {
  const text = textAt(path);
  if (text !== undefined)
    return boatOf(text, { file: path, beside: (name) => textAt(join(dirname(path), basename(name))) });
  throw new BoatFileError([
    {
      file: path,
      line: 0,
      column: 0,
      at: "",
      found: "no such file",
      allowed: "the path of a boat file",
      advice: "See from which folder the path is read.",
    },
  ]);
}

function textAt(path: string): string | undefined {
  const about = statSync(path, { throwIfNoEntry: false });
  if (about?.isFile() !== true) return undefined;
  if (about.size <= mostBytes) return readFileSync(path, "utf8");
  throw new BoatFileError([
    {
      file: path,
      line: 0,
      column: 0,
      at: "",
      found: `${about.size} bytes`,
      allowed: `at most ${mostBytes}`,
      advice: "A boat takes a few hundred lines: take out what is no part of it.",
    },
  ]);
}
