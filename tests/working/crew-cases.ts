import { enduranceTime, singleRateEndurance } from "../../src/crew/endurance.js";
import { endlessShare, modelEndurance } from "../../src/crew/fatigue.js";
import { gripDemand, holdingTension } from "../../src/crew/grip-demand.js";
import { gripOnDiameter, palmFriction } from "../../src/crew/hand-hold.js";
import { enduranceLaws } from "../../src/materials/people-fatigue.js";
import { palmFactors } from "../../src/materials/people-palm.js";
import { hoistWork, terminalSpeed } from "../../src/motion/fall.js";
import { bestSpeedShare, handPower, hillForce } from "../../src/motion/hill.js";
import { boatLengths } from "../../src/motion/sail.js";
import { binomialInterval } from "../../src/numerics/binomial.js";
import { standardGravity } from "../../src/quantity/constants.js";
import { bandOf } from "../../src/sources/band.js";
import { type Case, mirror } from "./cases.js";

const cover = { strands: 16, fibre: "polyester", wet: false } as const;
const handed = {
  frictionCoefficient: [palmFriction({ cover }).value],
  wrapAngle: [0, 1.5],
  handsFactor: [palmFactors.oneOverTwo.value],
} as const;
const exact = (value: number) => ({ value, low: value, high: value });
const hold = (wrapAngle: number, diameter = 0.007) => ({ cover, diameter, hands: 2 as const, wrapAngle });
const demand = (tension: number, wrapAngle: number, grip = 400) =>
  gripDemand({ tension, hold: hold(wrapAngle), maximumGrip: exact(grip) });
const size = [gripOnDiameter({ diameter: 0.007 })] as const;

export const crewCases: Readonly<Record<string, Case>> = {
  gripAsked: {
    inputs: { handTension: [10, 300], ...handed },
    code: ({ handTension, wrapAngle }) => demand(handTension!, wrapAngle!).gripForce.value,
  },
  shareAsked: {
    inputs: { gripForce: [20, 300], sizeFactor: size, maximumGrip: [200, 600] },
    code: ({ gripForce, maximumGrip }) => {
      // The tension that asks for this grip, from the grip that one newton asks for.
      const tension = gripForce! / demand(1, 0.5).gripForce.value;
      return demand(tension, 0.5, maximumGrip).share.value;
    },
  },
  holdingTension: {
    inputs: { ...handed, sizeFactor: size, maximumGrip: [200, 600] },
    code: ({ wrapAngle, maximumGrip }) =>
      holdingTension({ hold: hold(wrapAngle!), maximumGrip: exact(maximumGrip!) }).value,
  },
  endurance: {
    inputs: {
      enduranceFactor: [enduranceLaws.hand.factor.value],
      loadShare: [0.1, 1],
      exponent: [enduranceLaws.hand.exponent.value],
    },
    code: ({ loadShare }) => enduranceTime({ share: loadShare! }),
  },
  modelEndurance: mirror({ recoveryRate: [2e-4, 2e-3], loadShare: [0.3, 0.9], fatigueRate: [0.008, 0.02] }, (v) =>
    modelEndurance({ ...v, share: v.loadShare }),
  ),
  endlessShare: mirror({ recoveryRate: [2e-4, 2e-3], fatigueRate: [0.008, 0.02] }, endlessShare),
  singleRateEndurance: mirror({ loadShare: [0.1, 0.9], fatigueRate: [0.005, 0.05] }, (v) =>
    singleRateEndurance({ ...v, share: v.loadShare }),
  ),
  hill: mirror({ pullForce: [100, 400], handSpeed: [0, 1.9], pullSpeed: [2, 4], curvature: [0.1, 0.6] }, (v) =>
    hillForce({ greatestPull: v.pullForce, greatestSpeed: v.pullSpeed, curvature: v.curvature })(v.handSpeed),
  ),
  bestSpeed: mirror({ curvature: [0.05, 2] }, ({ curvature }) => bestSpeedShare(curvature)),
  handPower: mirror({ handTension: [10, 300], handSpeed: [0.1, 4] }, (v) =>
    handPower({ handForce: v.handTension, handSpeed: v.handSpeed }),
  ),
  hoistWork: {
    inputs: { sailMass: [0.5, 20], gravity: [standardGravity], lift: [2, 15] },
    code: (v) => hoistWork({ sailMass: v.sailMass!, lift: v.lift! }),
  },
  terminalSpeed: {
    inputs: { sailMass: [0.5, 20], gravity: [standardGravity], fallDrag: [0.1, 3] },
    code: (v) => terminalSpeed({ sailMass: v.sailMass!, fallDrag: v.fallDrag! }),
  },
  boatLengths: mirror({ boatSpeed: [0.5, 8], duration: [1, 60], boatLength: [3, 12] }, boatLengths),
  sumInSquares: mirror({ one: [1.01, 2], other: [1.01, 2] }, ({ one, other }) => {
    const input = (factor: number) => ({ value: 1, low: 1, high: factor });
    return bandOf({ one: input(one), other: input(other) }, (values) => values.one * values.other).high;
  }),
  allHold: {
    inputs: { tailShare: [0.025], count: [1, 30] },
    code: ({ count }) => binomialInterval({ count: count!, of: count! }).low,
  },
  noneHolds: {
    inputs: { tailShare: [0.025], count: [1, 30] },
    code: ({ count }) => binomialInterval({ count: 0, of: count! }).high,
  },
};
