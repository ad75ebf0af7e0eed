import type { SailEditionTables } from "../sail-table.js";

/** Tables of an older edition of the measurement system. */
export const imsOlder: SailEditionTables = {
  title: "IMS, older edition",
  source: "ims-coefficients-older",
  sails: {
    main: {
      angleDegrees: [0, 7, 9, 12, 60, 90, 120, 150, 180],
      lift: [0, 1.15, 1.4, 1.55, 1.44, 0.96, 0.58, 0.25, -0.1],
      drag: [0.027, 0.027, 0.027, 0.027, 0.103, 0.275, 0.671, 1.11, 1.2],
    },
    symmetricSpinnaker: {
      angleDegrees: [28, 41.3, 45.9, 60.2, 75.1, 99.7, 130, 150, 180],
      lift: [0, 1.31, 1.56, 1.71, 1.69, 1.4, 0.83, 0.5, 0],
      drag: [0.1, 0.15, 0.2, 0.4, 0.7, 1, 1.1, 1.1, 1.1],
    },
  },
};
