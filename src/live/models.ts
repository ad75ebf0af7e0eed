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
import { stayWhereItWasPut } from "./stay-where-it-was-put.js";
import { stripAndTaper } from "./strip-and-taper.js";
import { upAndDownFast } from "./up-and-down-fast.js";
import { whatMattersMost } from "./what-matters-most.js";
import { whatTheHandFeels } from "./what-the-hand-feels.js";
import { whenRopeGetsHot } from "./when-rope-gets-hot.js";

/** Every model that a page can compute with. */
export const liveModels: readonly LiveModel[] = [
  whatTheHandFeels,
  purchasesAndLostForce,
  aroundARing,
  bigSheaveSmallSheave,
  gripWithoutStrain,
  handsThroughARaceDay,
  howThinCanItBe,
  stayWhereItWasPut,
  stripAndTaper,
  whenRopeGetsHot,
  upAndDownFast,
  whatMattersMost,
  measureYourOwnBoat,
  aLinePlan,
  beforeAndAfter,
];
