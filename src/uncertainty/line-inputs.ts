import type { Bearing } from "../materials/bearings.js";
import type { StiffnessLaw } from "../materials/stiffness.js";
import type { Band } from "../sources/band.js";
import { boundsOf } from "./distribution.js";
import type { UncertainInput } from "./uncertain-input.js";

/** The records that a line was made of; what is left out counts as sure. */
export interface LineRecords {
  readonly bearing?: Bearing;
  readonly rope?: StiffnessLaw;
  /** Friction of the line on rings. */
  readonly ring?: Band;
  /** Friction of the line on the treads of ratchets. */
  readonly tread?: Band;
  readonly drag?: Band;
  /** Load over the load that was worked out. */
  readonly load?: Band;
}

/**
 * The uncertain numbers of a line from the records that it was made of.
 *
 * The three parts of a rope's stiffness are one number: a stiff rope is stiff in all of them.
 *
 * @param records  bearing, rope, ring, tread, drag, load
 * @returns an uncertain input for each number that is not sure
 * Example: uncertainInputsOf({ drag: { value: 0.1, low: 0.02, high: 0.4 } })[0].turns → "drag"
 */
export function uncertainInputsOf({ bearing, rope, ring, tread, drag, load }: LineRecords): UncertainInput[] {
  const uncertainInputs: (UncertainInput | undefined)[] = [
    load && { name: "load", turns: "load", record: load },
    bearing && { name: "friction of the bearings", turns: "bearing", record: bearing.friction },
    bearing && { name: "radius of the bearings", turns: "bearing", record: bearing.radiusShare },
    rope && {
      name: "stiffness of the rope",
      turns: "bending",
      record: rope.tensionTerm,
      bounds: boundsOf("bendingCoefficient"),
    },
    ring && { name: "friction on rings", turns: "sliding", record: ring },
    tread && { name: "friction on the tread", turns: "tread", record: tread },
    drag && { name: "constant drag", turns: "drag", record: drag },
  ];
  return uncertainInputs.filter((uncertainInput) => uncertainInput !== undefined);
}
