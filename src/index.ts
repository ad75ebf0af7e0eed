// What do numbers mean, and how are they read, printed and judged?

export { OutsideModelError, ReevingError, Refusal, UnitError, ValueError } from "./quantity/errors.js";
export { within } from "./quantity/guard.js";
export { convert, parseQuantity } from "./quantity/parse.js";
export { figures, printForce } from "./quantity/print.js";
export { axisTitle, printQuantity } from "./quantity/quantity-text.js";
export { type Outcome, outcomeOf, outcomes, type Verdict, worseBy } from "./quantity/verdict.js";
export { type QuantityName, vocabulary } from "./quantity/vocabulary.js";
export type { VocabularyEntry } from "./quantity/vocabulary-entry.js";

// Where do numbers come from, and how sure are they?

export { type Band, bandOf } from "./sources/band.js";
export { bibliography, type SourceId, sourceOf } from "./sources/bibliography.js";
export { type Coefficient, coefficient, origin } from "./sources/coefficient.js";
export type { Source } from "./sources/source.js";
export type { Evidence, Status } from "./sources/status.js";

// How hard does the wind pull on the sheet, the halyard, the outhaul?

export { airDensity, dynamicPressure } from "./wind/air.js";
export { apparentWind, heeledApparentWind, trueWind } from "./wind/apparent.js";
export { beaufortSpeed } from "./wind/beaufort.js";
export { boomSheetLoad, fixedLeadSheetLoad, forceAcrossBoom } from "./wind/boom-sheet.js";
export { clewSheetLoad, leadSheetLoad } from "./wind/clew-sheet.js";
export { sailCoefficients, sailEditions } from "./wind/coefficients.js";
export { halyardLoad, outhaulLoad } from "./wind/corner-load.js";
export { edgePull, windOnEdge } from "./wind/edge.js";
export { gustFactors, gustLoadFactor } from "./wind/gust.js";
export { coefficientOfRule, ruleLoad } from "./wind/load-rule.js";
export { logLawFactor, offshoreGust, offshoreMeanSpeed, offshoreTurbulence, powerLawFactor } from "./wind/profile.js";
export { coefficientForce, sailForce } from "./wind/sail-force.js";
export { sailRecords } from "./wind/sail-records.js";
export { roughnessLengths, shearExponents } from "./wind/shear.js";

// What are ropes, covers and surfaces like?

export { type RopeUse, useFactors, wetStrength } from "./materials/ageing.js";
export {
  type Construction,
  type ConstructionName,
  constructions,
  coreDiameterShare,
  ratedStrengthSpread,
} from "./materials/constructions.js";
export {
  type Cover,
  type CoverFibre,
  type CoverFriction,
  coverFriction,
  coverName,
  fibreFactors,
  type StrandCount,
  strandFactors,
  wetFactors,
} from "./materials/covers.js";
export { type CoreKind, coreKinds, type RopeEnd, type RopeEndName, ropeEnds } from "./materials/ends.js";
export { type Fibre, type FibreName, fibres } from "./materials/fibres.js";
export { practice } from "./materials/practice.js";
export { grooveFilling, handComfort, safetyFactors } from "./materials/safety.js";
export { splicing } from "./materials/splicing.js";
export { type StiffnessLaw, stiffnessLaws } from "./materials/stiffness.js";
export { strengthRules } from "./materials/strength-rules.js";
export { type Surface, type SurfaceName, surfaces, type TreadName, treads } from "./materials/surfaces.js";
export { voidsFilled, waterDensity } from "./materials/water.js";

// What is lost at one turn?

export { type Bearing, bearings } from "./materials/bearings.js";
export { apparentFriction, splitTwoAngles } from "./reeving/apparent-friction.js";
export { bearingRatio } from "./reeving/bearing.js";
export { collarMoment, frictionOfMoment, sealDrag } from "./reeving/bearing-moments.js";
export { bendingLaw, type Stiffness, stiffnessOf } from "./reeving/bending.js";
export { blockLoad } from "./reeving/block-load.js";
export { cheekContact } from "./reeving/cheek.js";
export { loadDependentFriction, powerLawPulledSide, powerLawYieldingSide } from "./reeving/power-law.js";
export { type PairWraps, sheaveWraps } from "./reeving/sheave-wraps.js";
export { sideLeadLoss } from "./reeving/side-lead.js";
export { capstanRatio, holdingFriction, wedgeFriction } from "./reeving/sliding.js";
export type { Cleat, Measured, Ratchet, Ring, Rope, Sheave, Turn } from "./reeving/station.js";
export { type Cause, type CauseLoss, type TurnLoss, turnLoss } from "./reeving/turn.js";

