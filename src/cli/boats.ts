import { dirname, join, resolve } from "node:path";
import type { Boat } from "../boat/boat.js";
import { boatOf, catalogueFile } from "../boat/read.js";
import { BoatFileError } from "../boat/trouble.js";
import { shownPath } from "./folders.js";
import type { Surroundings } from "./surroundings.js";

/** Reads a boat file that somebody typed, with the catalogue that lies beside it. */
export async function readBoat(
  typed: string,
  { currentFolder, disk }: Pick<Surroundings, "currentFolder" | "disk">,
): Promise<Boat> {
  const path = resolve(currentFolder, typed);
  const file = shownPath(path, currentFolder);
  const text = await disk.read(path);
  if (text === undefined)
    throw new BoatFileError([
      {
        file,
        line: 0,
        column: 0,
        at: "",
        found: "no such file",
        allowed: "the path of a boat file",
        advice: "Make one with: haulbook new <folder>",
      },
    ]);
  const name = catalogueFile(text, file);
  const catalogue = name === undefined ? undefined : await disk.read(join(dirname(path), name));
  return boatOf(text, { file, beside: (wanted) => (wanted === name ? catalogue : undefined) });
}

/** What was found about boats, as JSON: a proposal is its words, a number without end is a word. */
export function boatJson(found: object): string {
  const plain = (key: string, value: unknown): unknown => {
    if (key === "proposal") return (value as { readonly words: string }).words;
    return typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
  };
  return `${JSON.stringify(found, plain, 2)}\n`;
}
