import { blockLosses } from "../materials/block-losses.js";
import { type Cover, fibreFactors, strandFactors, wetFactors } from "../materials/covers.js";
import { practice } from "../materials/practice.js";
import type { Surface } from "../materials/surfaces.js";
import { OutsideModelError } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { bearingRatio, sheaveRatio } from "../reeving/bearing.js";
import { prepareJoined } from "../reeving/joined-lines.js";
import type { Line } from "../reeving/line.js";
import type { Direction } from "../reeving/mechanism-loads.js";
import type { Station } from "../reeving/reeving.js";
import { capstanRatio } from "../reeving/sliding.js";
import type { Ratchet, Ring, Rope, Sheave } from "../reeving/station.js";
import type { Coefficient } from "../sources/coefficient.js";
import { balanced } from "./balance.js";
import { formulas } from "./catalogue.js";
import type { WorkedInput } from "./symbol-value.js";
import { tackleBalance } from "./tackle-balance.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

type Origin = Coefficient | Working;

/** Where the numbers of a line come from: a number that a record or working has is shown with it, any other as it is. */
export interface LineOrigins {
  /** Stiffness of the ropes. */
  readonly ropes?: readonly Readonly<Record<"tensionTerm" | "constantTerm" | "diameterTerm", Coefficient>>[];
  readonly bearings?: readonly Origin[];
  /** Friction of covers on rings and treads. */
  readonly sliding?: readonly Origin[];
  readonly drags?: readonly Origin[];
}

/** One rope from the load to the hand, or several joined in this order. */
type Lines = Line | readonly Line[];

const allowed = 1e-9;

function from(value: number, origins: readonly Origin[] = []): WorkedInput {
  return origins.find((one) => Math.abs(one.value - value) <= allowed * Math.abs(value)) ?? value;
}

function outside(quantity: string, value: string, advice: string): OutsideModelError {
  return new OutsideModelError({
    quantity,
    value,
    allowed: "sheaves, rings, ratchets, tackles, measured turns",
    advice,
  });
}

function bearingWorking(turn: Sheave | Ratchet, rope: Rope, { bearings }: LineOrigins): Working {
  const { bearingFriction, pinRadius, wrapAngle } = turn;
  const groove = blockLosses.grooveFriction;
  const share = bearingFriction * (pinRadius / ((turn.diameter + rope.diameter) / 2));
  const sliding = capstanRatio({ frictionCoefficient: groove.value, wrapAngle });
  if (sheaveRatio(share, Math.abs(Math.sin(wrapAngle / 2)), sliding) === sliding && wrapAngle > 0)
    return worked(formulas.capstan, { frictionCoefficient: groove, wrapAngle });
  const pitchDiameter = turn.diameter + rope.diameter;
  return balanced({
    id: "bearing-moments",
    title: "Bearing of a sheave",
    equations: [
      {
        words: "moments about the pin",
        left: "(ratio - 1) * pitchRadius",
        right: "bearingFriction * pinRadius * sqrt(1 + ratio^2 - 2 * ratio * cos(wrapAngle))",
      },
    ],
    symbols: {
      ratio: "tensionRatio",
      pitchRadius: { quantity: "sheaveDiameter", sign: "R", words: "radius of the sheave to the middle of the rope" },
      bearingFriction: "bearingFriction",
      pinRadius: "pinRadius",
      wrapAngle: "wrapAngle",
    },
    values: {
      ratio: bearingRatio({ bearingFriction, pinRadius, pitchDiameter, wrapAngle }),
      pitchRadius: pitchDiameter / 2,
      bearingFriction: from(bearingFriction, bearings),
      pinRadius,
      wrapAngle,
    },
    answer: "ratio",
    source: "donzelli-1999",
    valid: "a bearing whose friction follows the load",
    mirrors: "bearingRatio",
  });
}

/**
 * The working of what one turn does to a tension, cause by cause.
 *
 * @param turn  sheave, ring or ratchet
 * @param rope  that runs there
 * @param direction  a ratchet turns while hauling and is locked while easing
 * @param origins  where the numbers come from
 * @returns inputs of the formulas of a turn: ratios of bending and of bearing or sliding [-], drag of bending and constant drag [N]
 * Example: turnParts({ kind: "ring", name: "ring", diameter: 0.016, wrapAngle: Math.PI, frictionCoefficient: 0.1 }, { diameter: 0.006, stiffness: { tensionTerm: 50, constantTerm: 0, diameterTerm: 0 } }, "hauling").turnRatio.value → 1.369
 */
export function turnParts(turn: Sheave | Ring | Ratchet, rope: Rope, direction: Direction, origins: LineOrigins = {}) {
  const { ropes = [], sliding, drags } = origins;
  const { diameter: ropeDiameter, stiffness } = rope;
  const { wrapAngle, diameter: sheaveDiameter } = turn;
  const term = (name: keyof typeof stiffness) =>
    from(
      stiffness[name],
      ropes.map((records) => records[name]),
    );
  const fullContact = practice.fullBendContact;
  const fully = (wrapAngle * (sheaveDiameter + ropeDiameter)) / 2 >= fullContact.value * ropeDiameter;
  const ratio = { bendingCoefficient: term("tensionTerm"), ropeDiameter };
  const drag = { bendingDrag: term("constantTerm"), bendingDragOfSize: term("diameterTerm"), ropeDiameter };
  const slides = turn.kind === "ring" || (turn.kind === "ratchet" && direction === "easing");
  const friction = turn.kind === "ring" ? turn.frictionCoefficient : turn.kind === "ratchet" ? turn.treadFriction : 0;
  return {
    bendRatio: fully
      ? worked(formulas.bending, { ...ratio, sheaveDiameter })
      : worked(formulas.shortBend, { ...ratio, wrapAngle, fullContact }),
    bendDrag: fully
      ? worked(formulas.bendingDrag, { ...drag, sheaveDiameter })
      : worked(formulas.shortBendDrag, { ...drag, wrapAngle, fullContact }),
    turnRatio: slides
      ? worked(formulas.capstan, { frictionCoefficient: from(friction, sliding), wrapAngle })
      : bearingWorking(turn as Sheave | Ratchet, rope, origins),
    constantDrag: from(turn.drag ?? 0, drags),
  };
}

