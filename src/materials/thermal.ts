import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { Status } from "../sources/status.js";
import { type FibreName, fibres } from "./fibres.js";

/** How a material takes up and passes on heat. */
export interface Thermal {
  readonly name: string;
  /** Across the fibres where there are fibres [W/(m K)]. */
  readonly conductivity: Coefficient;
  /** [kg/m³] */
  readonly density: Coefficient;
  /** [J/(kg K)] */
  readonly specificHeat: Coefficient;
}

type Spread = readonly [low: number, value: number, high: number];

function record([low, value, high]: Spread, unit: string, place: string, source?: SourceId): Coefficient {
  const status: Status = source === undefined ? "from memory" : "published";
  return coefficient({ value, unit, low, high, status, place, ...(source !== undefined && { source }) });
}

function solid(name: string, conductivity: Spread, density: Spread, specificHeat: Spread, place: string): Thermal {
  return {
    name,
    conductivity: record(conductivity, "W/(m K)", place),
    density: record(density, "kg/m^3", place),
    specificHeat: record(specificHeat, "J/(kg K)", place),
  };
}

/** What a rope rubs on. The oxide on anodised aluminium is too thin to count. */
export const solids = {
  aluminium: solid("aluminium", [120, 160, 210], [2650, 2700, 2800], [870, 900, 920], "wrought alloys, handbook range"),
  anodised: solid(
    "anodised aluminium",
    [120, 160, 210],
    [2650, 2700, 2800],
    [870, 900, 920],
    "as aluminium: the oxide is some hundredths of a millimetre thick",
  ),
  stainlessSteel: solid(
    "stainless steel",
    [13, 16, 20],
    [7700, 7900, 8000],
    [460, 500, 520],
    "austenitic steel, handbook range",
  ),
  plastic: solid(
    "plastic",
    [0.2, 0.3, 0.4],
    [1100, 1400, 1450],
    [1300, 1500, 1700],
    "acetal and polyamide, handbook range",
  ),
  leather: solid(
    "leather or synthetic leather",
    [0.08, 0.15, 0.2],
    [600, 900, 1000],
    [1300, 1500, 1700],
    "dry glove leather, handbook range; a wet glove takes up more",
  ),
  skin: solid("skin", [0.2, 0.37, 0.5], [1000, 1100, 1200], [3000, 3400, 3700], "handbook range; blood flow left out"),
} as const satisfies Record<string, Thermal>;

/** Name of a material that is no fibre. */
export type SolidName = keyof typeof solids;

/** A fibre of the table, or the blend of aramid and polyester that covers are made of. */
export type HeatFibre = FibreName | "aramidBlend";

const judged = "no printed value found";

function fibre(name: FibreName, conductivity: Coefficient, specificHeat: Coefficient): Thermal {
  return { name: fibres[name].name, conductivity, density: fibres[name].density, specificHeat };
}

const across = (spread: Spread, place = judged) => record(spread, "W/(m K)", `across the fibre; ${place}`);
const capacity = (spread: Spread, place = judged) => record(spread, "J/(kg K)", place);
const hmpeAcross = record(
  [0.2, 0.33, 0.4],
  "W/(m K)",
  "across the fibre at 300 K; printed as 3.3 mW/(cm K)",
  "choy-1993",
);
const hmpeCapacity = capacity([1700, 1900, 2100], "handbook range of polyethylene 1850 to 2000");
const aramidAcross = across([0.04, 0.12, 0.2], "handbook range 0.04 to 0.2");
const aramidCapacity = capacity([1200, 1420, 1500], "handbook value 1420");

/** Heat in single fibres; air between them lowers what a yarn takes up, see `yarnFill`. */
export const fibreHeat = {
  polyamide: fibre(
    "polyamide",
    across([0.2, 0.25, 0.3], "handbook range of solid polyamide"),
    record([1400, 1460, 1700], "J/(kg K)", "Table 6.1, polyamide 6.6 dry; 6: 1430; more when warm", "morton-hearle"),
  ),
  polyester: fibre(
    "polyester",
    across([0.12, 0.17, 0.22], "handbook range 0.14 to 0.2"),
    record(
      [1000, 1030, 1500],
      "J/(kg K)",
      "Table 6.1, dry at room temperature; rises sharply near 70 °C",
      "morton-hearle",
    ),
  ),
  polypropylene: fibre(
    "polypropylene",
    across([0.1, 0.15, 0.22], "handbook range of solid polypropylene"),
    capacity([1650, 1800, 2000], "handbook range"),
  ),
  hmpe: fibre("hmpe", hmpeAcross, hmpeCapacity),
  hmpeHighModulus: fibre("hmpeHighModulus", hmpeAcross, hmpeCapacity),
  aramid: fibre("aramid", aramidAcross, aramidCapacity),
  aramidHighModulus: fibre("aramidHighModulus", aramidAcross, aramidCapacity),
  aramidBlend: {
    name: "aramid and polyester blend",
    conductivity: across([0.05, 0.15, 0.22], "between aramid and polyester"),
    density: record([1380, 1410, 1440], "kg/m^3", "between polyester and aramid"),
    specificHeat: capacity([1000, 1200, 1500], "between polyester and aramid"),
  },
  lcp: fibre("lcp", across([0.1, 0.2, 0.4]), capacity([900, 1100, 1500])),
  pbo: fibre("pbo", across([0.1, 0.2, 0.4]), capacity([900, 1000, 1400])),
} as const satisfies Record<HeatFibre, Thermal>;

/** Share of a pressed yarn that is fibre; the rest is air, which neither stores nor carries much heat [-]. */
export const yarnFill: Coefficient = record(
  [0.6, 0.75, 0.9],
  "1",
  "pressed yarn of a cover; density and conductivity are both lowered by it",
);

/** Share of the contact where strands really touch: the crowns of the braid [-]. */
export const crownShare: Coefficient = record(
  [0.2, 0.45, 0.8],
  "1",
  "crowns of a braided cover; an ink print of a loaded rope would narrow it",
);
