import type { Boat } from "../boat/boat.js";
import { lineOf } from "../boat/ready.js";
import { lineStanding } from "../boat/standing.js";
import { figures } from "../quantity/print.js";
import type { Direction } from "../reeving/mechanism-loads.js";
import { ropeLinearDensity } from "../rope/make.js";
import { wetLinearDensity } from "../rope/wet-mass.js";
import type { Band } from "../sources/band.js";
import { balanced } from "./balance.js";
import { designLoadWorking } from "./boat-load-working.js";
import { type FormulaSymbol, formula } from "./formula.js";
import { type SumPart, sumWorking } from "./sum-working.js";
import type { WorkedInput } from "./symbol-value.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

/**
 * What a line of a boat asks of the hand in the design wind: its load without friction, and what is lost at each station.
 *
 *     T_hand = W / v ± Σ F   for each metre at the hand: plus when it is hauled, minus when it is eased
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @param direction  hauling or easing
 * @returns the working of the hand force [N]; nothing for a line that does not move
 * @throws ValueError for a name that no line has
 */
export function boatHandWorking(boat: Boat, name: string, direction: Direction): Working | undefined {
  const { middle, loads } = lineOf(boat, name);
  const { moves, handForce, stations } = middle.state(loads.design.value, direction);
  if (!moves) return undefined;
  const losing = stations
    .filter(({ loss }) => loss > 0)
    .map(({ name: station, loss }, index) => ({ symbol: `loss${index + 1}`, sign: `F_${index + 1}`, station, loss }));
  const symbols: Record<string, FormulaSymbol> = {
    hand: "handTension",
    load: { quantity: "loadTension", sign: "W", words: "load in the design wind" },
    velocityRatio: "velocityRatio",
  };
  const values: Record<string, WorkedInput> = {
    hand: handForce,
    load: designLoadWorking(boat, name),
    velocityRatio: middle.velocityRatio,
  };
  for (const { symbol, sign, station, loss } of losing) {
    symbols[symbol] = { quantity: "lostForce", sign, words: `lost at: ${station}` };
    values[symbol] = loss;
  }
  const terms = ["load / velocityRatio", ...losing.map(({ symbol }) => symbol)];
  return balanced({
    id: `hand-${direction}`,
    title: `${name}, ${direction}`,
    equations: [
      {
        words: "load and losses, on one metre at the hand",
        left: "hand",
        right: terms.join(direction === "hauling" ? " + " : " - "),
      },
    ],
    symbols,
    values,
    answer: "hand",
    source: "statics",
    valid: "a line that moves",
    mirrors: "prepareLine",
    allowed: 1e-6,
  });
}

/**
 * Mass of a line of a boat: its ropes by the metre, and its hardware.
 *
 *     m = Σ L · m' + m_h
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @param state  dry, or after it was under water; dry when absent
 * @returns the working of the mass [kg]
 * @throws ValueError for a name that no line has
 */
export function lineMassWorking(boat: Boat, name: string, state: "dry" | "wet" = "dry"): Working {
  const { pieces } = lineOf(boat, name);
  const symbols: Record<string, FormulaSymbol> = {};
  const values: Record<string, WorkedInput> = {};
  const terms = pieces.map(({ name: rope, make, rope: { mass }, length }, index) => {
    const model = ropeLinearDensity(make);
    const weighed: Band = mass === undefined ? model : { value: mass, low: mass, high: mass };
    const [long, dense] = [`length${index + 1}`, `density${index + 1}`];
    symbols[long] = { quantity: "lineLength", sign: `L_${index + 1}`, words: `length of ${rope}` };
    symbols[dense] = {
      quantity: "linearDensity",
      sign: `m'_${index + 1}`,
      words: `mass of a metre of ${rope}, ${state}`,
    };
    values[long] = length;
    values[dense] = state === "dry" ? weighed : weighed.value + wetLinearDensity(make).value - model.value;
    return `${long} * ${dense}`;
  });
  symbols.hardware = { quantity: "mass", sign: "m_h", words: "blocks, rings and cleats" };
  values.hardware = lineStanding(boat, name).budget.hardware;
  const wholeLine = formula({
    id: `mass-${state}`,
    title: `Mass of the line, ${state}: ${name}`,
    text: [...terms, "hardware"].join(" + "),
    symbols,
    result: "mass",
    source: "statics",
    valid: "the lengths of the boat file",
  });
  return worked(wholeLine, values);
}

/**
 * Price of a line of a boat, ropes and hardware new.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns the working of the price [currency of the file]
 * @throws ValueError for a name that no line has
 */
export function lineCostWorking(boat: Boat, name: string): Working {
  const { pieces } = lineOf(boat, name);
  const ropes = pieces.map(({ name: rope, length, rope: { price } }) => ({
    words: `${figures(length)} m of ${rope}`,
    amount: length * price.amount,
  }));
  const hardware = lineStanding(boat, name).budget.cost - ropes.reduce((sum, { amount }) => sum + amount, 0);
  const parts: SumPart[] = [
    ...ropes.map(({ words, amount }): SumPart => [words, amount]),
    ["blocks, rings and cleats", hardware],
  ];
  // A sum of at least one part has a working.
  return sumWorking({ id: "cost-of-line", title: `Cost new: ${name}`, quantity: "count", parts })!;
}
