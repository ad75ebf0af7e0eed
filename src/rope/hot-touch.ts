import { hand, skinLimits } from "../materials/skin.js";
import { type SolidName, solids, type Thermal } from "../materials/thermal.js";
import { logRoot } from "../numerics/log-root.js";
import { within } from "../quantity/guard.js";
import { type Band, bandOf } from "../sources/band.js";
import { contactTemperature, diffusivity, effusivity } from "./effusivity.js";
import { heldSurfaceTemperature } from "./half-space.js";
import { burnDose } from "./skin-burn.js";

/** A bare hand on something hot and thick. */
export interface HotTouch {
  readonly solid: SolidName;
  readonly duration: number;
}

const looks = 40;

/** Hottest block that is looked at, above the palm [K]. */
const excesses = { least: 0.1, most: 700 } as const;

function recordsOf(solid: SolidName) {
  const { skin } = solids;
  const block: Thermal = solids[solid];
  return {
    skinConductivity: skin.conductivity,
    skinDensity: skin.density,
    skinSpecificHeat: skin.specificHeat,
    blockConductivity: block.conductivity,
    blockDensity: block.density,
    blockSpecificHeat: block.specificHeat,
    palm: hand.temperature,
    livingDepth: hand.livingDepth,
    activation: skinLimits.activation,
  };
}

type TouchValues = Readonly<Record<keyof ReturnType<typeof recordsOf>, number>>;

/** Dose of living skin while the hand lies on a block [-]. */
function doseOn(blockTemperature: number, duration: number, values: TouchValues): number {
  const skin = {
    conductivity: values.skinConductivity,
    density: values.skinDensity,
    specificHeat: values.skinSpecificHeat,
  };
  const block = {
    conductivity: values.blockConductivity,
    density: values.blockDensity,
    specificHeat: values.blockSpecificHeat,
  };
  const surfaceTemperature = contactTemperature(
    { effusivity: effusivity(skin), temperature: values.palm },
    { effusivity: effusivity(block), temperature: blockTemperature },
  );
  const times = Array.from({ length: looks }, (_, index) => ((index + 1) * duration) / looks);
  const temperatures = times.map((time) =>
    heldSurfaceTemperature({
      initialTemperature: values.palm,
      surfaceTemperature,
      depth: values.livingDepth,
      time,
      thermalDiffusivity: diffusivity(skin),
    }),
  );
  const law = { damageFactor: skinLimits.damageFactor.value, activation: values.activation };
  return burnDose([values.palm, ...temperatures], [0, ...times], law);
}

/**
 * Hottest block that a bare hand may touch for a time without a burn.
 *
 *     contact temperature from both effusivities, warmth down to the living skin, dose 1
 *
 * @param solid  of the block, thick and clean
 * @param duration  of the touch [s], above 0
 * @returns temperature of the block with its range [K]
 * @throws ValueError for a duration that cannot be
 * Valid for a palm and a firm touch of up to some ten seconds; a thin part cools under the hand, so it may be hotter.
 * Source: henriques-1947 for the dose, cengel-foot for the contact. Example: safeTouchTemperature({ solid: "aluminium", duration: 0.5 }).value > 338 → true
 */
export function safeTouchTemperature({ solid, duration }: HotTouch): Band {
  const seconds = within("duration", duration, 1e-3);
  return bandOf(recordsOf(solid), (values) => {
    const margin = (excess: number) => -Math.log(doseOn(values.palm + excess, seconds, values));
    return values.palm + logRoot(margin, excesses);
  });
}
