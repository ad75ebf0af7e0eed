import { hand, skinLimits } from "../materials/skin.js";
import { type HeatFibre, solids } from "../materials/thermal.js";
import { logRoot } from "../numerics/log-root.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf, bandOfTrials, bandsOf, trialsOf } from "../sources/band.js";
import type { Coefficient } from "../sources/coefficient.js";
import { type HandContact, type HandCourse, handCourse, type KnownResponses } from "./hand-course.js";
import { ropeSpeeds } from "./rope-stream.js";
import { burnDose, type DamageLaw, hottestCounted } from "./skin-burn.js";
import { type YarnRecords, yarnRecords, yarnSolid } from "./yarn-heat.js";

/** A rope that runs through a hand. */
export interface HandEase {
  readonly fibre: HeatFibre;
  readonly ropeDiameter: number;
  readonly gloved: boolean;
  readonly speed: number;
  readonly duration: number;
  /** Of rope and air [K]; 293.15 when absent. */
  readonly ropeTemperature?: number;
}

/** What must not happen. */
export type HandLimit = "pain" | "burn";

const handNames = ["temperature", "livingDepth", "contactLength", "girthShare", "touchingShare"] as const;

type HandRecords = YarnRecords & Readonly<Record<string, Coefficient>>;

/**
 * Every record that decides how much heat a hand stands.
 *
 * @param fibre  of the rope
 * @param gloved  whether a glove lies between
 * @returns records by name
 * Source: common practice for what matters; each record says where it comes from.
 */
export function handRecords(fibre: HeatFibre, gloved: boolean): HandRecords {
  const { skin, leather } = solids;
  return {
    ...yarnRecords(fibre),
    ...Object.fromEntries(handNames.map((name) => [name, hand[name]])),
    skinConductivity: skin.conductivity,
    skinDensity: skin.density,
    skinSpecificHeat: skin.specificHeat,
    ...(gloved && {
      gloveConductivity: leather.conductivity,
      gloveDensity: leather.density,
      gloveSpecificHeat: leather.specificHeat,
      gloveThickness: hand.gloveThickness,
    }),
    pain: skinLimits.pain,
    activation: skinLimits.activation,
  };
}

/**
 * Contact of a hand and a rope at the middle of every record, for `handCourse`.
 *
 * @param ease  fibre, rope diameter [m], glove, rope temperature [K]
 * @returns sizes [m], shares [-], temperatures [K], solids
 * Source: common practice for what matters; each record says where it comes from.
 */
export function handContact(ease: Omit<HandEase, "speed" | "duration">): HandContact {
  const records = handRecords(ease.fibre, ease.gloved);
  return contactOf(ease, Object.fromEntries(Object.entries(records).map(([name, { value }]) => [name, value])));
}

/** A contact from one value of each record. */
function contactOf(ease: Omit<HandEase, "speed" | "duration">, values: Readonly<Record<string, number>>): HandContact {
  const of = (name: string) => values[name]!;
  return {
    ropeDiameter: ease.ropeDiameter,
    yarn: yarnSolid(values as Record<keyof YarnRecords, number>),
    ropeTemperature: within("contactTemperature", ease.ropeTemperature ?? 293.15),
    touchingShare: of("touchingShare"),
    contactLength: of("contactLength"),
    girthShare: of("girthShare"),
    skin: {
      conductivity: of("skinConductivity"),
      density: of("skinDensity"),
      specificHeat: of("skinSpecificHeat"),
    },
    handTemperature: of("temperature"),
    livingDepth: of("livingDepth"),
    ...(ease.gloved && {
      glove: {
        leather: {
          conductivity: of("gloveConductivity"),
          density: of("gloveDensity"),
          specificHeat: of("gloveSpecificHeat"),
        },
        thickness: of("gloveThickness"),
      },
    }),
  };
}

