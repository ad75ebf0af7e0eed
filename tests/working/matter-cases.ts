import { useFactors, wetStrength } from "../../src/materials/ageing.js";
import { bendCurveOf } from "../../src/materials/bend-strength.js";
import { sheaveRules } from "../../src/materials/block-rules.js";
import { chafeRate } from "../../src/materials/chafe.js";
import { constructions } from "../../src/materials/constructions.js";
import { ropeEnds } from "../../src/materials/ends.js";
import { fibres } from "../../src/materials/fibres.js";
import { rubbing } from "../../src/materials/rubbing.js";
import { hand, skinLimits } from "../../src/materials/skin.js";
import { exposures } from "../../src/materials/sunlight.js";
import { voidsFilled, waterDensity } from "../../src/materials/water.js";
import { fibreWear, treadHarshness, wearRate, wearRule } from "../../src/materials/wear.js";
import { standardGravity } from "../../src/quantity/constants.js";
import { leastSheave, pitchDiameter } from "../../src/reeving/block-geometry.js";
import { camGrip, lockingAngle, lockingFriction } from "../../src/reeving/cam-cleat.js";
import { groovePressure } from "../../src/reeving/groove-pressure.js";
import { hornHold, tailNeeded, turnsToHold } from "../../src/reeving/horn.js";
import { frictionAngle } from "../../src/reeving/jaw.js";
import { wedgeDrive } from "../../src/reeving/wedge.js";
import { bendStrength, leastBendRatio } from "../../src/rope/bend-strength.js";
import { ropeFromYarn } from "../../src/rope/break-load.js";
import { logCreep } from "../../src/rope/creep.js";
import { contactTemperature, diffusivity, effusivity } from "../../src/rope/effusivity.js";
import { flashRise } from "../../src/rope/flash-temperature.js";
import { bulkRise, frictionHeat, frictionPower, passageRise } from "../../src/rope/friction-heat.js";
import { gripLoss } from "../../src/rope/grip-loss.js";
import { fluxRise } from "../../src/rope/half-space.js";
import { retainedStrength } from "../../src/rope/retained.js";
import { ropeHeatTransfer } from "../../src/rope/rope-stream.js";
import { squareRule, squareRuleSize, workingLoad } from "../../src/rope/rules.js";
import { timeToBurn } from "../../src/rope/skin-burn.js";
import { segmentStretch, stiffnessFromTest } from "../../src/rope/stretch.js";
import { sunlightRetained } from "../../src/rope/sunlight.js";
import { wetLinearDensity } from "../../src/rope/wet-mass.js";
import { breakingLength, roundLinearDensity, specificStrength } from "../../src/rope/yarn.js";
import { type Case, mirror } from "./cases.js";

const diameter = [0.001, 0.014] as const;
const solid = { conductivity: [0.1, 200], density: [900, 8000], specificHeat: [400, 2000] } as const;
const turns = { turnCount: [0.5, 4], frictionCoefficient: [0.05, 0.4] } as const;
const cam = { camAngle: [0.05, 0.5], pivotShare: [0, 0.5], pivotFriction: [0, 0.3] } as const;
const heatOf = { lostForce: [5, 300] } as const;

const treadNames = ["smooth", "ribbed", "faceted", "toothed"] as const;
const strandCounts = [8, 16, 24] as const;

/** One of the twelve pairs of tread and braid. */
function wearPair(pick: number) {
  const strands = strandCounts[Math.floor(pick / 4)]!;
  return {
    tread: treadNames[Math.floor(pick) % 4]!,
    cover: { strands, fibre: pick % 1 < 0.5 ? "polyester" : "aramidBlend", wet: false },
  } as const;
}

const rubbed = Object.keys(rubbing) as (keyof typeof rubbing)[];

/** A pair of fibres. */
function fibrePair(pick: number) {
  const count = rubbed.length;
  return { fibre: rubbed[Math.floor(pick) % count]!, against: rubbed[Math.floor(pick / count) % count]! };
}

/** Numbers of the records behind a pair, by the names of the formula. */
export const pairNumbers = {
  wear: ({ pick }: Record<string, number>) => {
    const { tread, cover } = wearPair(pick!);
    return {
      pick: pick!,
      harshness: treadHarshness[tread].value,
      wearFactor: fibreWear[cover.fibre].value,
      strands: cover.strands,
      exponent: wearRule.coarsenessExponent.value,
    };
  },
  chafe: ({ pick }: Record<string, number>) => {
    const { fibre, against } = fibrePair(pick!);
    return {
      pick: pick!,
      frailty: rubbing[fibre].frailty.value,
      own: rubbing[fibre].friction.value,
      other: rubbing[against].friction.value,
      reference: rubbing.polyester.friction.value,
    };
  },
} as const;

