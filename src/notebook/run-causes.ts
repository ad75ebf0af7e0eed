import { createHash } from "node:crypto";
import type { SourceCell } from "./read.js";

/** A file that a run read, by what it held. */
export interface FileDigest {
  /** Path from the notebook's folder. */
  readonly path: string;
  /** Digest of the content; nothing where no file was there. */
  readonly digest: string | undefined;
}

/** All that decides what a run puts out. Prose is not among it. */
export interface RunCauses {
  /** Digest of the compiled library. */
  readonly core: string;
  /** Versions of the engine, the kernel and the libraries. */
  readonly versions: string;
  /** Files and choices that the notebook is run with. */
  readonly inputs: string;
  /** Digests of the code cells, in order. */
  readonly cells: readonly string[];
  /** What the cells read. */
  readonly files: readonly FileDigest[];
}

/** Short digest of a text or of bytes. */
export function digestOf(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex").slice(0, 32);
}

/** Digests of the cells that run, with the tags that change how they run. */
export function cellDigests(cells: readonly SourceCell[]): string[] {
  return cells
    .filter(({ type, source }) => type === "code" && source.trim() !== "")
    .map(({ source, tags = [] }) => digestOf(JSON.stringify([source, tags])));
}

/**
 * Why a run would not put out the same again.
 *
 * @param earlier  what decided the earlier run
 * @param now  the same things as they are now
 * @returns the first thing that changed, in words; nothing when all is as it was
 */
export function changeSince(earlier: RunCauses, now: RunCauses): string | undefined {
  if (earlier.versions !== now.versions) return "another version of the engine or of a library";
  if (earlier.core !== now.core) return "the library changed";
  if (earlier.inputs !== now.inputs) return "it is run with other files";
  if (earlier.cells.length !== now.cells.length) {
    return `it has ${now.cells.length} code cells instead of ${earlier.cells.length}`;
  }
  const cell = earlier.cells.findIndex((digest, index) => digest !== now.cells[index]);
  if (cell >= 0) return `code cell ${cell + 1} changed`;
  const file = earlier.files.find(({ digest }, index) => digest !== now.files[index]?.digest);
  return file && `${file.path} changed`;
}
