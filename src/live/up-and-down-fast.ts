import { bearings } from "../materials/bearings.js";
import { type Cover, coverFriction } from "../materials/covers.js";
import { hauling, hoisting } from "../materials/hauling.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { surfaces } from "../materials/surfaces.js";
import { type HandLaw, hillForce, meanForce, type Strokes } from "../motion/hill.js";
import { haul, type Motion } from "../motion/hoist.js";
import { letOut } from "../motion/run-out.js";
import { halyardRope, pressingForce, sailComingDown, sailGoingUp } from "../motion/sail.js";
import { timeBand } from "../motion/time-verdict.js";
import { knot } from "../quantity/constants.js";
import { OutsideModelError } from "../quantity/errors.js";
import { prepareLine } from "../reeving/line.js";
import type { Sheave } from "../reeving/station.js";
import { type RopeMake, ropeLinearDensity } from "../rope/make.js";
import { strippedCore } from "../rope/taper.js";
import { wetLinearDensity } from "../rope/wet-mass.js";
import { type Band, bandOf, bandsOf } from "../sources/band.js";
import { coefficient } from "../sources/coefficient.js";
import { choice, slide, toggle } from "./control.js";
import { air, evenly } from "./demo-skiff.js";
import { type Found, liveModel } from "./model.js";

const gennaker = coefficient({
  value: 1.5,
  unit: "kg",
  low: 1.3,
  high: 1.7,
  status: "invented for the demo",
  place: "gennaker of the demo skiff, dry",
});
/** Share of a sail in its bag that hangs on the halyard. */
const headShare = 0.05;

const covered: RopeMake = { fibre: "hmpe", construction: "coveredCore", coverFibre: "polyester", diameter: 0.006 };
const ropes = {
  covered: { make: covered, law: stiffnessLaws.braidedCover, cover: "polyester" },
  core: {
    make: { fibre: "hmpe", construction: "bareBraid", diameter: strippedCore(covered).value } satisfies RopeMake,
    law: stiffnessLaws.bareCore,
    cover: "bareCore",
  },
} as const;

/** A sail and how it is rigged, in SI. */
interface Rig {
  readonly sailMass: number;
  readonly sailArea: number;
  readonly lift: number;
  /** [m/s] */
  readonly wind: number;
  readonly lee: boolean;
  readonly two: boolean;
  readonly rope: keyof typeof ropes;
  readonly wet: boolean;
  readonly sheave: number;
  readonly drawn: boolean;
}

/** What decides how a sail comes down when it is let go. */
function fallInputs({ rope, wet, sailMass }: Rig) {
  const { make, law, cover } = ropes[rope];
  const worn: Cover = { strands: 16, fibre: cover, wet };
  const over = sailMass / gennaker.value;
  const { rubbing, pressing, blanketed, fallDrag } = hoisting;
  return {
    rubbing,
    pressing,
    blanketed,
    fallDrag,
    bearingFriction: bearings.plain.friction,
    radiusShare: bearings.plain.radiusShare,
    ring: coverFriction(worn, surfaces.anodised),
    tensionTerm: law.tensionTerm,
    constantTerm: law.constantTerm,
    diameterTerm: law.diameterTerm,
    density: wet ? wetLinearDensity(make) : ropeLinearDensity(make),
    sailMass: { value: sailMass, low: over * gennaker.low, high: over * gennaker.high } satisfies Band,
  };
}

/** What decides how a crew pulls. */
const { slowingGrip: _, ...crewInputs } = hauling;

type Values = Readonly<Record<keyof ReturnType<typeof fallInputs> | keyof typeof crewInputs, number>>;

function middleOf(rig: Rig): Values {
  const inputs = { ...fallInputs(rig), ...crewInputs };
  return Object.fromEntries(Object.entries(inputs).map(([name, { value }]) => [name, value])) as Values;
}

/** Masthead, foot of the mast and a ring on deck. */
function lineOf({ rope, sheave }: Rig, values: Values) {
  const block = (name: string, wrapAngle: number): Sheave => ({
    kind: "sheave",
    name,
    diameter: sheave,
    wrapAngle,
    pinRadius: (values.radiusShare * sheave) / 2,
    bearingFriction: values.bearingFriction,
  });
  const { tensionTerm, constantTerm, diameterTerm } = values;
  return prepareLine({
    rope: { diameter: ropes[rope].make.diameter, stiffness: { tensionTerm, constantTerm, diameterTerm } },
    stations: [
      block("masthead", Math.PI),
      block("mast foot", Math.PI / 2),
      {
        kind: "ring",
        name: "deck ring",
        diameter: 0.02,
        wrapAngle: Math.PI / 3,
        frictionCoefficient: values.ring,
      },
    ],
  });
}

