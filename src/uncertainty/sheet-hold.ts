import type { SheetOption } from "../crew/sheet-option.js";
import { prepareLine } from "../reeving/line.js";
import type { Band } from "../sources/band.js";
import { preparedSample } from "./sampled-band.js";

/** Points of the sample; a power of two is the most even. */
const samples = 512;

/**
 * What one way to rig a sheet leaves in the hand, over all that is not sure of it.
 *
 *     what is left to hold while the line just goes out, one draw of every cause a point
 *
 * @param option  the sheet, with the bands of its causes
 * @param load  [N], 0 or more
 * @returns force at the hand [N]: the sheet at the middle of its causes, and the 90 % band of the draws
 * @throws whatever the line refuses
 * Valid for causes that do not depend on each other.
 * Source: common practice. Example: sheetHold({ name: "bare", parts: [], hold: { cover: { strands: 16, fibre: "polyester", wet: false }, diameter: 0.008, hands: 1 }, causes: {}, lineWith: () => ({ rope: { diameter: 0.008, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [] }) }, 80).value → 80
 */
export function sheetHold(option: SheetOption, load: number): Band {
  return sheetHolds(option)(load);
}

/**
 * The same for one load after the other: each line of the sample is made ready once.
 *
 * @param option  the sheet, with the bands of its causes
 * @returns function from load [N], 0 or more, to force at the hand [N]
 */
export function sheetHolds({ causes, lineWith }: SheetOption): (load: number) => Band {
  const held = preparedSample(causes, (values) => prepareLine(lineWith(values)), { samples, ownMiddle: true });
  return (load) => held((line) => line.handForce(load, "easing"));
}
