import { heatLimits } from "../materials/heat-limits.js";
import type { RubbedHardware } from "../materials/rubbed-hardware.js";
import { crownShare, type HeatFibre, solids, type Thermal } from "../materials/thermal.js";
import { logRoot } from "../numerics/log-root.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf, bandOfTrials, bandsOf, trialsOf } from "../sources/band.js";
import type { Coefficient } from "../sources/coefficient.js";
import { effusivity } from "./effusivity.js";
import { heatHistory } from "./heat-history.js";
import { patchResponse } from "./patch-response.js";
import { exitOverMean, ropeHeatTransfer, ropeSpeeds } from "./rope-stream.js";
import { type YarnRecords, yarnRecords, yarnSolid } from "./yarn-heat.js";

/** A rope that slides over a piece of hardware at a steady speed. */
export interface HardwareEase {
  readonly fibre: HeatFibre;
  readonly ropeDiameter: number;
  readonly hardware: RubbedHardware;
  readonly speed: number;
  readonly duration: number;
  /** Of rope, hardware and air [K]; 293.15 when absent. */
  readonly airTemperature?: number;
}

type HardwareValues = Readonly<Record<keyof HardwareRecords, number>>;

/** Every record that decides how hot rope and hardware get. */
export interface HardwareRecords extends YarnRecords {
  readonly crownShare: Coefficient;
  readonly mass: Coefficient;
  readonly contactLength: Coefficient;
  readonly widthShare: Coefficient;
  readonly conductivity: Coefficient;
  readonly density: Coefficient;
  readonly specificHeat: Coefficient;
}

/**
 * Every record that decides how hot rope and hardware get.
 *
 * @param fibre  of the rope
 * @param hardware  ring, ratchet tread or jammer
 * @returns records by name
 * Source: common practice for what matters; each record says where it comes from.
 */
export function hardwareRecords(fibre: HeatFibre, hardware: RubbedHardware): HardwareRecords {
  const { conductivity, density, specificHeat }: Thermal = solids[hardware.material];
  const { mass, contactLength, widthShare } = hardware;
  return {
    ...yarnRecords(fibre),
    crownShare,
    mass,
    contactLength,
    widthShare,
    conductivity,
    density,
    specificHeat,
  };
}

const steps = 60;

/** Warming per newton of lost force at the end of the ease. */
interface Warming {
  /** Crowns of the rope where they leave the contact [K/N]. */
  readonly rope: number;
  /** Rubbed face of the hardware [K/N]. */
  readonly hardware: number;
  /** Part of all heat that went into the hardware [-]. */
  readonly share: number;
}

/** The hardware is a body with a patch of contact; the rope is a stream that carries heat away. */
function warmingOf(ease: HardwareEase, values: HardwareValues): Warming {
  const { mass, contactLength, widthShare, conductivity, density, specificHeat } = values;
  const area = within("contactArea", within("ropeDiameter", ease.ropeDiameter) * widthShare * contactLength);
  const step = within("duration", ease.duration, 1e-6) / steps;
  const patch = { solid: { conductivity, density, specificHeat }, area, mass };
  const flux = within("ropeSpeed", ease.speed) / area;
  const h = ropeHeatTransfer({
    effusivity: effusivity(yarnSolid(values)),
    contactLength,
    speed: ease.speed,
    touchingShare: values.crownShare,
  });
  const { intoBody, surface } = heatHistory({
    response: Array.from({ length: steps }, (_, index) => patchResponse(patch, (index + 1) * step)),
    flux: Array.from({ length: steps }, () => flux),
    heatTransfer: Array.from({ length: steps }, () => h),
    ropeExcess: 0,
  });
  const hardware = surface.at(-1)!;
  const taken = intoBody.reduce((sum, one) => sum + one, 0);
  return { rope: exitOverMean * hardware, hardware, share: flux === 0 ? 1 : taken / (steps * flux) };
}

/** Temperatures of rope and hardware. */
export interface HardwareHeat {
  /** Crowns of the rope where they leave the contact, at the end of the ease [K]. */
  readonly rope: Band;
  /** Rubbed face of the hardware, at the end of the ease [K]. */
  readonly hardware: Band;
  /** Part of all heat that went into the hardware [-]; the rest left with the rope. */
  readonly share: Band;
}

/**
 * How hot a rope and the hardware over which it slides get in one ease.
 *
 * Each bit of rope passes in a moment and takes its share along; the hardware stays and gathers heat all the time.
 *
 * @param ease  fibre, rope diameter [m], hardware, speed [m/s], duration [s], air temperature [K]
 * @param lostForce  tension lost there [N], 0 or more
 * @returns temperatures of rope and hardware [K] and share of the heat in the hardware [-], with ranges
 * @throws ValueError outside the ranges of the vocabulary
 * Valid for an ease of up to some ten seconds: heat to the air is left out, and the patch is taken as round.
 * Source: jaeger-1942 for the rope, carslaw-jaeger for the hardware. Example: hardwareHeat({ fibre: "polyester", ropeDiameter: 0.008, hardware: rubbedHardware.ring, speed: 0, duration: 1 }, 100).rope.value → 293.15
 */