function movingOf(rig: Rig, values: Values, sailAt: "bottom" | "top") {
  const { lift } = rig;
  const pressing = pressingForce({
    sailArea: rig.sailArea,
    apparentWindSpeed: rig.wind,
    airDensity: air,
    pressingCoefficient: values.pressing,
    blanketed: rig.lee ? values.blanketed : 0,
  });
  const fallDrag = 0.5 * air * rig.sailArea * values.fallDrag;
  const sail = { sailMass: values.sailMass, lift, headShare, rubbing: values.rubbing, pressing, fallDrag };
  return {
    line: lineOf(rig, values),
    load: sailAt === "bottom" ? sailGoingUp(sail) : sailComingDown(sail),
    rope: halyardRope({ linearDensity: values.density, lift, handSide: lift + 1.7, handDrop: lift - 0.3 }, sailAt),
  };
}

/** As exact as on the page; where that loses energy, a hundred times as exact. */
const tolerances = [1e-5, 1e-7] as const;

function followed(run: (tolerance: number) => Motion): Motion {
  const [usual, fine] = tolerances;
  try {
    return run(usual);
  } catch (error) {
    if (error instanceof OutsideModelError) return run(fine);
    throw error;
  }
}

/** Longest hoist that is followed to its end [s]. */
const patience = 120;

const crewOf = ({ two }: Rig, values: Values): HandLaw =>
  hillForce({ ...values, greatestPull: values.greatestPull * (two ? 1 + values.secondPerson : 1) });

function hoist(rig: Rig, values: Values): Motion {
  const strokes: Strokes = values;
  const moving = movingOf(rig, values, "bottom");
  const hand = crewOf(rig, values);
  return followed((tolerance) => haul({ moving, lift: rig.lift, hand, strokes, tolerance, patience }));
}

function drop(rig: Rig, values: Values): Motion {
  const moving = movingOf(rig, values, "top");
  const crew = rig.drawn ? { retrieval: meanForce(crewOf(rig, values), values) } : {};
  return followed((tolerance) => letOut({ moving, lift: rig.lift, tolerance, ...crew }));
}

/** Height of the head at some moments [m]. */
function heights({ points }: Motion, start: number, moments: readonly number[]): number[] {
  let at = 0;
  return moments.map((moment) => {
    while (at + 1 < points.length && points[at + 1]!.time <= moment) at += 1;
    const [here, next] = [points[at]!, points[at + 1] ?? points[at]!];
    const part = next.time > here.time ? (moment - here.time) / (next.time - here.time) : 0;
    return start + here.travel + part * (next.travel - here.travel);
  });
}

/** Mean speed of a sail that is let go with its range [m/s], and the height of its head on the way with its range [m]. */
function fallBands(rig: Rig, middle: Values, moments: readonly number[]) {
  // Heights are counted down from far above: shifts are then added as they are, whether or not a run is already on deck.
  const names = moments.map((_, index) => `height ${index}`);
  const inputs: Readonly<Record<string, Band>> = fallInputs(rig);
  const bands = bandsOf(inputs, (values): Readonly<Record<string, number>> => {
    const motion = drop(rig, { ...middle, ...values });
    const { stall, way, time } = motion;
    const results: Record<string, number> = { speed: stall === undefined ? way / time : 0 };
    heights(motion, -rig.lift, moments).forEach((height, index) => {
      results[names[index]!] = height;
    });
    return results;
  });
  const { value, low, high } = bands.speed!;
  const inside = (height: number) => Math.min(rig.lift, Math.max(0, height + 2 * rig.lift));
  return {
    speed: { value, low: Math.max(0, low), high },
    line: { low: names.map((name) => inside(bands[name]!.low)), high: names.map((name) => inside(bands[name]!.high)) },
  };
}

/** Pull that brings the sail in near its top, slowly, with its range [N]. */
function pullNearTop(rig: Rig, middle: Values): Band {
  return bandOf(fallInputs(rig), (values) => {
    const { line, load } = movingOf(rig, { ...middle, ...values }, "bottom");
    return line.handForce((load.weight?.(rig.lift) ?? 0) + (load.rub?.(rig.lift) ?? 0), "hauling");
  });
}

/** Time of a drop; with its range where that has an end. */
function downIn(fall: Motion, band?: Band): Found {
  const ends = band !== undefined && Number.isFinite(band.high) && { low: band.low, high: band.high };
  return { label: "Down in", measure: "seconds", value: fall.time, ...ends };
}

