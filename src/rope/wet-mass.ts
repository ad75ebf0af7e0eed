import { constructions, coreDiameterShare } from "../materials/constructions.js";
import { fibres } from "../materials/fibres.js";
import { voidsFilled, waterDensity } from "../materials/water.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { checkedMake, type RopeMake } from "./make.js";
import { roundLinearDensity } from "./yarn.js";

/**
 * Mass of a metre of rope that has been under water and shaken once.
 *
 *     m'_wet = m'_dry + ρ_w · w · (1 − φ) · A, for core and cover each with its own share w of voids that stay full
 *
 * @param make  rope
 * @returns wet linear density with its range [kg/m]
 * @throws ValueError for a rope that contradicts itself
 * Valid a minute after it left the water; water inside the fibres is left out: polyester and HMPE hold under 1 %.
 * Source: common practice: a cover soaks, a stripped HMPE core does not. Example: wetLinearDensity({ fibre: "hmpe", construction: "bareBraid", diameter: 0.002 }).value → 0.00229
 */
export function wetLinearDensity(make: RopeMake): Band {
  const { fibre, construction, diameter, coverFibre } = checkedMake(make);
  const { fill } = constructions[construction];
  if (coverFibre === undefined)
    return bandOf({ fill, density: fibres[fibre].density, full: voidsFilled[fibre], water: waterDensity }, (values) =>
      soaked({ ...values, diameter }),
    );
  return bandOf(
    {
      fill,
      share: coreDiameterShare,
      core: fibres[fibre].density,
      cover: fibres[coverFibre].density,
      coreFull: voidsFilled[fibre],
      coverFull: voidsFilled[coverFibre],
      water: waterDensity,
    },
    ({ fill, share, water, ...values }) => {
      const inner = share * diameter;
      const outer = Math.sqrt(diameter ** 2 - inner ** 2);
      return (
        soaked({ diameter: inner, density: values.core, fill, full: values.coreFull, water }) +
        soaked({ diameter: outer, density: values.cover, fill, full: values.coverFull, water })
      );
    },
  );
}

/** Fibre in a round of the given fill, and water in a share of its voids [kg/m]. */
function soaked(part: {
  readonly diameter: number;
  readonly density: number;
  readonly fill: number;
  readonly full: number;
  readonly water: number;
}): number {
  const { diameter, density, fill, full, water } = part;
  return (
    roundLinearDensity({ diameter, density, fill }) +
    (1 - fill) * full * roundLinearDensity({ diameter, density: water })
  );
}

/**
 * Water in a fibre as a share of its whole mass, from water as a share of its dry mass.
 *
 *     content = regain / (1 + regain)
 *
 * @param regain  water over dry mass [-], 0 to 1
 * @returns water over whole mass [-], 0 to 0.5
 * Source: textile-regain-notes, definitions. Example: moistureContent(0.085) → 0.0783
 */
export function moistureContent(regain: number): number {
  return within("share", regain) / (1 + regain);
}

/**
 * Water in a fibre as a share of its dry mass, from water as a share of its whole mass.
 *
 *     regain = content / (1 − content)
 *
 * @param content  water over whole mass [-], 0 to 0.9
 * @returns water over dry mass [-]
 * Source: textile-regain-notes, definitions. Example: moistureRegain(0.07) → 0.0753
 */
export function moistureRegain(content: number): number {
  return within("share", content, 0, 0.9) / (1 - content);
}

/** A fibre in a blend. */
export interface BlendPart {
  /** Share of the dry mass [-]. */
  readonly share: number;
  /** Water over dry mass of this fibre [-]. */
  readonly regain: number;
}

/**
 * Regain of fibres side by side, such as a cover of two fibres.
 *
 *     R = Σ share · R_part
 *
 * @param parts  shares of the dry mass [-] that add up to 1, and regains [-]
 * @returns water over dry mass [-]
 * @throws ValueError when the shares do not add up to 1
 * Source: textile-regain-notes, blends. Example: blendRegain([{ share: 0.65, regain: 0.004 }, { share: 0.35, regain: 0.085 }]) → 0.03235
 */
export function blendRegain(parts: readonly BlendPart[]): number {
  within("share", Math.abs(1 - parts.reduce((sum, { share }) => sum + within("share", share), 0)), 0, 1e-9);
  return parts.reduce((sum, { share, regain }) => sum + share * within("share", regain), 0);
}
