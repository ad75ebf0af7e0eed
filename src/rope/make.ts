import { type ConstructionName, constructions, coreDiameterShare } from "../materials/constructions.js";
import { type FibreName, fibres } from "../materials/fibres.js";
import { ValueError } from "../quantity/errors.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { roundLinearDensity } from "./yarn.js";

/** What a rope is made of. */
export interface RopeMake {
  /** Fibre that carries. */
  readonly fibre: FibreName;
  readonly construction: ConstructionName;
  /** Outside diameter under light tension [m]. */
  readonly diameter: number;
  /** Fibre of the cover, where the core carries alone. */
  readonly coverFibre?: FibreName;
  /** Break load that the maker states for this size [N]; worked out from the fibre when absent. */
  readonly ratedStrength?: number;
}

/**
 * Refuses a rope that contradicts itself: a cover belongs to the construction `coveredCore`, and only to that.
 *
 * @param make  rope
 * @returns the same rope
 * @throws ValueError for a cover without a covered construction, or the other way round
 * Source: common practice.
 */
export function checkedMake(make: RopeMake): RopeMake {
  within("ropeDiameter", make.diameter);
  const covered = make.construction === "coveredCore";
  if (covered === (make.coverFibre !== undefined)) return make;
  throw new ValueError({
    quantity: "cover of a rope",
    value: `construction "${make.construction}" with ${make.coverFibre === undefined ? "no cover fibre" : `a cover of ${make.coverFibre}`}`,
    allowed: 'a cover fibre exactly with the construction "coveredCore"',
    advice: "Name the cover's fibre, or choose a construction without a cover.",
  });
}

/**
 * Diameter of the part of a rope that carries.
 *
 *     d_core = s · d with a cover, otherwise d
 *
 * @param make  rope
 * @returns diameter with its range [m]
 * @throws ValueError for a rope that contradicts itself
 * Source: common practice; the share of a covered rope is a record. Example: carryingDiameter({ fibre: "hmpe", construction: "bareBraid", diameter: 0.003 }).value → 0.003
 */
export function carryingDiameter(make: RopeMake): Band {
  const { diameter, coverFibre } = checkedMake(make);
  if (coverFibre === undefined) return { value: diameter, low: diameter, high: diameter };
  return bandOf({ share: coreDiameterShare }, ({ share }) => share * diameter);
}

/**
 * Mass of a metre of dry rope.
 *
 *     m' = φ π/4 · (ρ d_core² + ρ_cover (d² − d_core²))
 *
 * @param make  rope
 * @returns linear density with its range [kg/m]
 * @throws ValueError for a rope that contradicts itself
 * Source: common practice; fill and densities are records. Example: ropeLinearDensity({ fibre: "hmpe", construction: "bareBraid", diameter: 0.002 }).value → 0.00216
 */
export function ropeLinearDensity(make: RopeMake): Band {
  const { fibre, construction, diameter, coverFibre } = checkedMake(make);
  const { fill } = constructions[construction];
  const core = fibres[fibre].density;
  if (coverFibre === undefined)
    return bandOf({ fill, core }, (values) =>
      roundLinearDensity({ diameter, density: values.core, fill: values.fill }),
    );
  return bandOf({ fill, core, cover: fibres[coverFibre].density, share: coreDiameterShare }, (values) => {
    const inner = values.share * diameter;
    const outer = Math.sqrt(diameter ** 2 - inner ** 2);
    return (
      roundLinearDensity({ diameter: inner, density: values.core, fill: values.fill }) +
      roundLinearDensity({ diameter: outer, density: values.cover, fill: values.fill })
    );
  });
}