/** Temperatures and dose in a hand. */
export interface HandHeat {
  /** Hottest skin or glove surface [K]. */
  readonly outside: Band;
  /** Hottest living skin [K]. */
  readonly living: Band;
  /** Burn dose [-]: burnt at 1. */
  readonly dose: Band;
}

/**
 * Heat in a hand through which a rope runs: how hot the skin gets, and what it does to it.
 *
 * @param ease  fibre, rope diameter [m], glove, speed [m/s], duration [s], rope temperature [K]
 * @param lostForce  tension that the hand takes out of the rope [N]
 * @returns hottest outside and living skin [K] and burn dose [-], with ranges
 * @throws ValueError outside the ranges of the vocabulary
 * Valid for a few seconds with a dry rope; a wet rope carries more heat away, a rough one also tears the skin.
 * Source: henriques-1947 for the dose, carslaw-jaeger for the warming. Example: handHeat({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 0, duration: 1 }, 100).dose.value < 0.01 → true
 */
export function handHeat(ease: HandEase, lostForce: number): HandHeat {
  return bandsOf(handRecords(ease.fibre, ease.gloved), (values) => {
    const course = handCourse(contactOf(ease, values), ease.speed, ease.duration);
    return {
      outside: Math.max(...course.outside(lostForce)),
      living: Math.max(...course.living(lostForce)),
      dose: doseOf(course, lostForce, lawOf(values)),
    };
  });
}

/** What a hand stands of a running rope, at one speed and duration. */
export interface HandStands {
  /** Hottest living skin at a lost force [K]. */
  readonly living: (lostForce: number) => Band;
  /** Largest lost force before it hurts [N]. */
  readonly pain: Band;
  /** Largest lost force before it burns [N]. */
  readonly burn: Band;
}

/**
 * What a hand stands of a running rope: from which force it hurts or burns, and how hot it gets at any lost force.
 *
 * The same as `safeLostForce` and `handHeat`, with the warming worked out once.
 *
 * @param ease  fibre, rope diameter [m], glove, speed [m/s], duration [s], rope temperature [K]
 * @returns lost forces from which it hurts and burns [N], and the hottest living skin at a lost force [K], with ranges
 * @throws ValueError outside the ranges of the vocabulary, and for a rope at rest
 * Valid for a few seconds with a dry rope.
 * Source: infrared-pain for pain, henriques-1947 for burns. Example: handStands({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 2, duration: 1 }).living(50).value > 310 → true
 */
export function handStands(ease: HandEase): HandStands {
  within("ropeSpeed", ease.speed, 1e-3);
  const known: KnownResponses = new Map();
  const trials = trialsOf(handRecords(ease.fibre, ease.gloved), (values) => ({
    course: handCourse(contactOf(ease, values), ease.speed, ease.duration, known),
    values,
  }));
  const safe = (limit: HandLimit) => bandOfTrials(trials, ({ course, values }) => safeForceOn(course, limit, values));
  return {
    living: (lostForce) => bandOfTrials(trials, ({ course }) => Math.max(...course.living(lostForce))),
    pain: safe("pain"),
    burn: safe("burn"),
  };
}

/** Less and more than any hand takes out of a rope [N]. */
const leastForce = 1e-3;
const mostForce = 1e5;

/**
 * Largest force that a hand may take out of a running rope before it hurts or burns.
 *
 *     pain: the living skin reaches the pain threshold;  burn: the dose reaches 1
 *
 * @param ease  fibre, rope diameter [m], glove, speed [m/s], duration [s], rope temperature [K]
 * @param limit  pain or burn
 * @returns lost force with its range [N]
 * @throws ValueError outside the ranges of the vocabulary, and for a rope at rest
 * Valid for a few seconds with a dry rope.
 * Source: infrared-pain for pain, henriques-1947 for burns. Example: safeLostForce({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 2, duration: 1 }, "burn").value > 10 → true
 */
export function safeLostForce(ease: HandEase, limit: HandLimit): Band {
  within("ropeSpeed", ease.speed, 1e-3);
  return bandOf(handRecords(ease.fibre, ease.gloved), (values) => safeForceAt(ease, limit, values));
}

