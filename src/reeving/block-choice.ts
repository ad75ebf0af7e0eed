import type { BentMaterial } from "../materials/bend-strength.js";
import type { SheaveRule } from "../materials/block-rules.js";
import { within } from "../quantity/guard.js";
import { figures, printForce } from "../quantity/print.js";
import type { Margins, Verdict } from "../quantity/verdict.js";
import { bendStrength } from "../rope/bend-strength.js";
import type { Band } from "../sources/band.js";
import { blockLoad } from "./block-load.js";
import { groovePressure } from "./groove-pressure.js";
import { bendVerdict, grooveVerdict, larger, mm, type RopeOnBlock, verdictOf } from "./size-verdicts.js";
import { blockLoss, type Running } from "./sized-block.js";

/** A line on a block of a catalogue, under load. */
export interface LineOnBlock extends Running, RopeOnBlock {
  /** Fibre that carries the load, or wire. */
  readonly material: BentMaterial;
  /** Rule for the least sheave. */
  readonly rule: SheaveRule;
  readonly load: number;
  readonly wrapAngle: number;
}

/** Everything that speaks for and against a block. */
export interface BlockChoice {
  /** Pull that it costs while hauling [N]. */
  readonly loss: Band;
  /** [kg] */
  readonly mass: number;
  /** Share of the line's strength that is left at the bend [-]. */
  readonly retainedStrength: Band;
  /** [Pa] */
  readonly groovePressure: number;
  /** Pull on the block while hauling [N]. */
  readonly blockLoad: number;
  readonly bend: Verdict;
  readonly groove: Verdict;
  readonly strength: Verdict;
}

/**
 * What a block costs, weighs and does to its line, and whether bend, groove and working load hold.
 *
 * @param line  rope and bearing with ranges, block, catalogue, load [N], wrap angle [rad]
 * @returns loss [N], mass [kg], strength left [-], groove pressure [Pa], block load [N], three verdicts
 * @throws ValueError for an impossible size, load or angle
 * Source: common practice for what is looked at; each part names its own source.
 */
export function blockForLine(line: LineOnBlock): BlockChoice {
  const { block, ropeDiameter, material, load } = line;
  const { diameter: sheaveDiameter, grooveWidth } = block;
  const loss = blockLoss({ ...line, sheaveDiameter, grooveWidth });
  return {
    loss,
    mass: block.mass,
    retainedStrength: bendStrength({ diameterRatio: sheaveDiameter / ropeDiameter, material }),
    groovePressure: groovePressure({ tension: load, ropeDiameter, sheaveDiameter }),
    blockLoad: pullOn(line, loss.value),
    bend: bendVerdict(line),
    groove: grooveVerdict(line),
    strength: loadVerdict(line, loss),
  };
}

function pullOn({ load, wrapAngle }: LineOnBlock, loss: number): number {
  return blockLoad({ loadTension: within("loadTension", load, 1e-9), handTension: load + loss, wrapAngle });
}

/** Working load over pull on the block while hauling. */
function loadVerdict(line: LineOnBlock, loss: Band): Verdict {
  const { block, ropeDiameter } = line;
  const middle = Math.max(1e-9, pullOn(line, loss.value));
  const worst = Math.max(1e-9, pullOn(line, loss.high));
  const margins = (workingLoad: number): Margins => ({ middle: workingLoad / middle, worst: workingLoad / worst });
  return verdictOf(
    `working load of the ${block.name} with ${mm(ropeDiameter)} line under ${figures(line.load)} N`,
    `the line pulls on it with ${printForce(middle)}, up to ${printForce(worst)}; it is good for ${printForce(block.workingLoad)}`,
    margins(block.workingLoad),
    [larger(line).map(({ name, workingLoad }) => ({ words: `the ${name}`, margins: margins(workingLoad) }))],
  );
}
