import type { FatigueRates } from "../crew/fatigue.js";
import { modelEndurance } from "../crew/fatigue.js";
import { imbalanceAllowed, type MotionEnergy } from "../motion/ledger.js";
import { energyBalance } from "../reeving/energy.js";
import type { LineState } from "../reeving/line.js";
import { type PurchaseInput, ratioFromPull } from "../reeving/rules.js";
import { balanced } from "./balance.js";
import type { FormulaSymbol } from "./formula.js";
import type { Working } from "./working.js";

const energy = (sign: string, words: string): FormulaSymbol => ({ quantity: "work", sign, words });

/**
 * The working of a ratio that was found by halving: the pull of the purchase with the ratio put in.
 *
 *     K^S · (K − 1) / (K^N − 1) = P / W
 *
 * @param purchase  P / W [-], parts N [-], sheaves S [-]
 * @returns the working; its result is the ratio K [-], above 1
 * @throws ValueError for a pull that no ratio gives
 * Example: ratioBalance({ pullOverLoad: 0.45, parts: 3, sheaves: 3 }).value → 1.166
 */
export function ratioBalance(purchase: PurchaseInput & { readonly pullOverLoad: number }): Working {
  const { pullOverLoad, parts, sheaves } = purchase;
  return balanced({
    id: "ratio-of-purchase",
    title: "Ratio of one sheave that gives a purchase its pull",
    equations: [
      {
        words: "pull over load",
        left: "tensionRatio^sheaveCount * (tensionRatio - 1) / (tensionRatio^ropeParts - 1)",
        right: "pullOverLoad",
      },
    ],
    symbols: {
      tensionRatio: { quantity: "tensionRatio", sign: "K", words: "tension ratio at each sheave" },
      sheaveCount: "sheaveCount",
      ropeParts: { quantity: "ropeParts", sign: "N" },
      pullOverLoad: { quantity: "loadRatio", sign: "P/W", words: "pull over load" },
    },
    values: { tensionRatio: ratioFromPull(purchase), sheaveCount: sheaves, ropeParts: parts, pullOverLoad },
    answer: "tensionRatio",
    source: "wire-rope-users-manual",
    valid: "parallel parts, the same ratio above 1 at each sheave, no drag",
    mirrors: "ratioFromPull",
  });
}

/**
 * The working of an endurance time: the three shares of a muscle at the moment at which none rests any more.
 *
 *     M_A + M_F + M_R = 1,   M_F = (F f / R) · (1 − e^(−R T_e)),   M_A = f
 *
 * @param load  share f [-], fatigue rate F [1/s], recovery rate R [1/s]
 * @returns the working; its result is the endurance time [s]
 * @throws ValueError for a load that is kept up for ever, or numbers that cannot be
 * Example: fatigueBalance({ share: 0.5, fatigueRate: 0.0098, recoveryRate: 0.00064 }).value → 105.5
 */
export function fatigueBalance(load: FatigueRates & { readonly share: number }): Working {
  const { share, fatigueRate, recoveryRate } = load;
  const part = (sign: string, words: string): FormulaSymbol => ({ quantity: "capacity", sign, words });
  return balanced({
    id: "three-compartments",
    title: "A muscle at the end of a steady hold",
    equations: [
      { words: "all of the muscle", left: "active + tired + rested", right: "1" },
      { words: "the part that holds", left: "active", right: "loadShare" },
      {
        words: "the part that tired",
        left: "tired",
        right: "fatigueRate * loadShare / recoveryRate * (1 - exp(-recoveryRate * enduranceTime))",
      },
    ],
    symbols: {
      active: part("M_A", "share that holds"),
      tired: part("M_F", "share that is tired"),
      rested: part("M_R", "share that still rests"),
      loadShare: "loadShare",
      fatigueRate: "fatigueRate",
      recoveryRate: "recoveryRate",
      enduranceTime: "enduranceTime",
    },
    values: {
      active: share,
      tired: 1 - share,
      rested: 0,
      loadShare: share,
      fatigueRate,
      recoveryRate,
      enduranceTime: modelEndurance(load),
    },
    solved: ["active", "tired", "rested", "enduranceTime"],
    answer: "enduranceTime",
    source: "xia-frey-law-2008",
    valid: "a steady load up to 70 % of maximum, above the share that is kept up for ever",
    mirrors: "modelEndurance",
  });
}

/**
 * The working of the losses of a line: work in, work out and what is lost, for each metre at the hand.
 *
 *     work in = work out + lost
 *
 * @param line  state of a line that moves [N], and its velocity ratio [-]
 * @returns the working; its result is the work lost [J] on one metre
 * @throws OutsideModelError when the balance does not close
 * Example: lineBalance({ state: prepareLine({ rope: { diameter: 0.006, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } }, stations: [{ kind: "measured", name: "lead", tensionRatio: 1.1 }] }).state(100, "hauling"), velocityRatio: 1 }).value → 10
 */
export function lineBalance(line: { readonly state: LineState; readonly velocityRatio: number }): Working {
  const { workIn, workOut, lost } = energyBalance(line);
  return balanced({
    id: "line-energy",
    title: "Work on one metre of line at the hand",
    equations: [{ words: "work", left: "workIn", right: "workOut + lost" }],
    symbols: {
      workIn: energy("E_in", "work put in"),
      workOut: energy("E_out", "work got out"),
      lost: energy("E_lost", "work lost at the stations"),
    },
    values: { workIn, workOut, lost },
    answer: "lost",
    source: "statics",
    valid: "a line that moves",
    mirrors: "energyBalance",
  });
}

/**
 * The working of a motion that was followed in steps: where its energy came from and where it went.
 *
 *     hand + other crew + weight + wind = motion + losses, within 0.1 %
 *
 * @param works  energies of the motion [J]
 * @returns the working; its result is the work of the hand [J]
 * @throws OutsideModelError when more than 0.1 % is missing
 * Example: motionBalance({ hand: 10, retrieval: 0, gravity: -6, wind: 0, kinetic: 1, sail: 1, stations: 2, joining: 0, stopped: 0, imbalance: 0 }).value → 10
 */
export function motionBalance(works: MotionEnergy): Working {
  const { imbalance: _, ...values } = works;
  return balanced({
    id: "motion-energy",
    title: "Energy of the motion, from start to end",
    equations: [
      {
        words: "energy",
        left: "hand + retrieval + gravity + wind",
        right: "kinetic + sail + stations + joining + stopped",
      },
    ],
    symbols: {
      hand: energy("E_hand", "work of the hand"),
      retrieval: energy("E_crew", "work of a crew at the load end"),
      gravity: energy("E_weight", "work of the weight"),
      wind: energy("E_wind", "work of the wind"),
      kinetic: energy("E_kin", "energy of motion gained"),
      sail: energy("E_sail", "lost to friction and air at the sail"),
      stations: energy("E_turns", "lost at the turns of the line"),
      joining: energy("E_join", "lost where rope or sail is set moving"),
      stopped: energy("E_stop", "taken up by a hand or an end stop"),
    },
    values,
    answer: "hand",
    source: "statics",
    valid: "a motion followed in small steps: its balance closes within 0.1 %",
    mirrors: "haul",
    allowed: imbalanceAllowed,
  });
}
