// What numbers mean, and how they are read and printed

// What ropes, covers, surfaces and bearings are like
export { type Bearing, bearings } from "./materials/bearings.js";
export {
  type Cover,
  type CoverFibre,
  type CoverFriction,
  coverFriction,
  fibreFactors,
  type StrandCount,
  strandFactors,
  wetFactors,
} from "./materials/covers.js";
export { type Fibre, type FibreName, fibres } from "./materials/fibres.js";
export { type HeatLimits, heatLimits } from "./materials/heat-limits.js";
export { practice } from "./materials/practice.js";
export { type RubbedHardware, type RubbedHardwareName, rubbedHardware } from "./materials/rubbed-hardware.js";
export { hand, skinLimits } from "./materials/skin.js";
export { type StiffnessLaw, stiffnessLaws } from "./materials/stiffness.js";
export { type Exposure, exposures, lampToSun } from "./materials/sunlight.js";
export { type Surface, type SurfaceName, surfaces, type TreadName, treads } from "./materials/surfaces.js";
export {
  crownShare,
  fibreHeat,
  type HeatFibre,
  type SolidName,
  solids,
  type Thermal,
  yarnFill,
} from "./materials/thermal.js";
// How is it shown in a notebook?
export { answer, checks, coefficients, figure, question, result, show, table, verdicts } from "./notebook/display.js";
export type { Figure, Limit, Panel, Series, Shown, Table, TopScale } from "./notebook/output.js";
// Does it agree with what is published?
export { type BurnTime, burnTimes, burnTimesSource } from "./published/burn-times.js";
export { compare } from "./published/compare.js";
export { frictionOf, type RaiseLowerTest, raiseLowerTests, wrapOf } from "./published/raise-and-lower.js";
export { publishedChecks } from "./published/registry.js";
export type { CheckResult, CheckRow, Topic } from "./published/row.js";
export { OutsideModelError, ReevingError, Refusal, UnitError, ValueError } from "./quantity/errors.js";
export { within } from "./quantity/guard.js";
export { convert, parseQuantity } from "./quantity/parse.js";
export { axisTitle, figures, printForce, printQuantity } from "./quantity/print.js";
export { type Outcome, outcomeOf, type Verdict } from "./quantity/verdict.js";
export { type QuantityName, vocabulary } from "./quantity/vocabulary.js";
export type { VocabularyEntry } from "./quantity/vocabulary-entry.js";
// What is lost at one turn?
export { apparentFriction, splitTwoAngles } from "./reeving/apparent-friction.js";
// And in a million cases at once?
export { type BatchCases, type BatchResult, type BatchSolver, compileBatch } from "./reeving/batch.js";
export { bearingRatio } from "./reeving/bearing.js";
export { bendingLaw, type Stiffness, stiffnessOf } from "./reeving/bending.js";
export { blockLoad } from "./reeving/block-load.js";
export { cheekContact } from "./reeving/cheek.js";
// What does the hand feel at the end of the whole line?
export { type EnergyBalance, energyBalance } from "./reeving/energy.js";
export { type HandForces, type Line, type LineState, type PreparedLine, prepareLine } from "./reeving/line.js";
export { type Mechanism, mechanismOf } from "./reeving/mechanism.js";
export { loadDependentFriction, powerLawPulledSide, powerLawYieldingSide } from "./reeving/power-law.js";
export type { Body, Reeving, RopeRun, Station, Tackle } from "./reeving/reeving.js";
// Which rules of thumb and closed forms is it compared with?
export { efficiency, leadLineFactor, ratioFromPull, ratioFromRaiseLower, tenthRulePull } from "./reeving/rules.js";
export { type FactorName, type Factors, scaledLine } from "./reeving/scaled.js";
export { capstanRatio, holdingFriction, wedgeFriction } from "./reeving/sliding.js";
export type { Cleat, Measured, Ratchet, Ring, Rope, Sheave, Turn } from "./reeving/station.js";
export { type Sweep, sweepLoads } from "./reeving/sweep.js";
export { doubleBurton, firstSystem, thirdSystem } from "./reeving/systems.js";
export { type TackleInput, tackle } from "./reeving/tackle.js";
export { type Cause, type CauseLoss, type TurnLoss, turnLoss } from "./reeving/turn.js";
// How hot do rope, hardware and hand get, and what does the sun do?
export { contactTemperature, diffusivity, effusivity, type Solid } from "./rope/effusivity.js";
export { type Flash, type FlashInput, flashRise } from "./rope/flash-temperature.js";
export { bulkRise, frictionHeat, frictionPower, passageRise } from "./rope/friction-heat.js";
export { gripLoss } from "./rope/grip-loss.js";
export { fluxRise, heldSurfaceTemperature, streamTemperatureAt } from "./rope/half-space.js";
export {
  type HandEase,
  type HandHeat,
  type HandLimit,
  handContact,
  handHeat,
  handRecords,
  safeForceByRecord,
  safeHandSpeed,
  safeLostForce,
} from "./rope/hand-burn.js";
export { type HandContact, type HandCourse, handArea, handCourse } from "./rope/hand-course.js";
export {
  type HardwareEase,
  type HardwareHeat,
  hardwareHeat,
  hardwareRecords,
  safeHardwareForce,
  safeHardwareSpeed,
} from "./rope/hardware-heat.js";
export { type HeatHistory, type HistoryInput, heatHistory, warmingElsewhere } from "./rope/heat-history.js";
export { easeVerdict, handVerdict, touchVerdict } from "./rope/heat-verdict.js";
export { type HotTouch, safeTouchTemperature } from "./rope/hot-touch.js";
export { type Layered, layerResponse } from "./rope/layer-response.js";
export { type Patch, patchResponse } from "./rope/patch-response.js";
export { ropeHeatTransfer } from "./rope/rope-stream.js";
export { burnDose, damageRate, timeToBurn } from "./rope/skin-burn.js";
export { sunlightRetained } from "./rope/sunlight.js";
// Where numbers come from
export { type Band, bandOf } from "./sources/band.js";
export { bibliography, type Source, type SourceId, sourceOf } from "./sources/bibliography.js";
export { type Coefficient, coefficient, origin } from "./sources/coefficient.js";
export type { Evidence, Status } from "./sources/status.js";
// How hard does the wind pull on the sheet, the halyard, the outhaul?
export { airDensity, dynamicPressure } from "./wind/air.js";
export { apparentWind, heeledApparentWind, trueWind } from "./wind/apparent.js";
export { beaufortSpeed } from "./wind/beaufort.js";
export { boomSheetLoad, fixedLeadSheetLoad, forceAcrossBoom } from "./wind/boom-sheet.js";
export { clewSheetLoad, leadSheetLoad } from "./wind/clew-sheet.js";
export { sailCoefficients, sailEditions } from "./wind/coefficients.js";
export { halyardLoad, outhaulLoad } from "./wind/corner-load.js";
export { edgePull } from "./wind/edge.js";
export { gustFactors, gustLoadFactor } from "./wind/gust.js";
export { coefficientOfRule, ruleLoad } from "./wind/load-rule.js";
export {
  logLawFactor,
  offshoreGust,
  offshoreMeanSpeed,
  offshoreTurbulence,
  powerLawFactor,
} from "./wind/profile.js";
export { coefficientForce, sailForce } from "./wind/sail-force.js";
export { roughnessLengths, shearExponents } from "./wind/shear.js";
