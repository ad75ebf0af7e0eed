import type { Unit } from "mathjs";
import math from "mathjs/lib/browser/math.js";

/** The part of mathjs that this library uses for units. */
interface UnitParser {
  unit(text: string): Unit;
  createUnit(units: Record<string, { definition: string; aliases?: string[] }>): unknown;
}

/** An instance of our own with the sailor's units that mathjs lacks: the knot, the tex and the tonne-force. */
function createUnits(): UnitParser {
  const own = math.create(math.all) as unknown as UnitParser;
  own.createUnit({
    kn: { definition: "0.514444444444444444 m/s", aliases: ["knot", "knots", "kt", "kts"] },
    tex: { definition: "1e-6 kg/m" },
    tonf: { definition: "9806.65 N" },
  });
  return own;
}

let units: UnitParser | undefined;

/** The shared mathjs instance; its unit parser reads units only, it never runs text. */
export function unitParser(): UnitParser {
  units ??= createUnits();
  return units;
}