// What does a purchase do?

export { type Mechanism, mechanismOf } from "./reeving/mechanism.js";
export type { Body, Reeving, RopeRun, Station, Tackle } from "./reeving/reeving.js";
export { efficiency, leadLineFactor, ratioFromPull, ratioFromRaiseLower, tenthRulePull } from "./reeving/rules.js";
export { doubleBurton, firstSystem, thirdSystem } from "./reeving/systems.js";
export { type TackleInput, tackle } from "./reeving/tackle.js";

// What does the hand feel at the end of the whole line?

export { type BatchCases, type BatchResult, type BatchSolver, compileBatch } from "./reeving/batch.js";
export { type EnergyBalance, energyBalance } from "./reeving/energy.js";
export { type HangingLine, hangingTension, runOutLoad } from "./reeving/hanging-line.js";
export { type JoinedForces, joinedForces } from "./reeving/joined-lines.js";
export { type HandForces, type Line, type LineState, type PreparedLine, prepareLine } from "./reeving/line.js";
export { type FactorName, type Factors, scaledLine } from "./reeving/scaled.js";
export { type Sweep, sweepLoads } from "./reeving/sweep.js";

// Which cover grips, on which tread, and what does it wear?

export { type ChafeInput, chafeRate, chafeVerdict, type TouchingLines } from "./materials/chafe.js";
export { fraying, type Rubbing, type RubbingFibre, rubbing } from "./materials/rubbing.js";
export { fibreWear, treadHarshness, type WearInput, wearRate, wearRule, wearVerdict } from "./materials/wear.js";
export { type CoverEffect, type CoverTrial, coverEffects, type LineFriction } from "./reeving/cover-effect.js";
export { type CoverDemands, coverVerdicts } from "./reeving/cover-verdict.js";
export { holdingWrap, type RatchetHold, type RatchetInput, ratchetHold } from "./reeving/ratchet-hold.js";

// Does the cleat hold, and does the shape stay?

export { type CamCleat, cleats, gripRecords, type HornCleat, type Jammer, type VeeCleat } from "./materials/cleats.js";
export { type CreepLaw, creepLaws } from "./materials/creep.js";
export { type StiffnessRatio, stiffnessConversion, stiffnessRatios } from "./materials/elasticity.js";
export { drumSurface, type Winch, winchRecords } from "./materials/winches.js";
export {
  type CamInput,
  type CamRope,
  type CamShape,
  camGrip,
  camSlipLoad,
  lockingAngle,
  lockingFriction,
} from "./reeving/cam-cleat.js";
export { type BittenRope, type CleatSize, cleatStands, coverStands, leastHeld } from "./reeving/cleat-size.js";
export { type HoldCase, type HoldChange, holdOutcome, holdVerdict } from "./reeving/hold.js";
export { type HornInput, type HornRope, hornHold, hornSlipLoad, tailNeeded, turnsToHold } from "./reeving/horn.js";
export {
  type JammerInput,
  type JammerRelease,
  type JammerRope,
  jammerGrip,
  jammerRelease,
  jammerSlipLoad,
  selfEnergising,
} from "./reeving/jammer.js";
export { curvedFaceFriction, frictionAngle, type JawGrip, type JawInput, jawGrip } from "./reeving/jaw.js";
export {
  type Held,
  type InCleat,
  jammerLetGo,
  type LetGo,
  type Loaded,
  letGo,
  liftLetGo,
  type TurnLeft,
  type Wound,
  woundLetGo,
} from "./reeving/let-go.js";
export {
  bestPullAngle,
  camLiftOut,
  type LiftOutInput,
  type LiftOutRope,
  liftOutForce,
  type VeeRelease,
  veeLiftOut,
} from "./reeving/lift-out.js";
export {
  type ShapeInput,
  type ShapeLost,
  type Span,
  type StretchInput,
  shapeLost,
  slipLoadAtSail,
  stretchAtSail,
} from "./reeving/set-shape.js";
export { type ShapeCase, type ShapeChange, shapeVerdict } from "./reeving/shape-verdict.js";
export type { SlipLoad } from "./reeving/slip-load.js";
export {
  grooveFactor,
  ridgeDraw,
  type VeeInput,
  type VeeRope,
  veeGrip,
  veeSlipLoad,
} from "./reeving/vee-cleat.js";
export { type WedgeInput, wedgeDrive, wedgeRelease } from "./reeving/wedge.js";
export {
  type Gearing,
  type HandleInput,
  handleForce,
  powerRatio,
  type WinchForces,
  type WinchLine,
  winchForces,
} from "./reeving/winch.js";
export { type CreepInput, creepStrain, logCreep, steadyCreepRate } from "./rope/creep.js";
export {
  quickStiffness,
  type Segment,
  segmentStretch,
  seriesStretch,
  slowStiffness,
  stiffnessFromTest,
} from "./rope/stretch.js";

