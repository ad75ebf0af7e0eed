import type { Cover, CoverFibre, StrandCount } from "../materials/covers.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import { choice, toggle } from "./control.js";

/** Controls of a cover. */
export const coverControls = {
  strands: choice("Strands of the cover", { "8": "8, coarse", "16": "16", "24": "24, smooth" }, "8"),
  fibre: choice(
    "Cover of",
    { polyester: "polyester", aramidBlend: "aramid blend", bareCore: "stripped core" },
    "polyester",
  ),
  wet: toggle("Wet"),
};

/** Strands of a cover by the value of their control. */
export const strandCounts: Readonly<Record<"8" | "16" | "24", StrandCount>> = { 8: 8, 16: 16, 24: 24 };

/** The cover that controls of this kind ask for. */
export function coverOf(settings: {
  readonly strands: keyof typeof strandCounts;
  readonly fibre?: CoverFibre;
  readonly wet: boolean;
}): Cover {
  return { strands: strandCounts[settings.strands], fibre: settings.fibre ?? "polyester", wet: settings.wet };
}

/** Words for the treads of ratchets. */
export const treadWords = Object.fromEntries(
  Object.entries(treads).map(([name, { name: words }]) => [name, words]),
) as Readonly<Record<TreadName, string>>;
