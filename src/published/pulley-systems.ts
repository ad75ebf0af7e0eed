import type { Reeving } from "../reeving/reeving.js";
import { efficiency } from "../reeving/rules.js";
import { doubleBurton, firstSystem, thirdSystem } from "../reeving/systems.js";
import { tackle } from "../reeving/tackle.js";
import type { SourceId } from "../sources/bibliography.js";
import { publishedRow } from "./published-row.js";
import { cascade, frictionless } from "./purchase-models.js";
import type { CheckRow, CheckSet } from "./row.js";

const turn = frictionless;
const simple = (parts: number, hauledFrom: "moving" | "fixed") => tackle({ parts, hauledFrom, turn });

/** Printed advantage of a purchase, frictionless: found by force balance, not by counting parts. */
function advantage(
  source: SourceId,
  id: string,
  tackleName: string,
  printed: string,
  place: string,
  ...reevings: Reeving[]
): CheckRow {
  const quantity = `load over pull without friction: ${tackleName}`;
  const compute = () => 1 / cascade(...reevings).handForces(1).hauling;
  // A printed advantage counts parts: it is a whole number, met to rounding.
  return { ...publishedRow(source, id, quantity, printed, "1", place, compute), readingError: 1e-9 };
}

const third = (ropes: number) => cascade(thirdSystem({ ropes, turn })).velocityRatio;
const first = (ropes: number) => cascade(firstSystem({ ropes, turn })).velocityRatio;

const rows: readonly CheckRow[] = [
  advantage("jutsum-knots", "single-burton", "single burton", "3", "Purchases (10)", thirdSystem({ ropes: 2, turn })),
  advantage(
    "jutsum-knots",
    "double-burton-singles",
    "double burton of three single blocks",
    "5",
    "Purchases (11)",
    doubleBurton({ form: "three singles", turn }),
  ),
  advantage(
    "jutsum-knots",
    "double-burton-double",
    "double burton of one double and two single blocks",
    "5",
    "Purchases (11)",
    doubleBurton({ form: "double and singles", turn }),
  ),
  advantage(
    "jutsum-knots",
    "three-fold-advantage",
    "three-fold purchase to advantage",
    "7",
    "Purchases (8)",
    simple(7, "moving"),
  ),
  advantage(
    "jutsum-knots",
    "four-fold-disadvantage",
    "four-fold purchase to disadvantage",
    "8",
    "Purchases (9)",
    simple(8, "fixed"),
  ),
  advantage(
    "griffiths-manual",
    "runner-luff",
    "luff tackle on the end of a runner",
    "6",
    "blocks and tackles",
    simple(2, "moving"),
    simple(3, "fixed"),
  ),
  advantage(
    "griffiths-manual",
    "runner-luff-advantage",
    "luff tackle to advantage on the end of a runner",
    "8",
    "blocks and tackles",
    simple(2, "moving"),
    simple(4, "moving"),
  ),
  advantage(
    "griffiths-manual",
    "treble-double",
    "treble and double block to advantage",
    "6",
    "blocks and tackles",
    simple(6, "moving"),
  ),
  advantage(
    "knight-sailing",
    "luff-upon-luff",
    "luff upon luff, both to advantage",
    "16",
    "p. 56 of the scan",
    simple(4, "moving"),
    simple(4, "moving"),
  ),
  publishedRow(
    "khurmi-mechanics",
    "first-system",
    "efficiency of a first system of 3 pulleys, 320 N raised by 50 N",
    "80",
    "%",
    "example 11.17, p. 206",
    () => 100 * efficiency({ load: 320, pull: 50, velocityRatio: first(3) }),
  ),
  publishedRow(
    "khurmi-mechanics",
    "third-system",
    "pull of a third system of 4 pulleys, 1800 N at 75 % efficiency",
    "160",
    "N",
    "example 11.19, p. 209",
    () => 1800 / (0.75 * third(4)),
  ),
  publishedRow(
    "bhavikatti-solids",
    "third-system",
    "efficiency of a third system of 3 pulleys, 1000 N raised by 180 N",
    "79.3650793651",
    "%",
    "example 6.9",
    () => 100 * efficiency({ load: 1000, pull: 180, velocityRatio: third(3) }),
  ),
  publishedRow(
    "bhavikatti-solids",
    "two-sets",
    "pull on two third systems of 2 pulleys that share it, 2500 N at 70 % efficiency",
    "595.238095238",
    "N",
    "example 6.10",
    () => 2500 / (0.7 * (third(2) + third(2))),
  ),
];

/** Several ropes and moving blocks: printed advantages and worked examples. */
export const pulleySystems: CheckSet = { topic: "purchase", rows };
