import { tenthRulePull } from "../reeving/rules.js";
import type { SourceId } from "../sources/bibliography.js";
import { counted } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";

/** A printed example of the rule "a tenth of the load for every sheave". */
interface Example {
  readonly id: string;
  readonly quantity: string;
  readonly parts: number;
  readonly hauledFrom: "moving" | "fixed";
  readonly leadBlocks?: number;
  readonly load: number;
  readonly unit: string;
  readonly printed: string;
  readonly source?: SourceId;
  readonly place?: string;
}

const examples: readonly Example[] = [
  {
    id: "luff-advantage",
    quantity: "luff tackle to advantage, 4 tons",
    parts: 4,
    hauledFrom: "moving",
    load: 4,
    unit: "t",
    printed: "1.3",
  },
  {
    id: "gun-disadvantage",
    quantity: "gun tackle to disadvantage, 4 tons",
    parts: 2,
    hauledFrom: "fixed",
    load: 4,
    unit: "t",
    printed: "2.4",
  },
  {
    id: "three-fold-disadvantage",
    quantity: "three-fold purchase to disadvantage, 12 tons",
    parts: 6,
    hauledFrom: "fixed",
    load: 12,
    unit: "t",
    printed: "3.2",
  },
  {
    id: "two-fold-advantage",
    quantity: "two-fold purchase to advantage, 20 cwt",
    parts: 5,
    hauledFrom: "moving",
    load: 20,
    unit: "cwt",
    printed: "5.6",
  },
  {
    id: "treble-advantage",
    quantity: "treble purchase to advantage, 40 tons",
    parts: 7,
    hauledFrom: "moving",
    load: 40,
    unit: "t",
    printed: "9 1/7",
  },
  {
    id: "luff-disadvantage",
    quantity: "luff tackle to disadvantage, 15 tons",
    parts: 3,
    hauledFrom: "fixed",
    load: 15,
    unit: "t",
    printed: "6.5",
  },
  {
    id: "three-fold-lead",
    quantity: "three-fold purchase to advantage with a lead block, 12 tons",
    parts: 7,
    hauledFrom: "moving",
    leadBlocks: 1,
    load: 12,
    unit: "t",
    printed: "3",
  },
  {
    id: "five-fold-leads",
    quantity: "five-fold purchase to advantage, lead counted once, 42 tons",
    parts: 11,
    hauledFrom: "moving",
    leadBlocks: 1,
    load: 42,
    unit: "t",
    printed: "8",
  },
  {
    id: "single-whip",
    quantity: "single whip, 100 lbf",
    parts: 1,
    hauledFrom: "fixed",
    load: 100,
    unit: "lbf",
    printed: "110",
    source: "uscg-exam",
    place: "tackle questions",
  },
  {
    id: "gun-tackle",
    quantity: "gun tackle, 100 lbf",
    parts: 2,
    hauledFrom: "fixed",
    load: 100,
    unit: "lbf",
    printed: "60",
    source: "uscg-exam",
    place: "question 2093",
  },
];

function pull({ parts, hauledFrom, leadBlocks, load }: Example): number {
  return tenthRulePull({ load, ...counted(parts, hauledFrom, leadBlocks) });
}

function row(example: Example): CheckRow {
  const source = example.source ?? "nicholls-seamanship";
  return {
    id: `${source}-${example.id}`,
    quantity: `pull by the tenth rule: ${example.quantity}`,
    printed: example.printed,
    unit: example.unit,
    evidence: "published",
    status: "published",
    source,
    place: example.place ?? "worked examples on purchases",
    compute: () => pull(example),
  };
}

const nicholls = {
  evidence: "published",
  status: "published",
  source: "nicholls-seamanship",
  place: "worked examples on purchases",
} as const;

/** Pull over load of a three-fold purchase, turned over: the printed "real advantage". */
function realAdvantage(parts: number, hauledFrom: "moving" | "fixed"): number {
  return 1 / tenthRulePull({ load: 1, ...counted(parts, hauledFrom) });
}

const more: readonly CheckRow[] = [
  {
    ...nicholls,
    id: "nicholls-seamanship-compound",
    quantity: "pull by the tenth rule: gun tackle to advantage on the fall of a two-fold purchase, 10 tons",
    printed: "1 1/3",
    unit: "t",
    compute: () => {
      const first = counted(4, "fixed");
      const second = counted(3, "moving");
      return tenthRulePull({ load: 10, parts: first.parts * second.parts, sheaves: first.sheaves + second.sheaves });
    },
  },
  {
    ...nicholls,
    id: "nicholls-seamanship-real-advantage",
    quantity: "load over pull by the tenth rule: three-fold purchase to advantage",
    printed: "4.37",
    unit: "1",
    compute: () => realAdvantage(7, "moving"),
  },
  {
    ...nicholls,
    id: "nicholls-seamanship-real-disadvantage",
    quantity: "load over pull by the tenth rule: three-fold purchase to disadvantage",
    printed: "3.75",
    unit: "1",
    compute: () => realAdvantage(6, "fixed"),
  },
];

/** Seamanship and examination examples of the linear rule, with parts and sheaves counted on the reeving itself. */
export const tenthRule: CheckSet = { topic: "purchase", rows: [...examples.map(row), ...more] };
