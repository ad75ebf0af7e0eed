import { join, resolve } from "node:path";
import { ValueError } from "../quantity/errors.js";
import { allRecords, type NotebookFile } from "../report/build.js";
import { reportsAddress } from "../report/handout-address.js";
import { handoutHtml, isHandout } from "../report/handout-page.js";
import type { ReportRecord } from "../report/record.js";
import { chosenReports } from "./chosen.js";
import { findNotebooks, reportsFolder, shownPath } from "./folders.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook handout` was asked. */
export interface HandoutOptions {
  readonly names: readonly string[];
  /** Where the reports stand on the web. */
  readonly address?: string | undefined;
  /** Folder of the built reports. */
  readonly reports?: string | undefined;
  readonly output: string;
  readonly pdf: boolean;
}

/** Names of the files in the output folder. */
const files = { page: "handout.html", print: "handout.pdf" } as const;

/** The records that were asked for, in that order; all that are built when none was named. */
function topicsOf(
  names: readonly string[],
  records: readonly ReportRecord[],
): { readonly topics: readonly ReportRecord[]; readonly missing: readonly string[] } {
  if (names.length === 0) return { topics: records, missing: [] };
  const byName = new Map(records.map((record) => [record.name, record]));
  const asked = [...new Set(names)];
  return {
    topics: asked.flatMap((name) => byName.get(name) ?? []),
    missing: asked.filter((name) => !byName.has(name)),
  };
}

/** Words on reports that have to be built first. */
function buildFirst(missing: readonly string[], { reports }: HandoutOptions): string {
  const command = ["haulbook reports", ...missing, ...(reports === undefined ? [] : ["--output", reports])].join(" ");
  const none = missing.length === 0 ? "No report is" : `${missing.join(", ")}: not`;
  return `${none} built yet. Build first:\n  ${command}\n`;
}

/** What stands in the way of a file: something that is no handout. */
async function inTheWay(paths: readonly string[], { disk, currentFolder }: Surroundings): Promise<string | undefined> {
  for (const path of paths) {
    const there = await disk.read(path);
    if (there !== undefined && !isHandout(there))
      return `${shownPath(path, currentFolder)} is there already, is no handout, and stays as it is. Name another folder with --output.\n`;
  }
  return undefined;
}

const messageOf = (error: unknown) => (error instanceof Error ? error.message : String(error));

/** `haulbook handout`: one side of A4 for each topic, from the reports that are built. */
export async function handout(options: HandoutOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { currentFolder, disk, err, out } = surroundings;
  const { notebooks } = await findNotebooks(surroundings);
  const chosen = chosenReports(options.names, notebooks);
  if ("refusal" in chosen) {
    err(chosen.refusal);
    return exitCodes.wrongUse;
  }
  let page: string;
  let topics: readonly ReportRecord[];
  try {
    const address = options.address === undefined ? undefined : reportsAddress(options.address);
    const built = topicsOf(chosen.names, await builtReports(options, notebooks, surroundings));
    if (built.missing.length > 0 || built.topics.length === 0) {
      err(buildFirst(built.missing, options));
      return exitCodes.failed;
    }
    topics = built.topics;
    page = handoutHtml({ topics, address });
  } catch (error) {
    if (!(error instanceof ValueError)) throw error;
    err(`${error.message}\n`);
    return exitCodes.wrongUse;
  }
  const folder = resolve(currentFolder, options.output);
  const paths = { page: join(folder, files.page), print: join(folder, files.print) };
  try {
    const obstacle = await inTheWay(options.pdf ? [paths.page, paths.print] : [paths.page], surroundings);
    if (obstacle !== undefined) {
      err(obstacle);
      return exitCodes.failed;
    }
    await disk.replace(paths.page, page);
  } catch (error) {
    err(`${options.output} cannot be written: ${messageOf(error)}\nName another folder with --output.\n`);
    return exitCodes.failed;
  }
  const sides = `${topics.length} ${topics.length === 1 ? "topic, one side" : "topics, one side each"}`;
  out(`${sides}. Open and print ${shownPath(paths.page, currentFolder)}\n`);
  return options.pdf ? printed(paths, topics.length, surroundings) : exitCodes.done;
}

/** Records of the reports that are built. */
function builtReports(
  { reports }: HandoutOptions,
  notebooks: readonly NotebookFile[],
  { currentFolder, disk }: Surroundings,
): Promise<ReportRecord[]> {
  return allRecords({ notebooks, outputFolder: reportsFolder(reports, currentFolder), files: disk });
}

/** Prints the page; it stays where that fails. */
async function printed(
  { page, print }: { readonly page: string; readonly print: string },
  topics: number,
  { currentFolder, err, out, print: printPage }: Surroundings,
): Promise<ExitCode> {
  const stays = `${shownPath(page, currentFolder)} stays: print it from a browser.\n`;
  try {
    const sides = await printPage(page, print);
    const shown = shownPath(print, currentFolder);
    if (sides === topics) {
      out(`Printed to ${shown}\n`);
      return exitCodes.done;
    }
    err(`${shown} has ${sides} sides for ${topics} topics: something does not fit. Shorten its rules or its table.\n`);
  } catch (error) {
    err(`No PDF: ${messageOf(error)}\n${stays}`);
  }
  return exitCodes.failed;
}