// How strong, heavy and thin may a line be, and where does its cover end?

export { type BendCurve, type BentMaterial, bendCurveOf, bendCurves } from "./materials/bend-strength.js";
export { fastening } from "./materials/lashing-shackle.js";
export { bendStrength, leastBendRatio } from "./rope/bend-strength.js";
export { breakLoad, ropeFromYarn, ropeStiffness } from "./rope/break-load.js";
export { type Fastening, type Lashing, lashing, lashingRounds, shackle, shackleFor } from "./rope/lashing.js";
export { type LineMass, lineMass, type RopeSegment } from "./rope/line-mass.js";
export { carryingDiameter, type RopeMake, ropeLinearDensity } from "./rope/make.js";
export { type RetainedStrength, retainedStrength, type Weakening } from "./rope/retained.js";
export { squareRule, squareRuleSize, workingLoad } from "./rope/rules.js";
export { strippedCore, type Taper, type TaperPlan, taper, taperVerdict } from "./rope/taper.js";
export { type LimitName, type LineJob, type LineLimit, lineLimits } from "./rope/thin-limits.js";
export {
  howThin,
  type RopeKind,
  type SizeStanding,
  stockDiameters,
  type Thinnest,
  thinVerdict,
} from "./rope/thinnest.js";
export { type BlendPart, blendRegain, moistureContent, moistureRegain, wetLinearDensity } from "./rope/wet-mass.js";
export { breakingLength, roundDiameter, roundLinearDensity, specificStrength } from "./rope/yarn.js";

// Where does a bigger block pay, and where is a ring enough?

export { blockLosses } from "./materials/block-losses.js";
export { blockRules, type SheaveRule, sheaveRules, stockShells } from "./materials/block-rules.js";
export {
  demoBlocks,
  demoNarrowBlocks,
  demoRings,
  type Fitting,
  type MassLaw,
  massLaws,
} from "./materials/block-sizes.js";
export { type BlockChoice, blockForLine, type LineOnBlock } from "./reeving/block-choice.js";
export {
  type Groove,
  leastBendRadius,
  leastGroove,
  leastSheave,
  nextInStock,
  pitchDiameter,
  sheaveByCircumference,
  shellLength,
} from "./reeving/block-geometry.js";
export { blockMass } from "./reeving/block-mass.js";
export { groovePressure, loadOfGroovePressure } from "./reeving/groove-pressure.js";
export {
  type BothLosses,
  type Duty,
  equalLossLoad,
  type RingOrSheave,
  ringAgainstBlock,
  ringEnoughAngle,
} from "./reeving/ring-or-sheave.js";
export type { RunningRing } from "./reeving/running-ring.js";
export { type LeadForces, type SharedLead, type SharedLeadForces, sharedLead } from "./reeving/shared-lead.js";
export { handForcesOfSize, type SizedForces, type SizedLine, type SizeStep, sizeSteps } from "./reeving/size-gain.js";
export {
  bendVerdict,
  grooveVerdict,
  type LeadChoice,
  type RopeOnBlock,
  runOutVerdict,
} from "./reeving/size-verdicts.js";
export { type BlockLossInput, blockLoss, type Running } from "./reeving/sized-block.js";

// How hot do rope, hardware and hand get, and what does the sun do?

export { type HeatLimits, heatLimits } from "./materials/heat-limits.js";
export { type RubbedHardware, type RubbedHardwareName, rubbedHardware } from "./materials/rubbed-hardware.js";
export { hand, skinLimits } from "./materials/skin.js";
export { type Exposure, exposures, lampToSun } from "./materials/sunlight.js";
export {
  crownShare,
  fibreHeat,
  type HeatFibre,
  type SolidName,
  solids,
  type Thermal,
  yarnFill,
} from "./materials/thermal.js";
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

// Can this crew hold it all day?

