import { ninetyFifth } from "../numerics/normal-quantile.js";
import type { Line } from "../reeving/line.js";
import { scaledLine } from "../reeving/scaled.js";
import type { Band } from "../sources/band.js";
import type { UncertainInput } from "../uncertainty/uncertain-input.js";
import { factorReaching } from "./calibrated-line.js";
import { lineLaw } from "./line-law.js";
import type { MeasuredLaw } from "./measured-law.js";

/** A line that was brought to a measured law. */
export interface MeasuredLine {
  readonly line: Line;
  readonly law: MeasuredLaw;
  /** About the load of the readings [N]. */
  readonly load: number;
}

/**
 * What is not sure of a measured line, as uncertainInputs: in place of the spreads of its records.
 *
 *     z₁ turns all that grows with load to k · exp(z₁ s_k), and the drag along with it to c + ρ s_c z₁;
 *     z₂ turns the drag alone by s_c √(1 − ρ²) z₂
 *
 * @param measured  line at the law [m, rad, N], ratio [-] and drag [N] with their errors and correlation, load [N]
 * @returns one uncertain input for ratio with drag, and one for the rest of the drag where the line has drag to turn
 * @throws ReevingError for a line with a ratchet or a closed cleat
 * Valid near the load of the readings; without drag at any station the range holds the ratio alone.
 * Source: statics.
 */
export function measuredInputs({ line, law, load }: MeasuredLine): UncertainInput[] {
  const { ratio, drag, correlation } = law;
  const middle = Math.max(0, drag.value);
  const lawAt = (loss: number, pull: number) =>
    lineLaw(scaledLine(line, { bearing: loss, bending: loss, sliding: loss, drag: pull }), load);
  const lossFor = (k: number) => factorReaching((factor) => lawAt(factor, 1).ratio, k);
  const pullFor = (loss: number, c: number) => {
    const [without, withAll] = [lawAt(loss, 0).drag, lawAt(loss, 1).drag];
    return withAll - without > 1e-9 ? Math.max(0, (c - without) / (withAll - without)) : 1;
  };
  const ends = [-ninetyFifth, ninetyFifth].map((z) => {
    const loss = lossFor(Math.max(1 + 1e-9, ratio.value * Math.exp(z * ratio.standardError)));
    return { loss, pull: pullFor(loss, middle + correlation * drag.standardError * z) };
  });
  const [low, high] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const loss = { value: 1, low: Math.min(1, low.loss), high: Math.max(1, high.loss) };
  const alone = ninetyFifth * drag.standardError * Math.sqrt(1 - correlation ** 2);
  return [
    {
      name: "ratio as measured",
      turns: "bearing",
      record: loss,
      along: [
        { turns: "bending", record: loss },
        { turns: "sliding", record: loss },
        { turns: "drag", record: aroundOne(low.pull, high.pull), falls: high.pull < low.pull },
      ],
    },
    {
      name: "drag as measured",
      turns: "drag",
      record: aroundOne(pullFor(1, middle - alone), pullFor(1, middle + alone)),
    },
  ];
}

function aroundOne(one: number, other: number): Band {
  return { value: 1, low: Math.min(1, one, other), high: Math.max(1, one, other) };
}
