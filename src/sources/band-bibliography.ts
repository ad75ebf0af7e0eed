import type { Source } from "./source.js";

/** Sources about sampling, sensitivity and measured losses that bands are held against. */
export const bandSources = {
  "joe-kuo-2008": {
    title: "Constructing Sobol sequences with better two-dimensional projections, SIAM J. Sci. Comput. 30:2635-2654",
    author: "S. Joe and F. Y. Kuo",
    year: 2008,
    seen: "from memory",
  },
  "saltelli-2010": {
    title:
      "Variance based sensitivity analysis of model output: design and estimator for the total sensitivity index, Comput. Phys. Commun. 181:259-270",
    author: "A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto and S. Tarantola",
    year: 2010,
    seen: "from memory",
  },
  "clopper-pearson-1934": {
    title: "The use of confidence or fiducial limits illustrated in the case of the binomial, Biometrika 26:404-413",
    author: "C. J. Clopper and E. S. Pearson",
    year: 1934,
    seen: "from memory",
  },
  "sensitivity-examples": {
    title: "Worked examples of sensitivity indices: the Ishigami and the Sobol function",
    author: "Shields Uncertainty Research Group",
    seen: "read on a secondary page",
  },
  "delaney-devices": {
    title: "Physics for Roping Technicians: force to lift 1 kN over devices, as copied in a note on efficiency",
    author: "R. Delaney",
    seen: "read on a secondary page",
  },
  "canyon-friction": {
    title: "Fun with friction: a load cell over a pulley and a karabiner",
    address: "https://canyonsandcrags.com/fun-with-friction",
    seen: "read",
  },
  "ring-pulls": {
    title: "Mechanical advantage with low friction rings: a weight of 20 lb over rings (personal page)",
    author: "A. Edwards",
    address: "https://l-36.com/low_friction_rings.php",
    seen: "read",
  },
  "knot-guild-roller": {
    title: "Measurement of the coefficient of friction for the capstan equation (forum of a knot guild)",
    year: 2021,
    address: "https://igkt.net/sm/index.php?topic=6933.msg45788",
    seen: "read",
  },
} as const satisfies Record<string, Source>;