export { acceptableEffort } from "./crew/acceptable-effort.js";
export { type AllDay, allDayFactor, allDayVerdicts, type RatedOption } from "./crew/all-day.js";
export { type Crew, type CrewDay, crewDay } from "./crew/crew-day.js";
export { type CrewDays, type CrewDaysInput, type Crews, crewDays, type DayColumns } from "./crew/crew-days.js";
export {
  cutIntervals,
  type DaySchedule,
  dayIntervals,
  type Interval,
  type Leg,
  type Race,
  type Repeat,
} from "./crew/day-schedule.js";
export { enduranceShare, enduranceTime, rememberedEndurance, singleRateEndurance } from "./crew/endurance.js";
export {
  endlessShare,
  type FatigueRates,
  holdTime,
  modelEndurance,
  ratesOf,
  seamFactor,
  steppedEndurance,
} from "./crew/fatigue.js";
export { type GripDemand, gripDemand, holdersOf, holdingTension } from "./crew/grip-demand.js";
export {
  type GripNormName,
  type GripStrength,
  gripShare,
  gripStrength,
  type MeanNormName,
  type Person,
} from "./crew/grip-strength.js";
export { gripOnDiameter, type HandHold, holdName, palmFriction } from "./crew/hand-hold.js";
export { runningHold, runningHolders } from "./crew/hand-on-running-rope.js";
export { type CrewSample, sampleCrews } from "./crew/sample-crews.js";
export { dayAtHand, type SheetOption } from "./crew/sheet-option.js";
export { effortLimits, trimmingSpells } from "./materials/people-activity.js";
export {
  enduranceLaws,
  exponentialFatigueRate,
  fatigueSets,
  type MuscleGroup,
  personalSpread,
  rohmertTerms,
  seamShare,
} from "./materials/people-fatigue.js";
export { type Hand, protocolFactor, type Sex } from "./materials/people-grip.js";
export {
  axialHold,
  gloveAnchors,
  palmAnchors,
  palmFactors,
  palmOnCover,
  palmOnFibre,
  thickGrips,
} from "./materials/people-palm.js";
export { runningRopeHold } from "./materials/people-running.js";

// How fast does it go up and come down?

export { hauling, hoisting } from "./materials/hauling.js";
export type { CoursePoint } from "./motion/course.js";
export { hoistWork, terminalSpeed } from "./motion/fall.js";
export {
  bestSpeedShare,
  type HandLaw,
  handPower,
  hillForce,
  meanForce,
  type Pull,
  reachTime,
  type Strokes,
} from "./motion/hill.js";
export { type HaulInput, haul, type Motion, type Stall } from "./motion/hoist.js";
export type { MotionEnergy } from "./motion/ledger.js";
export type { MovingLine, MovingLoad, MovingRope } from "./motion/moving-line.js";
export { letOut, type RunOutInput, slowingHand } from "./motion/run-out.js";
export {
  boatLengths,
  type HalyardInput,
  type HoistedSail,
  halyardRope,
  pressingForce,
  sailComingDown,
  sailGoingUp,
} from "./motion/sail.js";
export { meanSpeedBand, type TimeQuestion, type TimeTrial, timeBand, timeVerdict } from "./motion/time-verdict.js";

// How sure is the answer, and which number matters most?

export { binomialInterval, type ShareInterval } from "./numerics/binomial.js";
export { type LeastSquares, type LeastSquaresInput, weightedLeastSquares } from "./numerics/least-squares.js";
export { normalQuantile, normalShare } from "./numerics/normal.js";
export { bandAt, spreadPoints } from "./numerics/spread-points.js";
export { type BandSeries, bandSeries } from "./uncertainty/band-series.js";
export { type Coverage, coverageOf, isInside, type MeasuredPoint } from "./uncertainty/coverage.js";
export { type Bounds, boundsOf, quantileOf } from "./uncertainty/distribution.js";
export {
  type BandCurve,
  bandAtLoad,
  bandOverLoads,
  type HandBands,
  type LineBands,
  runOutBand,
  type UncertainLine,
} from "./uncertainty/line-band.js";
export { type LineRecords, uncertainInputsOf } from "./uncertainty/line-inputs.js";
export { type HandQuantity, type InputSensitivity, lineSensitivity } from "./uncertainty/line-sensitivity.js";
export { printBand, printRange, printWithRange } from "./uncertainty/printed-band.js";
export { sampledBand } from "./uncertainty/sampled-band.js";
export {
  type Sensitivity,
  type SensitivityIndex,
  type SensitivityInput,
  sensitivityOf,
} from "./uncertainty/sensitivity.js";
export { sheetHold } from "./uncertainty/sheet-hold.js";
export type { InputTarget, SampleOptions, UncertainInput } from "./uncertainty/uncertain-input.js";

