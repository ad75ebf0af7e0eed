import { constructions, coreDiameterShare, ratedStrengthSpread } from "../materials/constructions.js";
import { fibres } from "../materials/fibres.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { checkedMake, type RopeMake } from "./make.js";
import { roundLinearDensity } from "./yarn.js";

/**
 * Strength or stiffness of a rope from that of its yarn.
 *
 *     F_b = η_c · σ_m · m'
 *
 * @param specificStrength  strength or stiffness of the yarn σ_m [N/(kg/m)], 0 to 1e9
 * @param linearDensity  m' of the part that carries [kg/m], above 0
 * @param conversion  η_c [-], 0 to 1
 * @returns break load, or stiffness [N]
 * Source: fibre-yarn-table, definition of tenacity. Example: ropeFromYarn({ specificStrength: 840_000, linearDensity: 0.076, conversion: 0.25 }) → 15960
 */
export function ropeFromYarn({
  specificStrength,
  linearDensity,
  conversion,
}: {
  readonly specificStrength: number;
  readonly linearDensity: number;
  readonly conversion: number;
}): number {
  return (
    within("conversion", conversion) *
    within("specificStrength", specificStrength) *
    within("linearDensity", linearDensity)
  );
}

/**
 * Break load of a new, straight, dry rope.
 *
 *     F_b = η_c · σ_m · φ ρ π d_core² / 4, or what the maker states, with its spread
 *
 * @param make  rope
 * @returns break load with its range [N]
 * @throws ValueError for a rope that contradicts itself
 * Valid as an estimate for comparing ropes; the maker's rated strength decides.
 * Source: fibre-yarn-table, tenacity of yarns; conversion and fill are records. Example: breakLoad({ fibre: "hmpeHighModulus", construction: "bareBraid", diameter: 0.002 }).value → 3683
 */
export function breakLoad(make: RopeMake): Band {
  const { ratedStrength } = make;
  if (ratedStrength === undefined) return yarnResult(make, "tenacity", "strengthConversion");
  checkedMake(make);
  const rated = within("breakLoad", ratedStrength, 1e-9);
  return bandOf({ spread: ratedStrengthSpread }, ({ spread }) => spread * rated);
}

/**
 * Stiffness of a worked rope: tension over strain.
 *
 *     EA = η_E · E_m · φ ρ π d_core² / 4
 *
 * @param make  rope
 * @returns axial stiffness with its range [N]
 * @throws ValueError for a rope that contradicts itself
 * Valid for a rope that has been loaded a few times; a new one gives more, for good, as its braid settles.
 * Source: fibre-yarn-table, modulus of yarns; conversion and fill are records. Example: ropeStiffness({ fibre: "polyester", construction: "doubleBraid", diameter: 0.006 }).value → 68283
 */
export function ropeStiffness(make: RopeMake): Band {
  return yarnResult(make, "modulus", "stiffnessConversion");
}

function yarnResult(
  make: RopeMake,
  property: "tenacity" | "modulus",
  conversion: "strengthConversion" | "stiffnessConversion",
): Band {
  const { fibre, construction, diameter, coverFibre } = checkedMake(make);
  const { density } = fibres[fibre];
  const { fill } = constructions[construction];
  const whole = { value: 1, low: 1, high: 1 };
  const share = coverFibre === undefined ? whole : coreDiameterShare;
  return bandOf(
    { density, fill, share, yarn: fibres[fibre][property], part: constructions[construction][conversion] },
    (values) =>
      ropeFromYarn({
        specificStrength: values.yarn,
        linearDensity: roundLinearDensity({
          diameter: values.share * diameter,
          density: values.density,
          fill: values.fill,
        }),
        conversion: values.part,
      }),
  );
}
