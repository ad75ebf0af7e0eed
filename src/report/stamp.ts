import { join } from "node:path";
import { digestOf } from "../notebook/run-causes.js";
import type { Files } from "./files.js";

/** Folder in the output folder that holds what a build remembers; no page needs it. */
export const memoryFolder = ".runs";

/** A text that is made of things known by a digest. */
interface Stamped {
  readonly files: Files;
  readonly outputFolder: string;
  /** Name that the stamp goes by. */
  readonly name: string;
  /** Digest of everything that the texts are made from. */
  readonly from: string;
  /** Paths of the texts. */
  readonly paths: readonly string[];
}

function stampPath({ outputFolder, name }: Stamped): string {
  return join(outputFolder, memoryFolder, `${name}.page`);
}

async function stampOf({ files, from, paths }: Stamped): Promise<string | undefined> {
  const texts = await Promise.all(paths.map((path) => files.read(path)));
  if (!texts.every((text) => text !== undefined)) return undefined;
  return `${[from, ...texts.map((text) => digestOf(text))].join(" ")}\n`;
}

/** Whether texts stand as they were written from the same things. */
export async function standsAsStamped(stamped: Stamped): Promise<boolean> {
  const earlier = await stamped.files.read(stampPath(stamped));
  return earlier !== undefined && earlier === (await stampOf(stamped));
}

/** Notes what texts were made from and what they hold. */
export async function stamp(stamped: Stamped): Promise<void> {
  const text = await stampOf(stamped);
  if (text !== undefined) await stamped.files.replace(stampPath(stamped), text);
}
