import { apiTable } from "./api-table.js";
import { bandCoverage } from "./band-coverage.js";
import { capstanExamples } from "./capstan-examples.js";
import { cleatExamples } from "./cleat-examples.js";
import { compare } from "./compare.js";
import { crewEndurance } from "./crew-endurance.js";
import { fitExamples } from "./fit-examples.js";
import { fitTrials } from "./fit-trials.js";
import { gripHolds } from "./grip-holds.js";
import { gripPractice } from "./grip-practice.js";
import { heatBrakes } from "./heat-brakes.js";
import { heatPractice } from "./heat-practice.js";
import { heatSolids } from "./heat-solids.js";
import { measuredTackles } from "./measured-tackles.js";
import { motionBodies } from "./motion-bodies.js";
import { motionIntegrated } from "./motion-integrated.js";
import { motionLimits } from "./motion-limits.js";
import { motionPractice } from "./motion-practice.js";
import { pulleySystems } from "./pulley-systems.js";
import { raiseAndLower } from "./raise-and-lower.js";
import { strengthPractice, taperPractice } from "./rope-practice.js";
import type { CheckResult, CheckSet, Topic } from "./row.js";
import { sensitivityExamples } from "./sensitivity-examples.js";
import { setShapeExamples } from "./set-shape-examples.js";
import { sheaveExamples } from "./sheave-examples.js";
import { sizeLosses } from "./size-losses.js";
import { sizeRules } from "./size-rules.js";
import { ropeStrengthChecks } from "./strength-ropes.js";
import { strengthRuleChecks } from "./strength-rules.js";
import { yarnChecks } from "./strength-yarn.js";
import { tenthRule } from "./tenth-rule.js";
import { windAerodynamicsHomework } from "./wind-aerodynamics-homework.js";
import { windApparentTests } from "./wind-apparent-tests.js";
import { windAsce7 } from "./wind-asce-7.js";
import { windBeaufort } from "./wind-beaufort.js";
import { windDenker } from "./wind-denker.js";
import { windDynamicPressure } from "./wind-dynamic-pressure.js";
import { windEn1991 } from "./wind-en-1991.js";
import { windFao56 } from "./wind-fao-56.js";
import { windFlagProblem } from "./wind-flag-problem.js";
import { windIec61400 } from "./wind-iec-61400.js";
import { windIrodov } from "./wind-irodov.js";
import { windIso2533 } from "./wind-iso-2533.js";
import { windIso19901 } from "./wind-iso-19901.js";
import { windKutz } from "./wind-kutz.js";
import { windLoadTable } from "./wind-load-table.js";
import { windNoon } from "./wind-noon.js";
import { windOrc2013 } from "./wind-orc-2013.js";
import { windOrcSpeedGuide } from "./wind-orc-speed-guide.js";
import { windPowerProgram } from "./wind-power-program.js";
import { windProfileTable } from "./wind-profile-table.js";
import { windSagOfLines } from "./wind-sag-of-lines.js";
import { windStandardAtmosphere } from "./wind-standard-atmosphere.js";
import { windStatics } from "./wind-statics.js";
import { windTurbulenceProgram } from "./wind-turbulence-program.js";
import { wireRopeManual } from "./wire-rope-manual.js";

/** Every set of expected values, in the order in which they are shown. */
const sets: readonly CheckSet[] = [
  wireRopeManual,
  tenthRule,
  pulleySystems,
  measuredTackles,
  apiTable,
  raiseAndLower,
  capstanExamples,
  sheaveExamples,
  strengthRuleChecks,
  ropeStrengthChecks,
  yarnChecks,
  strengthPractice,
  taperPractice,
  gripHolds,
  gripPractice,
  motionBodies,
  motionLimits,
  motionIntegrated,
  motionPractice,
  cleatExamples,
  setShapeExamples,
  crewEndurance,
  windAerodynamicsHomework,
  windDynamicPressure,
  windApparentTests,
  windAsce7,
  windBeaufort,
  windDenker,
  windEn1991,
  windFao56,
  windFlagProblem,
  windIec61400,
  windIrodov,
  windIso19901,
  windIso2533,
  windKutz,
  windLoadTable,
  windNoon,
  windOrc2013,
  windOrcSpeedGuide,
  windPowerProgram,
  windProfileTable,
  windSagOfLines,
  windStandardAtmosphere,
  windStatics,
  windTurbulenceProgram,
  sizeRules,
  sizeLosses,
  heatBrakes,
  heatSolids,
  heatPractice,
  sensitivityExamples,
  bandCoverage,
  fitExamples,
  fitTrials,
];

/**
 * Compares the models of one topic with every expected value that is kept for it.
 *
 * @param topic  one of the subjects
 * @returns comparisons, each in the unit of its row
 * Example: publishedChecks("purchase").every((check) => check.holds) → true
 */
export function publishedChecks(topic: Topic): CheckResult[] {
  return sets.filter((set) => set.topic === topic).flatMap((set) => set.rows.map(compare));
}
