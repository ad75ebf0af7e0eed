import { within } from "../quantity/guard.js";
import { dynamicPressure } from "./air.js";
import { type SailCoefficientInput, type SailCoefficients, sailCoefficients } from "./coefficients.js";
import { insideModel } from "./validity.js";

/** Air, wind and area of a sail. */
interface WindOnSail {
  /** Area of the sail [m²]. */
  readonly sailArea: number;
  /** Apparent wind speed [m/s]. */
  readonly apparentWindSpeed: number;
  /** Air density [kg/m³]. */
  readonly airDensity: number;
}

/** Input of the force with given coefficients. */
export interface CoefficientForceInput extends WindOnSail, SailCoefficients {
  /** Angle from the bow to the apparent wind [rad]. */
  readonly apparentWindAngle: number;
}

/** Input of the force from a table. */
export interface SailForceInput extends WindOnSail, SailCoefficientInput {
  /** Effective aspect ratio of the rig [-]: adds the drag that lift induces. Left out, that drag is left out. */
  readonly effectiveAspectRatio?: number;
}

/** Force of the air on a sail, in the plane of the apparent wind. */
export interface SailForce extends SailCoefficients {
  /** Force across the apparent wind [N]; below zero where the sail lifts to windward. */
  readonly lift: number;
  /** Force along the apparent wind [N]. */
  readonly drag: number;
  /** Whole force [N]. */
  readonly sailForce: number;
  /** Part of the force ahead along the boat [N]. */
  readonly drive: number;
  /** Part of the force across the boat, to leeward above zero [N]. */
  readonly side: number;
  /** Angle from the bow, over the lee side, to the direction in which the force pulls [rad]. */
  readonly forceAngle: number;
}

/**
 * Force of the air on a sail from its lift and drag coefficients.
 *
 *     L = C_L · q · A,  D = C_D · q · A,  drive = L · sin β − D · cos β,  side = L · cos β + D · sin β
 *
 * @param liftCoefficient    C_L [-], −3 to 3
 * @param dragCoefficient    C_D [-], 0 to 3
 * @param sailArea           A [m²], 0.0001 to 2000
 * @param apparentWindSpeed  V_A [m/s], 0 to 100
 * @param apparentWindAngle  β, from the bow [rad], 0 to π
 * @param airDensity         rho [kg/m³], 0 to 5
 * @returns lift, drag, whole force, drive and side force [N], direction from the bow [rad]
 * Valid in the plane of the apparent wind on an upright boat; on a heeled boat give the heeled apparent wind.
 * Source: statics, resolution of lift and drag into the axes of the boat.
 * Example: coefficientForce({ liftCoefficient: 1.5, dragCoefficient: 0, sailArea: 10, apparentWindSpeed: 10, apparentWindAngle: Math.PI / 2, airDensity: 1.225 }).drive → 918.75
 */
export function coefficientForce(input: CoefficientForceInput): SailForce {
  const liftCoefficient = within("liftCoefficient", input.liftCoefficient);
  const dragCoefficient = within("dragCoefficient", input.dragCoefficient);
  const beta = within("apparentWindAngle", input.apparentWindAngle);
  const scale = dynamicPressure(input) * within("sailArea", input.sailArea);
  const lift = liftCoefficient * scale;
  const drag = dragCoefficient * scale;
  const drive = lift * Math.sin(beta) - drag * Math.cos(beta);
  const side = lift * Math.cos(beta) + drag * Math.sin(beta);
  return {
    liftCoefficient,
    dragCoefficient,
    lift,
    drag,
    sailForce: Math.hypot(lift, drag),
    drive,
    side,
    forceAngle: Math.atan2(side, drive),
  };
}

/**
 * Force of the air on a well-trimmed sail, from the table of one edition.
 *
 *     C_L and C_D from the table; with an aspect ratio C_D grows by C_L² · (1 / (π · AR) + 0.005)
 *
 * @param edition               table that is read
 * @param sail                  sail, among those of the edition
 * @param sailArea              A [m²], 0.0001 to 2000
 * @param apparentWindSpeed     V_A [m/s], 0 to 100
 * @param apparentWindAngle     β, from the bow [rad], within the table
 * @param airDensity            rho [kg/m³], 0 to 5
 * @param effectiveAspectRatio  AR [-], 0.5 to 20, optional: left out, the drag induced by lift is left out
 * @returns lift, drag, whole force, drive and side force [N], direction from the bow [rad]
 * Valid for best trim: the tables know nothing of where the sheet stands, nor where on the sail the force acts.
 * Source: hazen-1980 for the induced drag; the edition for the rest.
 * Example: sailForce({ edition: "orc-2013", sail: "main", sailArea: 7, apparentWindSpeed: 6.17333, apparentWindAngle: Math.PI / 2, airDensity: 1.225 }).sailForce → 194.2
 */
export function sailForce({ edition, sail, effectiveAspectRatio, ...wind }: SailForceInput): SailForce {
  const { liftCoefficient, dragCoefficient } = sailCoefficients({ edition, sail, ...wind });
  const induced = effectiveAspectRatio === undefined ? 0 : inducedDrag(liftCoefficient, effectiveAspectRatio);
  return coefficientForce({ ...wind, liftCoefficient, dragCoefficient: dragCoefficient + induced });
}

function inducedDrag(liftCoefficient: number, effectiveAspectRatio: number): number {
  const aspect = insideModel({
    quantity: "effective aspect ratio",
    value: within("aspectRatio", effectiveAspectRatio),
    unit: "1",
    minimum: 0.5,
    maximum: 20,
    advice: "It is the square of the effective height of the rig over the sail area: 2 to 8 on most boats.",
  });
  return liftCoefficient ** 2 * (1 / (Math.PI * aspect) + 0.005);
}
