import { aLinePlan } from "./a-line-plan.js";
import { aroundARing } from "./around-a-ring.js";
import { beforeAndAfter } from "./before-and-after.js";
import { bigSheaveSmallSheave } from "./big-sheave-small-sheave.js";
import { gripWithoutStrain } from "./grip-without-strain.js";
import { handsThroughARaceDay } from "./hands-through-a-race-day.js";
import { howThinCanItBe } from "./how-thin-can-it-be.js";
import { measureYourOwnBoat } from "./measure-your-own-boat.js";
import type { LiveModel } from "./model.js";
import { purchasesAndLostForce } from "./purchases-and-lost-force.js";
import { whatMattersMost } from "./what-matters-most.js";
import { whatTheHandFeels } from "./what-the-hand-feels.js";

/** Every model that a page can compute with. */
export const liveModels: readonly LiveModel[] = [
  whatTheHandFeels,
  purchasesAndLostForce,
  aroundARing,
  bigSheaveSmallSheave,
  gripWithoutStrain,
  handsThroughARaceDay,
  howThinCanItBe,
  whatMattersMost,
  measureYourOwnBoat,
  aLinePlan,
  beforeAndAfter,
];