// What does my own boat say?

export { type CalibrateOptions, calibrate, type LineCalibration } from "./calibration/calibrate.js";
export {
  type CalibratedLine,
  type CalibrationTarget,
  calibratedLine,
  calibrationWords,
  lineAsMeasured,
} from "./calibration/calibrated-line.js";
export type { Estimate } from "./calibration/estimate.js";
export { type LineLaw, lineBands, lineLaw } from "./calibration/line-law.js";
export { expectedHandForce, type LawBands, type MeasuredLaw, type PullInput } from "./calibration/measured-law.js";
export { type MeasuredLosses, measuredLosses } from "./calibration/measured-losses.js";
export { type NextMeasurement, type NextOptions, nextMeasurements, nextWords } from "./calibration/next-measurement.js";
export type { LeftOut } from "./calibration/outliers.js";
export type { Observation, Reading, Way } from "./calibration/reading.js";
export { ReadingError } from "./calibration/reading-error.js";
export { type ReadingsFile, readReadings } from "./calibration/readings.js";
export { calibrationRecords } from "./calibration/records.js";
export { type LineRequest, type StandingLine, standingLine } from "./calibration/standing-line.js";
export { type TurnShare, turnShare } from "./calibration/turn-share.js";
export { unknownLine } from "./calibration/unknown-line.js";
export { type Worksheet, type WorksheetLine, worksheet } from "./calibration/worksheet.js";

// What does a whole boat ask for?

export type {
  Boat,
  BoatLine,
  BoatStation,
  Catalogue,
  CatalogueBlock,
  CatalogueCleat,
  CatalogueRing,
  CatalogueRope,
  CatalogueWinch,
  CrewMember,
  FastEase,
  LoadSource,
  OwnLimits,
  Price,
  SailOnBoat,
  TackleStation,
} from "./boat/boat.js";
export type { Budget } from "./boat/budget.js";
export { type BoatCheck, checkBoat } from "./boat/check.js";
export { type BoatComparison, compareBoats, type LineComparison, type OutcomeChange } from "./boat/compare.js";
export type { BoatDay, BoatLeg, BoatRace } from "./boat/day.js";
export { byNeed, type Consequence, type Demand, type Ground, isOpen, ratingOf, worstOf } from "./boat/demand.js";
export { demandVerdict } from "./boat/demand-verdict.js";
export { leastDiameterOf } from "./boat/hand-diameter.js";
export { boatJsonSchema } from "./boat/json-schema.js";
export { type Feel, feelOf } from "./boat/judge-hand.js";
export { letGoOf } from "./boat/let-go.js";
export { type CheckedDemand, checkLine, type LineCheck } from "./boat/line-check.js";
export { loadBoat } from "./boat/load.js";
export { type LineLoads, lineLoads } from "./boat/loads.js";
export { boatOf, catalogueFile, type FileChange, type Place, rewriteBoat } from "./boat/read.js";
export { lineOf, type ReadyLine, type ReadyPiece, withLine } from "./boat/ready.js";
export { type LineStanding, lineStanding } from "./boat/standing.js";
export { type ThingToDo, thingsToDo } from "./boat/things-to-do.js";
export { type LineTrial, lineTrials } from "./boat/trials.js";
export { BoatFileError, type Trouble } from "./boat/trouble.js";
export { heldLines } from "./materials/held-lines.js";

// Which ropes and blocks should it carry?

