import type { SourceId } from "../sources/bibliography.js";
import { coefficient } from "../sources/coefficient.js";

const poundForce = 4.4482216152605;
const inch = 0.0254;
const tonneForce = 9806.65;

/** A load over the square of a size [N/m²], with what the trade lets a rule of thumb be off. */
function rule(value: number, source: SourceId, place: string) {
  return coefficient({
    value,
    unit: "N/m^2",
    low: 0.75 * value,
    high: 1.5 * value,
    status: "published",
    source,
    place,
  });
}

/** Printed rules for the strength of ropes: break load, or working load where it says so, over the square of a size. */
export const strengthRules = {
  /** By diameter. */
  accessoryCord: rule(2e8, "en-564", "least strength, 4 to 8 mm: 0.2 kN/mm² of the diameter squared"),
  /** By circumference. */
  manila: rule(
    (900 * poundForce) / inch ** 2,
    "navy-cordage",
    "manila: 900 lbf by the square of the circumference in inches",
  ),
  nylon: rule(
    (2400 * poundForce) / inch ** 2,
    "navy-cordage",
    "nylon: 2400 lbf by the square of the circumference in inches",
  ),
  nylonOfManila: coefficient({
    value: 2.5,
    unit: "1",
    low: 2,
    high: 3,
    status: "published",
    source: "uscg-cordage",
    place: "nylon over manila of the same size; polyester 2.0, polypropylene 1.4",
  }),
  /** By diameter. */
  manilaByDiameter: rule(tonneForce / 200 / 1e-6, "deck-training-notes", "manila: d²/200 tonnes"),
  polypropylene: rule(tonneForce / 77 / 1e-6, "deck-training-notes", "polypropylene: d²/77 tonnes"),
  polyethylene: rule(tonneForce / 106 / 1e-6, "deck-training-notes", "polyethylene: d²/106 tonnes"),
  /** Working load, by diameter. */
  steelWire: rule((8 * 9.80665) / 1e-6, "safe-load-notes", "flexible steel wire: safe load 8 d² kilograms"),
  /** Working load, by circumference. */
  fibreLine: rule((2000 * poundForce) / (15 * inch ** 2), "navy-cordage", "size: C = √(15 P), P in tons: safe load"),
} as const;