/** The working of the pull behind one station. */
function behindStation(
  station: Station,
  rope: Rope,
  { load, direction, origins }: { load: number | Working; direction: Direction; origins: LineOrigins },
): Working {
  const hauling = direction === "hauling";
  switch (station.kind) {
    case "tackle":
      return tackleBalance({ reeving: station.reeving, rope, load, direction });
    case "measured": {
      const { tensionRatio, drag = 0 } = station;
      const inputs = { tensionRatio, loadTension: load, constantDrag: drag };
      return worked(hauling ? formulas.haulingTurn : formulas.easingTurn, inputs);
    }
    case "cleat":
      throw outside("working of a line", "a cleat", "Leave the cleat out, or open it.");
    default: {
      const parts = turnParts(station, rope, direction, origins);
      return worked(hauling ? formulas.hauledTurn : formulas.easedTurn, { ...parts, loadTension: load });
    }
  }
}

function pairsOf(lines: Lines): readonly (readonly [Station, Rope])[] {
  return listOf(lines).flatMap(({ rope, stations }) => stations.map((station) => [station, rope] as const));
}

function listOf(lines: Lines): readonly Line[] {
  return "stations" in lines ? [lines] : lines;
}

/** Refuses a working that is not what the solver says: something is in the line that no formula here knows. */
function agreed(working: Working | undefined, solved: number): Working {
  if (working === undefined) throw outside("working of a line", "no stations", "Give a line with a turn.");
  if (Math.abs(working.value - solved) <= 1e-6 * Math.max(1, Math.abs(solved))) return working;
  throw outside(
    "working of a line",
    `${figures(working.value)} N where the line has ${figures(solved)} N`,
    "Cheeks, shared turns, load-sensing ratchets and friction that falls with load are not in this working.",
  );
}

/** A line under a load. */
export interface LineUnderLoad {
  readonly line: Lines;
  /** [N], or the working that gave it. */
  readonly load: number | Working;
  readonly direction: Direction;
  readonly origins?: LineOrigins;
}

/**
 * The workings of the pulls along a line, station by station, from the load to the hand.
 *
 * @param line  rope and stations, or several ropes joined
 * @param load  at the sail end [N], or the working that gave it
 * @param direction  hauling or easing
 * @param origins  where the numbers come from
 * @returns the working of the pull behind each station [N]; the last one is the hand force
 * @throws OutsideModelError for a station that it does not know, and where the line's own solver says another number
 * Example: lineWorkings({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1 }] }, load: 100, direction: "hauling" })[0].value → 110
 */
export function lineWorkings({ line, load, direction, origins = {} }: LineUnderLoad): Working[] {
  const pulls: Working[] = [];
  for (const [station, rope] of pairsOf(line))
    pulls.push(behindStation(station, rope, { load: pulls.at(-1) ?? load, direction, origins }));
  const W = typeof load === "number" ? load : load.value;
  agreed(pulls.at(-1), prepareJoined(listOf(line)).handForce(W, direction));
  return pulls;
}

/**
 * The working of the hand force of a line.
 *
 * @param under  line, load [N], direction, and where the numbers come from
 * @returns the working; its result is the hand force [N]
 * @throws OutsideModelError as `lineWorkings`
 * Example: lineWorking({ line: { rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1 }] }, load: 110, direction: "easing" }).value → 100
 */
export function lineWorking(under: LineUnderLoad): Working {
  return lineWorkings(under).at(-1)!;
}

/**
 * The working of the load at which a line runs out by itself, from an open hand back to the sail.
 *
 * @param line  rope and stations, or several ropes joined
 * @param origins  where the numbers come from
 * @returns the working; its result is the run-out load [N]
 * @throws OutsideModelError as `lineWorkings`, and for a tackle
 * Example: runOutWorking({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "block", tensionRatio: 1.1, drag: 2 }] }).value → 2
 */
export function runOutWorking(line: Lines, origins: LineOrigins = {}): Working {
  let pull: number | Working = 0;
  for (const [station, rope] of [...pairsOf(line)].reverse()) {
    if (station.kind === "cleat" || station.kind === "tackle")
      throw outside("working of a run-out load", `a ${station.kind}`, "Ask for the line behind it.");
    pull =
      station.kind === "measured"
        ? worked(formulas.runOutMeasured, {
            tensionRatio: station.tensionRatio,
            handTension: pull,
            constantDrag: station.drag ?? 0,
          })
        : worked(formulas.runOutTurn, { ...turnParts(station, rope, "easing", origins), handTension: pull });
  }
  return agreed(typeof pull === "number" ? undefined : pull, prepareJoined(listOf(line)).runOutLoad());
}

/**
 * The working of the friction of a cover on a surface.
 *
 * @param cover  strands, fibre and state
 * @param surface  ring, tread or jaw
 * @returns the working; its result is the friction coefficient [-]
 * Example: coverWorking({ strands: 24, fibre: "polyester", wet: false }, surfaces.anodised).value → 0.1
 */
export function coverWorking({ strands, fibre, wet }: Cover, surface: Surface): Working {
  return worked(formulas.coverFriction, {
    surface: surface.friction,
    strands: strandFactors[strands],
    fibre: fibreFactors[fibre],
    water: wet ? wetFactors[fibre] : 1,
  });
}
