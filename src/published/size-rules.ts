import { stockShells } from "../materials/block-rules.js";
import { convert } from "../quantity/parse.js";
import { leastBendRadius, leastGroove, nextInStock, pitchDiameter, shellLength } from "../reeving/block-geometry.js";
import { cheekContact } from "../reeving/cheek.js";
import { prepareLine } from "../reeving/line.js";
import { practiceRow, publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const inch = (value: number) => convert(value, "inch", "m");

/** Shell for a line that is known by its circumference [inch, inch]. */
function shellOf(circumference: number): number {
  return convert(shellLength(inch(circumference / Math.PI)), "m", "inch");
}

/** Groove over rope at which cheeks begin to touch, by halving. */
function grooveOfFirstContact(): number {
  const ropeDiameter = 0.008;
  let touching = 0.6;
  let free = 3;
  for (let step = 0; step < 60; step++) {
    const middle = (touching + free) / 2;
    const { touches } = cheekContact({ ropeDiameter, grooveWidth: middle * ropeDiameter, wrapAngle: Math.PI });
    if (touches) touching = middle;
    else free = middle;
  }
  return free;
}

/** What sharing a ring adds to the logarithm of the ratio of haul over load. */
function sharedExtra(lines: number): number {
  const rope = { diameter: 0.006, stiffness: { tensionTerm: 60, constantTerm: 0, diameterTerm: 0 } };
  const growth = (count: number) =>
    Math.log(
      prepareLine({
        rope,
        stations: [
          { kind: "ring", name: "ring", diameter: 0.014, wrapAngle: 1, frictionCoefficient: 0.1, lines: count },
        ],
      }).handForces(100).hauling / 100,
    );
  return 100 * (growth(lines) / growth(1) - 1);
}

const sharedRows = [2, 3, 4].map((lines) =>
  practiceRow(
    `shared-lead-${lines}`,
    `loss of ${lines} lines through one ring over that of one line, more by`,
    "25",
    "%",
    "lines that share a ring lose about a quarter more; in the logarithm of haul over load",
    () => sharedExtra(lines),
    1,
  ),
);

const rows: readonly CheckRow[] = [
  publishedRow("army-blocks", "shell", "shell of a block for line of 3 1/2 in round", "10 1/2", "inch", "§20-2", () =>
    shellOf(3.5),
  ),
  publishedRow("army-blocks", "stock", "block in stock for that line", "12", "inch", "§20-2", () =>
    nextInStock(shellOf(3.5), stockShells),
  ),
  publishedRow(
    "field-blocks",
    "shell",
    "shell over rope diameter, worked out by the rule of three circumferences",
    "9",
    "1",
    "¶30: nine times the rope diameter",
    () => shellLength(0.01) / 0.01,
  ),
  publishedRow("delaney-2022", "bend", "least bend of an 11 mm rope", "44", "mm", "p. 82", () =>
    convert(leastBendRadius(0.011), "m", "mm"),
  ),
  publishedRow(
    "bhavikatti-solids",
    "rope-thickness",
    "velocity ratio of a 500 mm wheel with 6 mm cord and a 200 mm axle with 20 mm cord",
    "2.3",
    "1",
    "example 6.11",
    () =>
      pitchDiameter({ sheaveDiameter: 0.5, ropeDiameter: 0.006 }) /
      pitchDiameter({ sheaveDiameter: 0.2, ropeDiameter: 0.02 }),
  ),
  {
    id: "cordage-institute-braided",
    quantity: "sheave over rope that bends it round four rope diameters",
    printed: "8",
    unit: "1",
    evidence: "independent",
    status: "from memory",
    source: "cordage-institute",
    place: "braided rope; worked out from the bend radius that another source prints",
    compute: () => (2 * leastBendRadius(0.01)) / 0.01,
  },
  practiceRow(
    "cheek-contact",
    "groove over rope at which the cheeks begin to rub",
    "1.10",
    "1",
    "a groove narrower than 1.10 rope diameters lets the rope touch the cheeks",
    grooveOfFirstContact,
  ),
  practiceRow(
    "groove-twenty",
    "groove over rope that a printed code asks for a 20 mm rope",
    "1.10",
    "1",
    "ten per cent wider than the rope",
    () => leastGroove(0.02).width / 0.02,
  ),
  ...sharedRows,
];

/** Rules for blocks, grooves and shared leads. */
export const sizeRules: CheckSet = { topic: "size", rows };
