import { figures } from "../quantity/print.js";
import { allRecords } from "../report/build.js";
import {
  evidenceKinds,
  failureText,
  type SharedCheck,
  sharedChecks,
  shareOfAllowed,
  wasLookedUp,
} from "../report/checklist.js";
import { aligned } from "./columns.js";
import { findNotebooks, reportsFolder, shownPath } from "./folders.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook checks` was asked. */
export interface ChecksOptions {
  readonly output?: string | undefined;
}

function row(check: SharedCheck): string[] {
  const { id, computed, expected, allowed, unit, holds, evidence, status } = check;
  const share = shareOfAllowed(check);
  return [
    holds ? "ok" : "FAILS",
    id,
    figures(computed, 5),
    figures(expected, 5),
    figures(allowed, 2),
    Number.isFinite(share) ? `${Math.round(share * 100)} %` : "–",
    unit === "1" ? "" : unit,
    evidence,
    status === "published" ? "" : status,
  ];
}

/** `haulbook checks`: prints every comparison of the built reports. */
export async function checks(options: ChecksOptions, surroundings: Surroundings): Promise<ExitCode> {
  const { currentFolder, disk, err, out } = surroundings;
  const outputFolder = reportsFolder(options.output, currentFolder);
  const { notebooks } = await findNotebooks(surroundings);
  const records = await allRecords({ notebooks, outputFolder, files: disk });
  if (records.length === 0) {
    err(`No built reports in ${shownPath(outputFolder, currentFolder)}. Build them first: haulbook reports\n`);
    return exitCodes.failed;
  }
  const all = sharedChecks(records.map(({ name, checks: results }) => ({ report: name, results })));
  if (all.length === 0) {
    err("The built reports compare nothing with expected values.\n");
    return exitCodes.failed;
  }
  const titles = ["", "check", "computed", "expected", "allowed", "used", "unit", "evidence", "status"];
  const numeric = [false, false, true, true, true, true, false, false, false];
  out(`${aligned([titles, ...all.map(row)], numeric)}\n\n`);
  const counted = all.filter(wasLookedUp);
  const kinds = evidenceKinds.map((kind) => `${counted.filter(({ evidence }) => evidence === kind).length} ${kind}`);
  out(
    `${all.length} checks on ${records.length} ${records.length === 1 ? "report" : "reports"}: ${kinds.join(", ")}; ${all.length - counted.length} apart (common practice, from memory, or made up).\n`,
  );
  const failing = all.filter(({ holds }) => !holds);
  for (const check of failing) err(`${failureText(check)}\n`);
  return failing.length === 0 ? exitCodes.done : exitCodes.failed;
}
