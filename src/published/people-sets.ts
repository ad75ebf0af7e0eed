import { athletes, halfOfMaximum, longHolds } from "./endurance-points.js";
import { britishGrip, germanGrip, laboratoryGrip, recruits, sixPeople } from "./grip-points.js";
import type { LazySet } from "./measured-set.js";
import { once } from "./once.js";

/** Grip of other samples than the one that foretells it, and how long a grip was held. */
export const peopleSets: readonly LazySet[] = [
  {
    id: "german-grip",
    name: "Grip of a German sample",
    source: "steiber-2016",
    place: "table S3, means, foretold from the norm of another sample",
    points: once(germanGrip),
  },
  {
    id: "recruits",
    name: "Grip of recruits",
    source: "leyk-2007",
    place: "abstract, means of 1654 men and 533 women",
    points: once(recruits),
  },
  {
    id: "british-grip",
    name: "Grip in twelve British studies",
    source: "dodds-2014",
    place: "abstract, greatest medians",
    points: once(britishGrip),
  },
  {
    id: "laboratory-grip",
    name: "Grip of two small groups",
    source: "gonzales-2007",
    place: "abstract, means",
    points: once(laboratoryGrip),
  },
  {
    id: "six-people",
    name: "Grip of six people",
    source: "handgrip-work-2014",
    place: "table 4, greatest grip of each",
    points: once(sixPeople),
  },
  {
    id: "athletes",
    name: "Grip held by athletes",
    source: "peoples-2018",
    place: "abstract, sustained 40 % of maximum, means",
    points: once(athletes),
  },
  {
    id: "long-holds",
    name: "Grip held for minutes",
    source: "kwak-2023",
    place: "abstract, holds to failure, means",
    points: once(longHolds),
  },
  {
    id: "half-of-maximum",
    name: "Half of maximum held",
    source: "yamaji-grip",
    place: "abstract, about 60 s",
    points: once(halfOfMaximum),
  },
];
