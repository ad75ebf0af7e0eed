import { monotoneCurve } from "../numerics/pchip.js";
import { OutsideModelError, ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { hazen1980 } from "./editions/hazen-1980.js";
import { imsOlder } from "./editions/ims-older.js";
import { orc2013 } from "./editions/orc-2013.js";
import { orcUndated } from "./editions/orc-undated.js";
import type { SailEditionTables, SailName, SailTable } from "./sail-table.js";

/** Published tables of sail coefficients. Editions differ by up to a third: name the edition with every number. */
export const sailEditions = {
  "orc-2013": orc2013,
  "orc-undated": orcUndated,
  "hazen-1980": hazen1980,
  "ims-older": imsOlder,
} as const satisfies Record<string, SailEditionTables>;

/** Name of an edition. */
export type SailEdition = keyof typeof sailEditions;

/** A sail in one edition. */
export interface SailChoice {
  readonly edition: SailEdition;
  readonly sail: SailName;
}

/** Input of the coefficients. */
export interface SailCoefficientInput extends SailChoice {
  /** Angle from the bow to the apparent wind [rad]. */
  readonly apparentWindAngle: number;
}

/** Lift and drag of a sail over dynamic pressure and its own area. */
export interface SailCoefficients {
  /** Lift coefficient [-], across the apparent wind. */
  readonly liftCoefficient: number;
  /** Drag coefficient [-], along the apparent wind, without the drag that lift induces. */
  readonly dragCoefficient: number;
}

interface SailCurves {
  readonly first: number;
  readonly last: number;
  readonly lift: (angle: number) => number;
  readonly drag: (angle: number) => number;
}

/** An angle that was turned from degrees may miss the end of a table by rounding, no more. */
const roundingAngle = 1e-9;

const curves = new Map<SailTable, SailCurves>();

/**
 * Lift and drag coefficient of a sail at an apparent wind angle, between the printed values of one edition.
 *
 *     C_L(β), C_D(β): monotone curve through the printed nodes, exact at each
 *
 * @param edition            table that is read, see `sailEditions`
 * @param sail               sail, among those of the edition
 * @param apparentWindAngle  β, from the bow [rad], within the table: 0 or 7 or 27 or 28 to 180 degrees
 * @returns lift and drag coefficient [-], referred to the area of the sail
 * Valid for a sail in best trim on a boat of normal form; drag leaves out what lift induces.
 * Source: orc-coefficients-2013, orc-coefficients-undated, hazen-1980, ims-coefficients-older, tables of sail coefficients.
 * Example: sailCoefficients({ edition: "orc-2013", sail: "main", apparentWindAngle: Math.PI / 2 }).liftCoefficient → 1.125
 */
export function sailCoefficients({ edition, sail, apparentWindAngle }: SailCoefficientInput): SailCoefficients {
  const beta = within("apparentWindAngle", apparentWindAngle);
  const { first, last, lift, drag } = curvesOf(tableOf({ edition, sail }));
  if (beta < first - roundingAngle || beta > last + roundingAngle) {
    throw new OutsideModelError({
      quantity: `apparent wind angle of the sail "${sail}" in the edition ${sailEditions[edition].title}`,
      value: `${inDegrees(beta)}°`,
      allowed: `${inDegrees(first)}° to ${inDegrees(last)}°`,
      advice: "The sail is not set at this angle, or take an edition whose table covers it.",
    });
  }
  const held = Math.min(Math.max(beta, first), last);
  return { liftCoefficient: lift(held), dragCoefficient: drag(held) };
}

/** The table of a sail, or a refusal that names what there is. */
function tableOf({ edition, sail }: SailChoice): SailTable {
  const tables: SailEditionTables | undefined = Object.hasOwn(sailEditions, edition)
    ? sailEditions[edition]
    : undefined;
  if (!tables) refuse("edition of the sail tables", edition, Object.keys(sailEditions));
  const table = Object.hasOwn(tables.sails, sail) ? tables.sails[sail] : undefined;
  return table ?? refuse(`sail in the edition ${tables.title}`, sail, Object.keys(tables.sails));
}

function refuse(quantity: string, value: string, known: readonly string[]): never {
  throw new ValueError({
    quantity,
    value: JSON.stringify(value) ?? "nothing",
    allowed: known.map((name) => `"${name}"`).join(", "),
    advice: "Take one of these names.",
  });
}

function curvesOf(table: SailTable): SailCurves {
  const known = curves.get(table);
  if (known) return known;
  const positions = table.angleDegrees.map((degrees) => (degrees * Math.PI) / 180);
  const made: SailCurves = {
    first: positions[0]!,
    last: positions[positions.length - 1]!,
    lift: monotoneCurve({ positions, values: table.lift }),
    drag: monotoneCurve({ positions, values: table.drag }),
  };
  curves.set(table, made);
  return made;
}

function inDegrees(angle: number): number {
  return Number(((angle * 180) / Math.PI).toPrecision(6));
}