export const matterCases: Readonly<Record<string, Case>> = {
  ropeMass: mirror({ fillFactor: [0.4, 1], density: [900, 1600], ropeDiameter: diameter }, (v) =>
    roundLinearDensity({ diameter: v.ropeDiameter, density: v.density, fill: v.fillFactor }),
  ),
  wetRopeMass: {
    inputs: {
      fillFactor: [constructions.bareBraid.fill.value],
      density: [fibres.hmpe.density.value],
      share: [voidsFilled.hmpe.value],
      waterDensity: [waterDensity.value],
      ropeDiameter: diameter,
    },
    code: ({ ropeDiameter }) =>
      wetLinearDensity({ fibre: "hmpe", construction: "bareBraid", diameter: ropeDiameter! }).value,
  },
  breakLoad: mirror(
    { conversion: [0.2, 0.9], specificStrength: [5e5, 4e6], linearDensity: [0.002, 0.1] },
    ropeFromYarn,
  ),
  workingLoad: mirror({ retainedStrength: [0.2, 1], breakLoad: [500, 5e4], safetyFactor: [2, 10] }, (v) =>
    workingLoad({ ...v, retained: v.retainedStrength }),
  ),
  retained: {
    inputs: {
      place: [ropeEnds.splice.retained.soft.value],
      age: [useFactors.season.value],
      sun: [],
      water: [wetStrength.polyamide.value],
    },
    code: ({ days }) =>
      retainedStrength({ fibre: "polyamide", ends: ["splice"], use: "season", wet: true, daysInSun: days! }).value,
  },
  bendStrength: {
    inputs: {
      halfRatio: [bendCurveOf.polyester.halfRatio.value],
      exponent: [bendCurveOf.polyester.exponent.value],
      diameterRatio: [0.5, 30],
    },
    code: ({ diameterRatio }) => bendStrength({ diameterRatio: diameterRatio!, material: "polyester" }).value,
  },
  leastBendRatio: {
    inputs: {
      halfRatio: [bendCurveOf.hmpe.halfRatio.value],
      exponent: [bendCurveOf.hmpe.exponent.value],
      retainedStrength: [0.2, 0.95],
    },
    code: (v) => leastBendRatio({ retainedStrength: v.retainedStrength!, material: "hmpe" }).value,
  },
  sheaveForRope: {
    inputs: { diameterRatio: [sheaveRules.braided.value], ropeDiameter: diameter },
    code: ({ ropeDiameter }) => leastSheave({ ropeDiameter: ropeDiameter!, rule: "braided" }).value,
  },
  pitchDiameter: mirror({ sheaveDiameter: [0.01, 0.1], ropeDiameter: diameter }, pitchDiameter),
  groovePressure: mirror({ tension: [50, 3000], ropeDiameter: diameter, sheaveDiameter: [0.01, 0.1] }, groovePressure),
  ruleLoadOfSize: mirror({ rulePressure: [1e7, 5e8], ropeDiameter: diameter }, (v) =>
    squareRule({ factor: v.rulePressure, size: v.ropeDiameter }),
  ),
  safeDiameter: mirror({ tension: [50, 2e4], rulePressure: [1e7, 5e8] }, (v) =>
    squareRuleSize({ factor: v.rulePressure, load: v.tension }),
  ),
  breakingLength: {
    inputs: { specificStrength: [1e3, 9e6], gravity: [standardGravity] },
    code: (v) => breakingLength(specificStrength({ stress: v.specificStrength! * 1000, density: 1000 })),
  },
  stretch: mirror({ tension: [10, 2000], lineLength: [1, 40], axialStiffness: [5e3, 5e5] }, (v) =>
    segmentStretch({ ...v, length: v.lineLength }),
  ),
  stiffnessFromTest: mirror({ tension: [10, 2000], lineLength: [1, 40], stretch: [0.005, 0.5] }, (v) =>
    stiffnessFromTest({ ...v, length: v.lineLength }),
  ),
  creep: mirror({ strainPerDecade: [1e-4, 0.01], settling: [10, 1000], duration: [100, 1e6] }, logCreep),
  sunlight: {
    inputs: {
      retainedStrength: [exposures.polyester.retained.value],
      sunDays: [1, 300],
      testedDays: [exposures.polyester.days],
    },
    code: ({ sunDays }) => sunlightRetained({ fibre: "polyester", days: sunDays! }).value,
  },
  frictionAngle: mirror({ frictionCoefficient: [0.02, 1.5] }, (v) => frictionAngle(v.frictionCoefficient)),
  lockingAngle: mirror(cam, lockingAngle),
  lockingFriction: mirror(cam, lockingFriction),
  camGrip: mirror(
    { frictionCoefficient: [0.02, 0.1], gripPreload: [1, 20], lockingAngle: [0.2, 0.6] },
    (v) => camGrip({ ...v, spring: v.gripPreload, camAngle: v.lockingAngle, pivotShare: 0, pivotFriction: 0 }).friction,
  ),
  hornHold: mirror({ tail: [1, 80], ...turns }, (v) => hornHold({ ...v, turns: v.turnCount })),
  tailNeeded: mirror({ loadTension: [100, 2000], ...turns }, (v) =>
    tailNeeded({ ...v, load: v.loadTension, turns: v.turnCount }),
  ),
  turnsToHold: mirror({ loadTension: [200, 2000], tail: [5, 100], frictionCoefficient: [0.05, 0.4] }, (v) =>
    turnsToHold({ ...v, load: v.loadTension }),
  ),
  wedgeDrive: mirror({ squeeze: [10, 1000], slopeAngle: [0.02, 0.5], frictionCoefficient: [0.05, 0.6] }, wedgeDrive),
  wear: {
    inputs: { pick: [0, 11.99], harshness: [], wearFactor: [], strands: [], exponent: [] },
    code: ({ pick }) => wearRate(wearPair(pick!)).value,
  },
  chafe: {
    inputs: { pick: [0, 15.99], frailty: [], own: [], other: [], reference: [] },
    code: ({ pick }) => chafeRate(fibrePair(pick!)).value,
  },
  frictionPower: mirror({ ...heatOf, ropeSpeed: [0.1, 8] }, (v) => frictionPower({ ...v, speed: v.ropeSpeed })),
  frictionHeat: mirror({ ...heatOf, lineLength: [0.5, 20] }, (v) => frictionHeat({ ...v, distance: v.lineLength })),
  bulkRise: mirror({ heat: [10, 5000], mass: [0.01, 1], specificHeat: [400, 2000] }, bulkRise),
  passageRise: mirror({ ...heatOf, linearDensity: [0.005, 0.1], specificHeat: [900, 2000] }, passageRise),
  effusivity: mirror(solid, effusivity),
  diffusivity: mirror(solid, diffusivity),
  contactTemperature: mirror(
    { effusivityOne: [100, 2e4], temperatureOne: [280, 450], effusivityTwo: [100, 2e4], temperatureTwo: [280, 450] },
    (v) =>
      contactTemperature(
        { effusivity: v.effusivityOne, temperature: v.temperatureOne },
        { effusivity: v.effusivityTwo, temperature: v.temperatureTwo },
      ),
  ),
  surfaceRise: mirror({ heatFlux: [1e3, 1e5], duration: [0.1, 10], effusivity: [300, 1500] }, (v) =>
    fluxRise({
      flux: v.heatFlux,
      depth: 0,
      time: v.duration,
      solid: { conductivity: v.effusivity ** 2 / 1e6, density: 1000, specificHeat: 1000 },
    }),
  ),
  flashRise: mirror(
    {
      heatFlux: [1e3, 1e6],
      contactLength: [0.001, 0.02],
      conductivity: [0.1, 1],
      ropeSpeed: [0, 8],
      diffusivity: [1e-7, 1e-6],
    },
    (v) =>
      flashRise({
        flux: v.heatFlux,
        halfLength: v.contactLength,
        speed: v.ropeSpeed,
        solid: { conductivity: v.conductivity, density: 1000, specificHeat: v.conductivity / (1000 * v.diffusivity) },
      }).maximum,
  ),
  ropeHeatTransfer: mirror(
    { touchingShare: [0.1, 1], effusivity: [200, 800], ropeSpeed: [0.01, 8], contactLength: [0.01, 0.2] },
    (v) => ropeHeatTransfer({ ...v, speed: v.ropeSpeed }),
  ),
  gripLoss: {
    inputs: { frictionCoefficient: [hand.friction.value], gripForce: [10, 400] },
    code: ({ gripForce }) => gripLoss(gripForce!).value,
  },
  timeToBurn: {
    inputs: {
      activation: [skinLimits.activation.value],
      contactTemperature: [318, 343],
      damageExponent: [Math.log(skinLimits.damageFactor.value)],
      second: [1],
    },
    code: ({ contactTemperature: skin }) => timeToBurn(skin!).value,
  },
};
