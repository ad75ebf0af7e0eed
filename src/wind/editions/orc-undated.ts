import type { SailEditionTables } from "../sail-table.js";

/** Mainsail of another, undated edition: 9 to 31 % more lift from 60° to 150° than in 2013. */
export const orcUndated: SailEditionTables = {
  title: "ORC, undated edition",
  source: "orc-coefficients-undated",
  sails: {
    main: {
      angleDegrees: [0, 7, 9, 12, 28, 60, 90, 120, 150, 180],
      lift: [0, 0.94828, 1.13793, 1.25, 1.42681, 1.38319, 1.26724, 0.93103, 0.38793, -0.11207],
      drag: [0.03448, 0.01724, 0.01466, 0.01466, 0.02586, 0.11302, 0.3825, 0.96888, 1.31578, 1.34483],
    },
  },
};