export function hardwareHeat(ease: HardwareEase, lostForce: number): HardwareHeat {
  const air = within("contactTemperature", ease.airTemperature ?? 293.15);
  const force = within("lostForce", lostForce);
  return bandsOf({ ...hardwareRecords(ease.fibre, ease.hardware) }, (values) => {
    const { rope, hardware, share } = warmingOf(ease, values as HardwareValues);
    return { rope: air + force * rope, hardware: air + force * hardware, share };
  });
}

/** What the cover of a rope stands on a piece of hardware, at one speed and duration. */
export interface HardwareStands {
  /** Crowns of the rope where they leave the contact, at a lost force [K]. */
  readonly rope: (lostForce: number) => Band;
  /** Largest lost force before the cover is marked [N]. */
  readonly marked: Band;
}

/**
 * What a cover stands on a piece of hardware: from which force it is marked, and how hot it gets at any lost force.
 *
 * The same as `safeHardwareForce` and `hardwareHeat`, with the warming worked out once.
 *
 * @param ease  fibre, rope diameter [m], hardware, speed [m/s], duration [s], air temperature [K]
 * @returns the lost force from which the crowns are marked [N], and their temperature at a lost force [K], with ranges
 * @throws ValueError outside the ranges of the vocabulary, and for a rope at rest
 * Valid as `hardwareHeat`; damage temperatures are judged, see their records.
 * Source: jaeger-1942 for the rope, carslaw-jaeger for the hardware. Example: hardwareStands({ fibre: "pbo", ropeDiameter: 0.008, hardware: rubbedHardware.ring, speed: 3, duration: 1 }).rope(0).value → 293.15
 */
export function hardwareStands(ease: HardwareEase): HardwareStands {
  within("ropeSpeed", ease.speed, 1e-3);
  const air = within("contactTemperature", ease.airTemperature ?? 293.15);
  const records = { ...hardwareRecords(ease.fibre, ease.hardware), damage: heatLimits[ease.fibre].damage };
  const trials = trialsOf(records, (values) => ({ ...warmingOf(ease, values), damage: values.damage }));
  return {
    rope: (lostForce) => {
      const force = within("lostForce", lostForce);
      return bandOfTrials(trials, ({ rope }) => air + force * rope);
    },
    marked: bandOfTrials(trials, ({ rope, damage }) => (damage - air) / rope),
  };
}

/**
 * Largest force that may be lost at a piece of hardware before the rope that runs over it is marked by heat.
 *
 *     F = (T_damage − T_air) / (warming per newton)
 *
 * @param ease  fibre, rope diameter [m], hardware, speed [m/s], duration [s], air temperature [K]
 * @returns lost force with its range [N]
 * @throws ValueError outside the ranges of the vocabulary, and for a rope at rest
 * Valid as `hardwareHeat`; damage temperatures are judged, see their records.
 * Source: jaeger-1942 for the rope, carslaw-jaeger for the hardware. Example: safeHardwareForce({ fibre: "pbo", ropeDiameter: 0.008, hardware: rubbedHardware.ring, speed: 3, duration: 1 }).value > 100 → true
 */
export function safeHardwareForce(ease: HardwareEase): Band {
  within("ropeSpeed", ease.speed, 1e-3);
  const air = within("contactTemperature", ease.airTemperature ?? 293.15);
  const records = { ...hardwareRecords(ease.fibre, ease.hardware), damage: heatLimits[ease.fibre].damage };
  return bandOf(records, (values) => (values.damage - air) / warmingOf(ease, values as unknown as HardwareValues).rope);
}

/**
 * Fastest that a rope may run over a piece of hardware at a lost force before it is marked by heat.
 *
 *     the speed at which the safe lost force is the one that is given, sought on logarithms
 *
 * @param ease  as for `safeHardwareForce`, without its speed
 * @param lostForce  tension lost there [N], above 0
 * @returns speed with its range [m/s], 0.001 to 20
 * @throws ValueError outside the ranges of the vocabulary
 * Valid as `hardwareHeat`.
 * Source: jaeger-1942 for the rope, carslaw-jaeger for the hardware. Example: safeHardwareSpeed({ fibre: "polyester", ropeDiameter: 0.008, hardware: rubbedHardware.ring, duration: 2 }, 60).value > 1 → true
 */
export function safeHardwareSpeed(ease: Omit<HardwareEase, "speed">, lostForce: number): Band {
  const wanted = Math.log(within("lostForce", lostForce, 1e-3));
  const speedFor = (end: keyof Band) =>
    logRoot((speed) => Math.log(safeHardwareForce({ ...ease, speed })[end]) - wanted, ropeSpeeds);
  return { value: speedFor("value"), low: speedFor("low"), high: speedFor("high") };
}