const drawnMoments = 33;

/** A sail that is hoisted hand over hand, and dropped. */
export const upAndDownFast = liveModel({
  name: "up-and-down-fast",
  controls: {
    mass: slide({ label: "Mass of the sail", measure: "mass", minimum: 500, maximum: 20000, step: 100, initial: 1500 }),
    area: slide({ label: "Its area", measure: "area", minimum: 4, maximum: 40, step: 1, initial: 17 }),
    lift: slide({ label: "Its head goes up by", measure: "metres", minimum: 3, maximum: 12, step: 0.1, initial: 6.5 }),
    wind: slide({ label: "Apparent wind", measure: "wind", minimum: 0, maximum: 20, step: 0.5, initial: 9 }),
    lee: toggle("In the lee of the mainsail", true),
    people: choice("On the halyard", { "1": "one", "2": "two" }, "1"),
    rope: choice("Halyard of 6 mm", { covered: "with its cover", core: "core alone" }, "covered"),
    wet: toggle("Halyard wet"),
    sheave: slide({ label: "Sheaves", measure: "length", minimum: 15, maximum: 80, step: 1, initial: 25 }),
    down: choice("Down", { letGo: "let go", drawn: "drawn by hand" }, "letGo"),
  },
  compute: ({ mass, area, wind, sheave, people, down, lift, ...same }, { say, sayFound }) => {
    const rig: Rig = {
      ...same,
      lift,
      sailMass: mass / 1000,
      sailArea: area,
      wind: wind * knot,
      sheave: sheave / 1000,
      two: people === "2",
      drawn: down === "drawn",
    };
    const middle = middleOf(rig);
    const [up, fall] = [hoist(rig, middle), drop(rig, middle)];
    const moves = ({ stall }: Motion) => stall === undefined;
    const last = Math.ceil(1.2 * Math.max(up.time, moves(fall) ? fall.time : 0));
    const moments = evenly(0, last, drawnMoments);
    const bands = rig.drawn || !moves(fall) ? undefined : fallBands(rig, middle, moments);
    const dropped = downIn(fall, bands && timeBand(lift, bands.speed));
    const hangs = bands?.speed.low === 0 ? ", or not at all" : "";
    const rises = moves(up)
      ? `Up in about ${say("seconds", up.time)}, with ${up.strokes} pulls`
      : `The hoist stops after ${say("metres", up.way, 2)}: there it asks for more than the crew can pull`;
    const comes = moves(fall)
      ? `Down in about ${sayFound(dropped)}${hangs}`
      : `${fall.way > 0.1 ? `It stops after ${say("metres", fall.way, 2)} on the way down` : "It does not come down"}${rig.drawn ? "" : " by itself"}`;
    return {
      results: [
        ...(moves(up)
          ? [
              { label: "Up in", measure: "seconds", value: up.time } as const,
              { label: "Pulls", measure: "plain", value: up.strokes } as const,
            ]
          : [{ label: "Up as far as", measure: "metres", value: up.way } as const]),
        { label: "Pull near the top, slowly", measure: "force", ...pullNearTop(rig, middle) },
        { label: "Fastest line, going up", measure: "speed", value: up.peakSpeed },
        ...(moves(fall) ? [dropped] : []),
        ...(bands === undefined
          ? []
          : [{ label: "Mean speed, going down", measure: "speed", ...bands.speed } as const]),
      ],
      figure: {
        name: "your-hoist",
        title: `${moves(up) ? `Up in ${say("seconds", up.time, 2)}` : "It does not get up"}, ${moves(fall) ? `down in ${say("seconds", fall.time, 2)}` : "and it stays up"}`,
        caption:
          "Height of the head over time. Steps on the way up are the pauses between pulls. What hands pull is one run at the middle values; the ranges of such runs stand further down the page. Grey tint: 90 % band of a sail that is let go.",
        altText: `Height of the head against time. ${rises}. ${comes}.`,
        x: { title: "Time", measure: "seconds", minimum: 0, maximum: last },
        y: { title: "Height of the head", measure: "metres", minimum: 0, maximum: lift + 0.5 },
        panels: [
          {
            title: "",
            series: [
              { name: "up", x: evenly(0, last, 121), line: heights(up, 0, evenly(0, last, 121)) },
              {
                name: "down",
                x: moments,
                line: heights(fall, lift, moments).map((height) => Math.max(0, height)),
                ...(bands !== undefined && { bands: { line: bands.line } }),
                highlight: true,
              },
            ],
          },
        ],
      },
      sentence: `${rises}. ${comes}.`,
    };
  },
});
