import { bearings } from "../materials/bearings.js";
import { type Cover, coverFriction } from "../materials/covers.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { surfaces } from "../materials/surfaces.js";
import { type Line, prepareLine } from "../reeving/line.js";
import type { Ring, Sheave } from "../reeving/station.js";
import { sweepLoads } from "../reeving/sweep.js";
import { bandSeries } from "../uncertainty/band-series.js";
import { bandAtLoad } from "../uncertainty/line-band.js";
import { uncertainInputsOf } from "../uncertainty/line-inputs.js";
import { choice, slide } from "./control.js";
import { coverControls, coverOf } from "./covers.js";
import { braidedRope, evenly, radians } from "./demo-skiff.js";
import { liveModel } from "./model.js";

type Round = keyof typeof surfaces | "ball";

/** What turns the line. */
interface Lead {
  readonly round: Round;
  /** [m] */
  readonly diameter: number;
  /** [rad] */
  readonly wrapAngle: number;
  readonly cover: Cover;
}

function stationOf({ round, diameter, wrapAngle, cover }: Lead): Ring | Sheave {
  const turn = { name: round === "ball" ? "sheave" : "ring", diameter, wrapAngle };
  return round === "ball"
    ? {
        ...turn,
        kind: "sheave",
        pinRadius: (bearings.ball.radiusShare.value * diameter) / 2,
        bearingFriction: bearings.ball.friction.value,
      }
    : { ...turn, kind: "ring", frictionCoefficient: coverFriction(cover, surfaces[round]).value };
}

function inputsFor({ round, cover }: Lead) {
  const rope = stiffnessLaws.braidedCover;
  return round === "ball"
    ? uncertainInputsOf({ bearing: bearings.ball, rope })
    : uncertainInputsOf({ bearing: bearings.ball, rope, ring: coverFriction(cover, surfaces[round]) });
}

const mostDegrees = 180;
const mostLoad = 1000;
const samples = 2000;
const curveSamples = 256;

/** One line round a ring or a sheave. */
export const aroundARing = liveModel({
  name: "around-a-ring",
  controls: {
    round: choice(
      "Turned by",
      {
        anodised: "an anodised ring",
        aluminium: "a bare aluminium ring",
        polishedSteel: "a polished steel ring",
        galvanised: "a galvanised ring",
        ball: "a ball-bearing sheave",
      },
      "anodised",
    ),
    bar: slide({
      label: "Bar of the ring, or sheave",
      measure: "length",
      minimum: 6,
      maximum: 80,
      step: 1,
      initial: 16,
    }),
    angle: slide({
      label: "Angle of contact",
      measure: "angle",
      minimum: 10,
      maximum: mostDegrees,
      step: 5,
      initial: 180,
    }),
    load: slide({ label: "Load", measure: "force", minimum: 10, maximum: mostLoad, step: 10, initial: 300 }),
    strands: { ...coverControls.strands, initial: "24" },
    wet: coverControls.wet,
  },
  compute: ({ round, bar, angle, load, ...rest }, { say, sayFound }) => {
    const lead: Lead = { round, diameter: bar / 1000, wrapAngle: radians(angle), cover: coverOf(rest) };
    const line: Line = { rope: braidedRope(0.006), stations: [stationOf(lead)] };
    const uncertain = { line, uncertainInputs: inputsFor(lead) };
    const middle = prepareLine(line).handForces(load);
    const bands = bandAtLoad(uncertain, load, { samples });
    const found = (label: string, name: "hauling" | "easing" | "deadBand") =>
      ({ label, measure: "force", value: middle[name], low: bands[name].low, high: bands[name].high }) as const;
    const haul = found("Haul", "hauling");
    const more = ({ low, value, high }: { low: number; value: number; high: number }) => ({
      low: 100 * (low / load - 1),
      value: 100 * (value / load - 1),
      high: 100 * (high / load - 1),
    });
    const most = mostLoad / 2 < load ? mostLoad : mostLoad / 2;
    const loads = evenly(0, most, 11);
    const curves = bandSeries({ name: "hand", loads, ...uncertain, options: { samples: curveSamples } });
    const where = round === "ball" ? "sheave" : "ring";
    return {
      results: [
        haul,
        found("Hold", "easing"),
        found("Dead band", "deadBand"),
        { label: "More to pull than the load", measure: "share", ...more(haul) },
      ],
      figure: {
        name: "your-turn",
        title: `At ${say("force", load)} this ${where} asks for ${say("force", haul.value)} at ${say("angle", angle)}`,
        caption: "6 mm line with a braided cover. Solid: hauling. Dashed: holding. Grey tint: 90 % band.",
        altText: `Hand force against load. At ${say("force", load)} hauling takes ${say("force", middle.hauling)}, holding ${say("force", middle.easing)}.`,
        x: { title: "Load", measure: "force", minimum: 0, maximum: most },
        y: { title: "Hand force", measure: "force", minimum: 0 },
        panels: [
          {
            title: "",
            series: [
              { name: "no friction", x: loads, line: loads },
              { ...curves, ...sweepLoads(line, loads), highlight: true },
              { name: `at ${say("force", load)}`, x: [load, load], points: [middle.hauling, middle.easing] },
            ],
          },
        ],
      },
      sentence: `Round ${say("angle", angle)} of this ${where}, ${say("force", load)} take ${sayFound(haul)}, to haul; ${say("force", middle.easing)} are left to hold.`,
    };
  },
});