/**
 * How far each record alone moves the largest force that a hand may take out of a running rope.
 *
 * @param ease  as for `safeLostForce`
 * @param limit  pain or burn
 * @returns for each record the lost force with the range that this record alone gives it [N]
 * @throws ValueError as `safeLostForce`
 * Source: henriques-1947. Example: Object.keys(safeForceByRecord({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 2, duration: 2 }, "pain")).length → 14
 */
export function safeForceByRecord(ease: HandEase, limit: HandLimit): Record<string, Band> {
  within("ropeSpeed", ease.speed, 1e-3);
  const records: Readonly<Record<string, Coefficient>> = handRecords(ease.fibre, ease.gloved);
  const names = Object.keys(records);
  const middle = Object.fromEntries(names.map((name) => [name, records[name]!.value]));
  return Object.fromEntries(
    names.map((name) => [
      name,
      bandOf({ [name]: records[name]! }, (one) => safeForceAt(ease, limit, { ...middle, ...one })),
    ]),
  );
}

function safeForceAt(ease: HandEase, limit: HandLimit, values: Readonly<Record<string, number>>): number {
  return safeForceOn(handCourse(contactOf(ease, values), ease.speed, ease.duration), limit, values);
}

function safeForceOn(course: HandCourse, limit: HandLimit, values: Readonly<Record<string, number>>): number {
  if (limit === "pain") return forceReaching(course, values.pain!);
  const law = lawOf(values);
  // There the dose has passed 1 many times over, even in the shortest ease that is allowed.
  const most = Math.max(2 * leastForce, forceReaching(course, hottestCounted));
  return logRoot((force) => -Math.log(doseOf(course, force, law)), { least: leastForce, most });
}

/** Force at which the living skin reaches a temperature at some time; all temperatures are straight lines over the force. */
function forceReaching(course: HandCourse, temperature: number): number {
  const atRest = course.living(0);
  const rises = course.living(1).map((one, time) => one - atRest[time]!);
  const forces = rises.map((rise, time) => (rise > 0 ? (temperature - atRest[time]!) / rise : mostForce));
  return Math.min(mostForce, Math.max(leastForce, Math.min(...forces)));
}

/**
 * Fastest that a rope may run through a hand at a lost force before it hurts or burns.
 *
 *     the speed at which the safe lost force is the one that is given, sought on logarithms
 *
 * @param ease  as for `safeLostForce`, without its speed
 * @param lostForce  tension that the hand takes out of the rope [N], above 0
 * @param limit  pain or burn
 * @returns speed with its range [m/s], 0.001 to 20
 * @throws ValueError outside the ranges of the vocabulary
 * Source: infrared-pain for pain, henriques-1947 for burns. Example: safeHandSpeed({ fibre: "polyester", ropeDiameter: 0.008, gloved: true, duration: 1 }, 20, "burn").low > 0.1 → true
 */
export function safeHandSpeed(ease: Omit<HandEase, "speed">, lostForce: number, limit: HandLimit): Band {
  const wanted = Math.log(within("lostForce", lostForce, 1e-3));
  const known = new Map<number, Band>();
  const forceAt = (speed: number) => {
    const band = known.get(speed) ?? safeLostForce({ ...ease, speed }, limit);
    known.set(speed, band);
    return band;
  };
  const speedFor = (end: keyof Band) => logRoot((speed) => Math.log(forceAt(speed)[end]) - wanted, ropeSpeeds);
  return { value: speedFor("value"), low: speedFor("low"), high: speedFor("high") };
}

function doseOf(course: HandCourse, lostForce: number, law: DamageLaw): number {
  return burnDose(course.living(lostForce), course.times, law);
}

function lawOf(values: Readonly<Record<string, number>>): DamageLaw {
  return { damageFactor: skinLimits.damageFactor.value, activation: values.activation! };
}
