import { offshoreGust, offshoreMeanSpeed, offshoreTurbulence } from "../wind/profile.js";
import type { CheckRow, CheckSet } from "./row.js";

const common = {
  unit: "m/s",
  evidence: "independent",
  status: "published",
  source: "iso-19901-1",
  place: "formulas of the standard, worked out by hand",
} as const;

/** Mean over one hour at 10 m [m/s], height [m], mean speed [m/s]. */
const means = [
  [10, 2, "8.542"],
  [10, 5, "9.372"],
  [10, 20, "10.628"],
] as const;

/** Mean over one hour at 10 m [m/s], height [m], duration [s], gust [m/s]. */
const gusts = [
  [10, 10, 3, "12.494"],
  [10, 10, 15, "11.928"],
  [10, 10, 60, "11.440"],
  [10, 10, 600, "10.630"],
  [10, 2, 3, "11.577"],
  [15, 10, 3, "19.304"],
  [15, 2, 3, "17.619"],
] as const;

const meanRows = means.map(
  ([hourlyMeanSpeed, height, printed]): CheckRow => ({
    ...common,
    id: `iso-19901-1-mean-${hourlyMeanSpeed}-${height}-m`,
    quantity: `mean wind at ${height} m over the sea for ${hourlyMeanSpeed} m/s at 10 m`,
    printed,
    compute: () => offshoreMeanSpeed({ hourlyMeanSpeed, height }),
  }),
);

const gustRows = gusts.map(
  ([hourlyMeanSpeed, height, duration, printed]): CheckRow => ({
    ...common,
    id: `iso-19901-1-gust-${hourlyMeanSpeed}-${height}-m-${duration}-s`,
    quantity: `gust of ${duration} s at ${height} m over the sea for ${hourlyMeanSpeed} m/s at 10 m`,
    printed,
    compute: () => offshoreGust({ hourlyMeanSpeed, height, duration }),
  }),
);

/** Wind profile and gusts over the open sea. */
export const windIso19901: CheckSet = {
  topic: "wind",
  rows: [
    ...meanRows,
    {
      ...common,
      id: "iso-19901-1-turbulence",
      quantity: "turbulence intensity at 10 m over the sea for 10 m/s",
      printed: "0.0858",
      unit: "1",
      compute: () => offshoreTurbulence({ hourlyMeanSpeed: 10, height: 10 }),
    },
    ...gustRows,
  ],
};
