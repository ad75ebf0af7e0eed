import { calibrate, type LineCalibration } from "../calibration/calibrate.js";
import { equalTurns } from "../calibration/equal-turns.js";
import type { Estimate } from "../calibration/estimate.js";
import type { MeasuredLaw } from "../calibration/measured-law.js";
import { nextMeasurements, nextWords } from "../calibration/next-measurement.js";
import type { LeftOut } from "../calibration/outliers.js";
import { turnShare } from "../calibration/turn-share.js";
import { figures } from "../quantity/print.js";
import { aligned } from "./columns.js";
import { givenReadings, listed } from "./readings.js";
import { type ExitCode, exitCodes, type Surroundings } from "./surroundings.js";

/** What `haulbook fit` was asked. */
export interface FitOptions {
  readonly file: string;
  /** Scatter of a pull that is read again [%]; as remembered when left out. */
  readonly scatter?: number | undefined;
}

const intervalOf = ({ low, high }: Estimate, least: number) =>
  `${figures(Math.max(least, low), 4)} to ${figures(Math.max(least, high), 4)}`;

function lawCells(law: MeasuredLaw, dragSettled: boolean): string[] {
  return [
    figures(law.ratio.value, 4),
    intervalOf(law.ratio, 1),
    dragSettled ? figures(law.drag.value) : "none",
    dragSettled ? intervalOf(law.drag, 0) : "not told",
    dragSettled ? figures(law.correlation, 2) : "",
  ];
}

function rowsOf(calibration: LineCalibration): string[][] {
  const { line, wet, turns, purchase, pulls, fit, posterior, dragSettled } = calibration;
  const name = `${line}${wet ? ", wet" : ""}`;
  const rows: string[][] = [];
  if (fit) rows.push([name, "readings alone", String(pulls.length), ...lawCells(fit, dragSettled)]);
  rows.push([name, fit ? "with what was known" : "what was known", String(pulls.length), ...lawCells(posterior, true)]);
  if (turns !== undefined && equalTurns({ turns, purchase }) !== undefined) {
    const turn = turnShare(posterior, { turns, purchase });
    const cells = [
      figures(turn.ratio.value, 4),
      intervalOf(turn.ratio, 1),
      figures(turn.drag.value),
      intervalOf(turn.drag, 0),
      "",
    ];
    rows.push([name, `one of ${turns} turns`, "", ...cells]);
  }
  return rows;
}

function leftOutWords(line: string, { row, pull, reason }: LeftOut): string {
  return `row ${row}, ${line}, ${pull === "both" ? "whole reading" : pull}: ${reason}.`;
}

/** `haulbook fit`: prints what readings say of each line, what was left out and why, and what to read next. */
export async function fitReadings(
  { file, scatter }: FitOptions,
  { currentFolder, disk, err, out }: Pick<Surroundings, "currentFolder" | "disk" | "err" | "out">,
): Promise<ExitCode> {
  const given = await givenReadings(file, "Nothing was worked out.", { currentFolder, disk, err });
  if (given === undefined) return exitCodes.failed;
  const repeatability = scatter === undefined ? {} : { repeatability: scatter / 100 };
  const calibrations = calibrate(given.readings, repeatability);
  const titles = ["line", "from", "pulls", "ratio k", "95 %", "drag c [N]", "95 %", "correlation"];
  const numeric = [false, false, true, true, false, true, false, true];
  out(`${aligned([titles, ...calibrations.flatMap(rowsOf)], numeric)}\n`);
  const leftOut = calibrations.flatMap((one) => one.leftOut.map((left) => leftOutWords(one.line, left)));
  if (leftOut.length > 0) out(`\nLeft out of the fit:\n${listed(leftOut)}`);
  const notes = calibrations.flatMap(({ line, notes }) => notes.map((note) => `${line}: ${note}`));
  if (notes.length > 0) out(`\nTo know:\n${listed(notes)}`);
  const [next] = nextMeasurements(calibrations, repeatability);
  if (next) out(`\nNext measurement: ${nextWords(next)}\n`);
  return exitCodes.done;
}
