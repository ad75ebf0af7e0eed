import type { SailEditionTables } from "../sail-table.js";

const angleDegrees = [27, 50, 80, 100, 180];
const mainDrag = [0.02, 0.15, 0.8, 1, 0.9];

/** Tables of 1980 as a textbook of yacht design prints them. */
export const hazen1980: SailEditionTables = {
  title: "Hazen 1980",
  source: "hazen-1980",
  sails: {
    main: { angleDegrees, lift: [1.5, 1.5, 0.95, 0.85, 0], drag: mainDrag },
    mainFullBattens: { angleDegrees, lift: [1.725, 1.5, 0.95, 0.85, 0], drag: mainDrag },
    jib: { angleDegrees, lift: [1.5, 0.5, 0.3, 0, 0], drag: [0.02, 0.25, 0.15, 0, 0] },
    symmetricSpinnaker: { angleDegrees, lift: [0, 1.5, 1, 0.85, 0], drag: [0, 0.25, 0.9, 1.2, 0.66] },
  },
};
