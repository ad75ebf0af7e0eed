import { poundForce } from "../quantity/constants.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

/**
 * Bending stiffness of a rope in the form of Morin's law.
 *
 *     ΔT = (d² / D) · (tensionTerm · T + constantTerm + diameterTerm · d²)
 *
 * D is the pitch diameter: groove bottom plus one rope diameter.
 */
export interface StiffnessLaw {
  readonly name: string;
  /** Part that grows with tension [1/m]. */
  readonly tensionTerm: Coefficient;
  /** Part that does not [N/m]. */
  readonly constantTerm: Coefficient;
  /** Part that grows with the thickness of the rope [N/m³]. */
  readonly diameterTerm: Coefficient;
}

const inch = 0.0254;

/** Morin's law as printed in inches and pounds-force: F = (n/r)(a + b·n + c·T), n = perSquareInch · d². */
function morinInPounds(name: string, perSquareInch: number, a: number, b: number, c: number): StiffnessLaw {
  const place = `${name}, converted to SI; upper end: another old handbook law, from memory, asks for four times as much`;
  const record = (value: number, unit: string) =>
    coefficient({
      value,
      unit,
      low: 0.7 * value,
      high: 4 * value,
      status: "published",
      source: "britannica-1911",
      place,
    });
  return {
    name,
    tensionTerm: record((2 * perSquareInch * c) / inch, "1/m"),
    constantTerm: record((2 * perSquareInch * a * poundForce) / inch, "N/m"),
    diameterTerm: record((2 * perSquareInch ** 2 * b * poundForce) / inch ** 3, "N/m^3"),
  };
}

/**
 * Stiffness laws by construction. The laws of hemp are printed; those of braided ropes are set so that the
 * published raise-and-lower tests (a thick low-stretch rope on 50 to 60 mm bars gives 60 to 80 per metre) fall inside
 * the spread. The upper end for a stripped core is set so that one published test of thin HMPE on a very small sheave
 * falls inside. The parts that do not grow with tension are taken from hemp.
 */
export const stiffnessLaws = {
  whiteHemp: morinInPounds("white hemp", 48, 0.0012, 0.001026, 0.0012),
  tarredHemp: morinInPounds("tarred hemp", 35, 0.006, 0.001392, 0.00168),
  braidedCover: braided(
    "braided cover over core",
    [30, 60, 110],
    "no printed coefficient found; range set by published bar tests",
  ),
  bareCore: braided(
    "stripped HMPE core",
    [15, 40, 250],
    "no printed coefficient found; upper end set by one published test of a coated 3.2 mm braid on a small sheave",
  ),
} as const;

function braided(
  name: string,
  [low, value, high]: readonly [low: number, value: number, high: number],
  place: string,
): StiffnessLaw {
  return {
    name,
    tensionTerm: coefficient({ value, unit: "1/m", low, high, status: "from memory", place }),
    constantTerm: coefficient({ value: 40, unit: "N/m", low: 10, high: 100, status: "from memory", place: "as hemp" }),
    diameterTerm: coefficient({
      value: 1e6,
      unit: "N/m^3",
      low: 2e5,
      high: 2e6,
      status: "from memory",
      place: "as hemp",
    }),
  };
}
