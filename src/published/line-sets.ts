import { canyoning, hmpeKnots, prattley, rescuePulleys, roller, thinBars, timber } from "./braid-points.js";
import { ballSheave, ballStuds } from "./hemp-points.js";
import type { LazySet } from "./measured-set.js";
import { once } from "./once.js";

/** Ropes over wheels and bars, and knots. */
export const lineSets: readonly LazySet[] = [
  {
    id: "ball-sheave",
    name: "Wooden sheave, hemp cord",
    source: "ball-mechanics",
    place: "art. 168",
    points: once(ballSheave),
  },
  {
    id: "ball-studs",
    name: "Hemp over iron studs",
    source: "ball-mechanics",
    place: "art. 156",
    points: once(ballStuds),
  },
  {
    id: "thin-bars",
    name: "Low-stretch rope over thin steel bars",
    source: "delaney-2022",
    place: "p. 88",
    points: once(thinBars),
  },
  { id: "timber", name: "Low-stretch rope over timber", source: "delaney-2022", place: "p. 88", points: once(timber) },
  {
    id: "roller",
    name: "Cord on a pine roller",
    source: "knot-guild-roller",
    place: "first post: it holds at 14 and slips at 19",
    points: once(roller),
  },
  {
    id: "rescue",
    name: "Rescue pulleys and karabiners",
    source: "delaney-devices",
    place: "p. 90; 1 kN",
    points: once(rescuePulleys),
  },
  {
    id: "prattley",
    name: "Wheel and bar, 9 mm rope",
    source: "prattley-2016",
    place: "averages of five pulls",
    points: once(prattley),
  },
  {
    id: "canyon",
    name: "Raising and lowering, 11 lbf",
    source: "canyon-friction",
    place: "readings at the anchor, less the load",
    points: once(canyoning),
  },
  {
    id: "hmpe-knots",
    name: "Knots in HMPE cord",
    source: "hmpe-knot-tests",
    place: "quoted tests",
    points: once(hmpeKnots),
  },
];
