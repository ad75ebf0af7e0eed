import { reeving } from "../../src/notebook/display.js";
import type { CellOutput, ExecutedNotebook } from "../../src/notebook/executed.js";
import type { DrawnReeving } from "../../src/notebook/output.js";
import { tackle } from "../../src/reeving/tackle.js";
import { limp, sheave } from "../reeving/builders.js";
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

/** A line of so many blocks and a tackle as a notebook draws it. */
export function drawnLine(blocks: number): DrawnReeving {
  const leads = Array.from({ length: blocks }, (_, index) => ({ ...sheave, name: `lead block ${index + 1}` }));
  return reeving({
    name: "line",
    title: "A third is lost on the way",
    caption: "The sheet of the demo boat, from the clew to the hand. Likely 60 to 75 N to hold.",
    line: {
      rope: limp,
      stations: [
        { kind: "tackle", name: "tackle", reeving: tackle({ parts: 3, hauledFrom: "fixed", turn: sheave }) },
        ...leads,
      ],
    },
    load: 490,
  });
}
