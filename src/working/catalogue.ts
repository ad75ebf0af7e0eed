import { cleatFormulas } from "./cleat-formulas.js";
import { crewFormulas } from "./crew-formulas.js";
import { heatFormulas } from "./heat-formulas.js";
import { loadFormulas } from "./load-formulas.js";
import { ropeFormulas } from "./rope-formulas.js";
import { spreadFormulas } from "./spread-formulas.js";
import { stationFormulas } from "./station-formulas.js";
import { tackleFormulas } from "./tackle-formulas.js";
import { turnFormulas } from "./turn-formulas.js";
import { windFormulas } from "./wind-formulas.js";

/** All closed formulas, by name: each computes the same as the function that it mirrors, and a test holds both equal. */
export const formulas = {
  ...turnFormulas,
  ...stationFormulas,
  ...tackleFormulas,
  ...windFormulas,
  ...loadFormulas,
  ...ropeFormulas,
  ...cleatFormulas,
  ...heatFormulas,
  ...crewFormulas,
  ...spreadFormulas,
} as const;
