import type { CellOutput, ExecutedNotebook } from "../../src/notebook/executed.js";
import { sample } from "./sample.js";

export const sampleRules = [
  { text: "A coarse cover on a ratchet leaves 86 N of 860 N to hold.", range: "likely 70 to 105 N" },
  { text: "Half as much wind again pulls 2.25 times as hard.", range: "2.2 to 2.3 times" },
  { text: "Wet, the hold is 12 % heavier.", range: "likely 5 to 20 %" },
] as const;

export const sampleSheet = {
  caption: "Hold the bucket through the scale, and let it sink slowly.",
  columns: ["Cover", "Dry [N]", "Wet [N]", "Remark"],
  rows: [["smooth"], ["coarse"], [], []],
} as const;

/** The sample with more outputs at its end. */
export function sampleWith(...outputs: CellOutput[]): ExecutedNotebook {
  return { ...sample, cells: [...sample.cells, { type: "code", number: 13, source: "more()", outputs }] };
}

/** The sample as a notebook that gives rules and a table. */
export const ruled = sampleWith(...sampleRules.map((one) => ({ kind: "rule" as const, ...one })), {
  kind: "sheetTable",
  ...sampleSheet,
});
