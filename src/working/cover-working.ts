import { type Cover, coverFriction } from "../materials/covers.js";
import type { Surface } from "../materials/surfaces.js";
import { type FormulaSymbol, formula } from "./formula.js";
import type { WorkedInput } from "./symbol-value.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

const names = ["surface", "strands", "fibre", "water"] as const;
const symbols: Readonly<Record<(typeof names)[number], FormulaSymbol>> = {
  surface: { quantity: "frictionCoefficient", sign: "μ_0", words: "friction of 24 strands of polyester" },
  strands: { quantity: "rangeFactor", sign: "f_n", words: "these strands over 24" },
  fibre: { quantity: "rangeFactor", sign: "f_f", words: "this fibre over polyester" },
  water: { quantity: "rangeFactor", sign: "f_w", words: "wet over dry" },
};

/**
 * The working of the friction of a cover on a tread or a ring: the product of its records.
 *
 *     μ = μ_0 · f_n · f_f   and   · f_w when wet
 *
 * @param cover  strands, fibre, wet or dry
 * @param surface  tread or ring
 * @returns the working of the friction [-]
 * Example: coverWorking({ strands: 24, fibre: "polyester", wet: false }, treads.smooth).value → 0.15
 */
export function coverWorking(cover: Cover, surface: Surface): Working {
  const { parts } = coverFriction(cover, surface);
  const used = names.slice(0, parts.length);
  return worked(
    formula<Record<string, FormulaSymbol>>({
      id: cover.wet ? "wet-cover-friction" : "cover-friction",
      title: "Friction of a cover",
      text: used.join(" * "),
      symbols: Object.fromEntries(used.map((name) => [name, symbols[name]])),
      result: "frictionCoefficient",
      source: "common practice",
      valid: "clean rope",
      mirrors: "coverFriction",
    }),
    Object.fromEntries(used.map((name, index): [string, WorkedInput] => [name, parts[index]!])),
  );
}
