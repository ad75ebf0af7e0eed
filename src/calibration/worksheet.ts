import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { whole } from "../reeving/whole.js";

/** A line to be read. */
export interface WorksheetLine {
  readonly name: string;
  /** Masses to hang [kg], each above 0; by default 5, 10 and 20. */
  readonly masses?: readonly number[];
}

/** What a sheet of paper says to the person with the scale: plain text, for any page. */
export interface Worksheet {
  readonly title: string;
  readonly need: readonly string[];
  readonly care: readonly string[];
  readonly steps: readonly string[];
  readonly columns: readonly string[];
  /** A row for each reading; empty cells are filled in by hand. */
  readonly rows: readonly (readonly string[])[];
  /** How to type it in, a paragraph each. */
  readonly typing: readonly string[];
  /** First row of the file, and one made-up reading below it. */
  readonly example: readonly string[];
}

const usualMasses = [5, 10, 20] as const;
const spareRows = 3;

/**
 * A sheet to print and fill in ashore: what to hang, where to pull, a table, and how to type it in.
 *
 * @param lines  names of the lines [-], 1 to 20, each with masses to hang [kg]
 * @returns the sheet as data
 * @throws ValueError for a name that is empty or given twice, or a mass that cannot be hung
 * Example: worksheet([{ name: "mainsheet" }]).rows.length → 6
 */
export function worksheet(lines: readonly WorksheetLine[]): Worksheet {
  whole({ quantity: "lines on the sheet", value: lines.length, least: 1, most: 20 });
  lines.forEach(({ name }, index) => {
    const twice = lines.findIndex((other) => other.name === name) !== index;
    if (name.trim() !== "" && name.length <= 80 && !twice) return;
    throw new ValueError({
      quantity: "line on the sheet",
      value: twice ? `"${name}" twice` : name.trim() === "" ? "an empty name" : "a name longer than 80 letters",
      allowed: "names of 1 to 80 letters, each once",
      advice: "Write it like --lines mainsheet --lines halyard.",
    });
  });
  const readings = lines.flatMap(({ name, masses = usualMasses }) =>
    masses.map((mass) => [name, `${within("mass", mass, 0.1, 500)} kg`, "", "", "", "", ""]),
  );
  const empty = Array.from({ length: spareRows }, () => ["", "", "", "", "", "", ""]);
  return {
    title: "Measure your own boat",
    need: [
      "A hand scale that you can read while you pull, and its smallest step.",
      "Water canisters, weighed with the same scale: 5, 10 and 20 litres.",
      "The line, rigged as you sail it, with ratchets switched off and cleats open.",
      "Somebody who writes.",
    ],
    care: [
      "Nobody stands or reaches under what hangs. Lift it by a hand's width, not more.",
      "Hang it from something that is rated for it, and keep the slack end in a second hand or on a cleat.",
      "Gloves on, hair and fingers away from blocks.",
    ],
    steps: [
      "Hang a canister at the sail's end of the line, so that it swings free.",
      "Hook the scale to the hand's end. Pull along the way in which the hand pulls on board.",
      "Haul slowly and steadily. Read while the load comes up: that is the haul.",
      "Let the load down slowly and steadily. Read while it goes down: that is the ease. It must be the smaller of the two.",
      "Read each once more. If the two differ by more than a few steps of the scale, pull slower and read a third time.",
      "Go on with the next canister. The light one finds the drag, the heavy one finds the ratio.",
    ],
    columns: ["Line", "Hung", "Load on the scale", "Haul", "Ease", "Wet?", "Note"],
    rows: [...readings, ...empty],
    typing: [
      "Type the rows into any spreadsheet or text editor and save them as CSV (UTF-8). Decimal points and commas are both understood; with commas in the numbers let semicolons separate the columns.",
      "Put the unit into the head of the column or behind each number. A scale marked kg shows kgf. The resolution is the smallest step of the scale.",
      "Optional columns: turns (how many equal turns the line takes), purchase (4 for 4:1), note. Then run: haulbook fit readings.csv",
    ],
    example: ["line,load [kgf],haul [kgf],ease [kgf],resolution [kgf],wet", "mainsheet,10.0,12.4,8.1,0.1,no"],
  };
}