export { boatAsPlanned, choiceNow, plannedBoatOf } from "./plan/boat-plan.js";
export type { PlanBlock, PlanCatalogue, PlanRope, PlanTaper } from "./plan/catalogue.js";
export { type BeforeAfter, beforeAfter, choiceFrom, type LineChange } from "./plan/choice.js";
export { type Conflict, lineConflictWords, smallestConflict } from "./plan/conflict.js";
export { listCsv } from "./plan/csv.js";
export { type CutList, cutList, type LineCut, type RopeCut } from "./plan/cut-list.js";
export { type Front, front } from "./plan/front.js";
export { limitWords } from "./plan/limit.js";
export { type LimitPrice, limitPrices } from "./plan/limit-price.js";
export { type OptionLeftOut, optionsOf, type PlanJob } from "./plan/line-options.js";
export { changeRows, cutRows, massRows, type PlanList, shoppingRows } from "./plan/list.js";
export { type MassBudget, type MassShare, massBudget } from "./plan/mass-budget.js";
export { type Goal, type Optimum, optimum, type Proof } from "./plan/optimum.js";
export { PlanError } from "./plan/plan-error.js";
export { type PlanResults, planJson } from "./plan/plan-json.js";
export type { Chosen, Part, Piece, PlanLine, PlanOption } from "./plan/plan-option.js";
export type { LineConflict, MeasureLimit, PlanLimit, PlannedBoat, TotalLimit } from "./plan/planned-boat.js";
export { type Gain, type HardwareGain, type Priority, priorities } from "./plan/priorities.js";
export { robustBoat } from "./plan/robust.js";
export {
  type KeptRope,
  type PartPurchase,
  type RopePurchase,
  type ShoppingList,
  shoppingList,
} from "./plan/shopping-list.js";
export { loadSolver, type Solver } from "./plan/solver.js";
export { printTotal, type Totals, totalsOf } from "./plan/total.js";
export type { TotalName } from "./plan/total-name.js";

// How is a number worked out, step by step?

export { type Balance, balanced, type Equation } from "./working/balance.js";
export { boatHandWorking, lineCostWorking, lineMassWorking } from "./working/boat-line-working.js";
export { designLoadWorking } from "./working/boat-load-working.js";
export { formulas } from "./working/catalogue.js";
export { type CurveWorking, curveWorking, type WorkedCurve } from "./working/curve-working.js";
export { type Formula, type FormulaSymbol, type FormulaSymbols, formula } from "./working/formula.js";
export { type FreeClewInput, freeClewWorking } from "./working/free-clew-working.js";
export {
  coverWorking,
  type LineOrigins,
  type LineUnderLoad,
  lineWorking,
  lineWorkings,
  runOutWorking,
  turnParts,
} from "./working/line-working.js";
export { massBalance } from "./working/plan-balance.js";
export { fatigueBalance, lineBalance, motionBalance, ratioBalance } from "./working/solved-balances.js";
export { type SumOf, type SumPart, sumWorking } from "./working/sum-working.js";
export type { WorkedInput } from "./working/symbol-value.js";
export { type TackleUnderLoad, tackleBalance } from "./working/tackle-balance.js";
export { type FormulaInputs, worked } from "./working/worked.js";
export type { Working } from "./working/working.js";

// Does it agree with what is published?

export { measuredSets, type SetAside, setsAside } from "./published/band-sets.js";
export { type BurnTime, burnTimes, burnTimesSource } from "./published/burn-times.js";
export { compare } from "./published/compare.js";
export { lossRecords, untoldSizes } from "./published/measured-loss.js";
export type { MeasuredSet } from "./published/measured-set.js";
export { type MeasuredSheave, measuredSheaves } from "./published/measured-sheaves.js";
export { frictionOf, type RaiseLowerTest, raiseLowerTests, wrapOf } from "./published/raise-and-lower.js";
export { publishedChecks } from "./published/registry.js";
export type { CheckResult, CheckRow, Topic } from "./published/row.js";

// How is it shown in a notebook?

export { type VersionFacts, versionFacts } from "./live/before-and-after.js";
export { type LineFacts, lineFacts } from "./live/line-facts.js";
export { type ReadingFacts, readingFacts } from "./live/measure-your-own-boat.js";
export { livePanel, type PanelOptions } from "./live/panel.js";
export {
  answer,
  checks,
  coefficients,
  figure,
  question,
  reeving,
  result,
  rule,
  sheetTable,
  show,
  table,
  title,
  verdicts,
  workings,
} from "./notebook/display.js";
export { inputFile, secondInputFile } from "./notebook/input.js";
export { type MarkedNumbers, markedNumbers } from "./notebook/marked.js";
export type {
  DrawnReeving,
  Figure,
  Limit,
  LivePanel,
  Panel,
  PanelFacts,
  Series,
  Shown,
  Table,
  TopScale,
} from "./notebook/output.js";
export { lineSource, ownLine } from "./notebook/own-lines.js";
export { drawingSvg } from "./notebook/reeving/drawing-svg.js";
export { type Drawing, type DrawingInput, reevingDrawing } from "./notebook/reeving/reeving-drawing.js";
export { stationTable } from "./notebook/reeving/station-table.js";
