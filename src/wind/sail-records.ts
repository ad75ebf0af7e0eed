import { type Coefficient, coefficient } from "../sources/coefficient.js";
import { type SailCoefficientInput, sailCoefficients, sailEditions } from "./coefficients.js";

/** How far the coefficient of another edition may lie from the one that is taken: a tenth to a third apart. */
const editionSpread = 0.2;

/**
 * Lift and drag coefficient of a sail at one angle as records, for a page that shows where its load comes from.
 *
 * @param choice  edition, sail and apparent wind angle [rad], as for `sailCoefficients`
 * @returns records of lift and drag [-]; their spread is that between printed editions
 * @throws ValueError, OutsideModelError as `sailCoefficients`
 * Source: orc-coefficients-2013, orc-coefficients-undated, hazen-1980, ims-coefficients-older, tables of sail coefficients. Example: sailRecords({ edition: "orc-2013", sail: "main", apparentWindAngle: Math.PI / 2 }).lift.high → 1.35
 */
export function sailRecords(choice: SailCoefficientInput): { readonly lift: Coefficient; readonly drag: Coefficient } {
  const { liftCoefficient, dragCoefficient } = sailCoefficients(choice);
  const { source, title } = sailEditions[choice.edition];
  const angle = Math.round((choice.apparentWindAngle * 180) / Math.PI);
  const record = (value: number) => {
    const spread = editionSpread * Math.abs(value);
    const place = `${title}, ${choice.sail} at ${angle}°; spread between editions`;
    return coefficient({
      value,
      unit: "1",
      low: value - spread,
      high: value + spread,
      status: "published",
      source,
      place,
    });
  };
  return { lift: record(liftCoefficient), drag: record(dragCoefficient) };
}
