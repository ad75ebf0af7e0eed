import { readFile } from "node:fs/promises";
import { tagsOf } from "./cell-tags.js";
import { NotANotebookError } from "./errors.js";
import { inputList } from "./input-list.js";
import { type Role, roleList } from "./roles.js";

/** A cell of a notebook file. */
export interface SourceCell {
  readonly type: "markdown" | "code" | "raw";
  readonly source: string;
  readonly tags?: readonly string[];
}

/** What a notebook file holds before it is run. */
export interface SourceNotebook {
  readonly cells: readonly SourceCell[];
  /** Place among the reports, from 1, where the metadata `haulbook.place` give one. */
  readonly place?: number;
  /** Readers it is for, where the metadata `haulbook.roles` name them. */
  readonly roles?: readonly Role[];
}

/**
 * A notebook file of format 4.
 *
 * @param path  path of the .ipynb file
 * @returns cells in order, the notebook's place among the reports, and whom it is for
 * @throws NotANotebookError when the file cannot be read, is no notebook, or is one for another language
 * Example: (await readNotebook("notebooks/hold.ipynb")).cells[0].type → "markdown"
 */
export async function readNotebook(path: string): Promise<SourceNotebook> {
  const refuse = (text: string, cell?: number) => new NotANotebookError({ notebook: path, cell, text });
  let content: unknown;
  try {
    content = JSON.parse(await readFile(path, "utf8"));
  } catch (error) {
    throw refuse(`cannot be read as a notebook: ${error instanceof Error ? error.message : String(error)}`);
  }
  if (!isRecord(content) || !Array.isArray(content.cells)) throw refuse("is not a notebook: it has no list of cells");
  if (content.nbformat !== 4) throw refuse(`has notebook format ${String(content.nbformat)}; only format 4 is read`);
  const language = notebookLanguage(content.metadata);
  if (language !== undefined && language !== "typescript") {
    throw refuse(`is a notebook for the language "${language}"; only typescript is run`);
  }
  const cells = content.cells.map((cell: unknown, index): SourceCell => {
    const number = index + 1;
    if (!isRecord(cell)) throw refuse("is not a notebook cell", number);
    const { cell_type: type, source } = cell;
    if (type !== "markdown" && type !== "code" && type !== "raw") {
      throw refuse(`has the unknown cell type ${JSON.stringify(type)}`, number);
    }
    const tags = tagsOf(cell.metadata);
    const tagged = tags && { tags };
    if (typeof source === "string") return { type, source, ...tagged };
    if (Array.isArray(source) && source.every((line) => typeof line === "string"))
      return { type, source: source.join(""), ...tagged };
    throw refuse("has no source text", number);
  });
  let roles: readonly Role[] | undefined;
  try {
    inputList(content.metadata);
    roles = roleList(content.metadata);
  } catch (error) {
    throw refuse(error instanceof Error ? error.message : String(error));
  }
  const place = notebookPlace(content.metadata);
  return { cells, ...(place !== undefined && { place }), ...(roles && { roles }) };
}

function notebookPlace(metadata: unknown): number | undefined {
  const own = isRecord(metadata) ? metadata.haulbook : undefined;
  return isRecord(own) && typeof own.place === "number" ? own.place : undefined;
}

function notebookLanguage(metadata: unknown): string | undefined {
  if (!isRecord(metadata)) return undefined;
  for (const [part, key] of [
    [metadata.kernelspec, "language"],
    [metadata.language_info, "name"],
  ] as const) {
    if (isRecord(part) && typeof part[key] === "string") return part[key].toLowerCase();
  }
  return undefined;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
