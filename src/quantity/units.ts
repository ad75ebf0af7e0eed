import { create, createUnitDependencies, type FactoryFunctionMap, type Unit, unitDependencies } from "mathjs";

/** The part of mathjs that this library uses for units. */
interface UnitParser {
  unit(text: string): Unit;
  createUnit(units: Record<string, { definition: string; aliases?: string[] }>): unknown;
}

/**
 * mathjs with units only, and the sailor's units that it lacks: the knot and the tex.
 * Loaded on first use: the numeric core never needs it.
 */
function createUnits(): UnitParser {
  const needed = { unitDependencies, createUnitDependencies } as FactoryFunctionMap;
  const math = create(needed) as unknown as UnitParser;
  math.createUnit({
    kn: { definition: "0.514444444444444444 m/s", aliases: ["knot", "knots", "kt", "kts"] },
    tex: { definition: "1e-6 kg/m" },
    tonf: { definition: "9806.65 N" },
  });
  return math;
}

let units: UnitParser | undefined;

/** The shared mathjs instance; its unit parser reads units only, it never runs text. */
export function unitParser(): UnitParser {
  units ??= createUnits();
  return units;
}
