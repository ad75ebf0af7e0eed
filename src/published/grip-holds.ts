import type { Cover } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import { holdingWrap, ratchetHold } from "../reeving/ratchet-hold.js";
import { holdingFriction } from "../reeving/sliding.js";
import { coefficient } from "../sources/coefficient.js";
import { publishedRow } from "./published-row.js";
import type { CheckSet } from "./row.js";
import { turnAngle } from "./turn-models.js";

/** The cover by which surfaces are measured: it changes nothing. */
const referenceCover: Cover = { strands: 24, fibre: "polyester", wet: false };

/** The post of the example, with its friction. */
const post: Surface = {
  name: "post",
  friction: coefficient({
    value: 0.4,
    unit: "1",
    low: 0.4,
    high: 0.4,
    status: "published",
    source: "post-example",
    place: "given",
  }),
};

const left = (turns: number) =>
  100 * ratchetHold({ tread: post, cover: referenceCover, wrapAngle: turns * turnAngle }).handShare.value;

const hawserFriction = () => holdingFriction({ tensionRatio: 5000 / 80, wrapAngle: 2 * turnAngle });

/** Holding over a locked drum, from textbooks. */
export const gripHolds: CheckSet = {
  topic: "grip",
  rows: [
    publishedRow(
      "post-example",
      "half-turn",
      "hold for 100 lbf over half a turn, μ = 0.40",
      "28.46",
      "lbf",
      "p. 120",
      () => left(0.5),
    ),
    publishedRow(
      "post-example",
      "turn-and-half",
      "hold for 100 lbf over one and a half turns, μ = 0.40",
      "2.31",
      "lbf",
      "p. 120",
      () => left(1.5),
    ),
    publishedRow(
      "beer-johnston-hawser",
      "friction",
      "friction at which two turns and 80 lbf hold 5000 lbf",
      "0.329",
      "1",
      "part a",
      hawserFriction,
    ),
    publishedRow(
      "beer-johnston-hawser",
      "turns",
      "turns over which 80 lbf hold 20 000 lbf with that friction",
      "2.67",
      "1",
      "part b",
      () => holdingWrap({ tensionRatio: 20_000 / 80, frictionCoefficient: hawserFriction() }) / turnAngle,
    ),
  ],
};
