import { zeroCelsius as zero } from "../quantity/constants.js";
import { contactTemperature } from "../rope/effusivity.js";
import { flashRise } from "../rope/flash-temperature.js";
import { fluxRise, heldSurfaceTemperature, streamTemperatureAt } from "../rope/half-space.js";
import { heatHistory } from "../rope/heat-history.js";
import { safeTouchTemperature } from "../rope/hot-touch.js";
import { patchResponse } from "../rope/patch-response.js";
import { publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

/** Contact temperature of two bodies [°C], effusivities in kJ/(m² K √s). */
function touching(e1: number, celsius1: number, e2: number, celsius2: number): number {
  const body = (e: number, celsius: number) => ({ effusivity: 1000 * e, temperature: celsius + zero });
  return contactTemperature(body(e1, celsius1), body(e2, celsius2)) - zero;
}

const wood = { conductivity: 0.2, density: 600, specificHeat: 1500 } as const;

/** Surface of a thick body whose heating grows in step with time, over that of the same heating from the start. */
function acceleratingOverSteady(): number {
  const steps = 1000;
  const times = Array.from({ length: steps }, (_, index) => (index + 1) / steps);
  const rise = (flux: (middle: number) => number) =>
    heatHistory({
      response: times.map((time) => fluxRise({ flux: 1, depth: 0, time, solid: wood })),
      flux: times.map((time) => flux(time - 0.5 / steps)),
      heatTransfer: times.map(() => 0),
      ropeExcess: 0,
    }).surface.at(-1)!;
  return rise((middle) => 1000 * middle) / rise(() => 1000);
}

/** A patch of heat on wood at a speed, with what its limits are made of. */
function flash(speed: number) {
  const flux = 1e4;
  const halfLength = 0.01;
  const alpha = wood.conductivity / (wood.density * wood.specificHeat);
  return {
    ...flashRise({ flux, halfLength, speed, solid: wood }),
    slowUnit: (flux * halfLength) / wood.conductivity,
    fastUnit: (flux / wood.conductivity) * Math.sqrt((alpha * halfLength) / speed),
  };
}

/** A limit of a formula that nobody printed as a worked example. */
function limit(
  source: "jaeger-1942" | "carslaw-jaeger",
  id: string,
  quantity: string,
  printed: string,
  place: string,
  compute: () => number,
): CheckRow {
  return { ...publishedRow(source, id, quantity, printed, "1", place, compute), evidence: "exact" };
}

const rows: readonly CheckRow[] = [
  publishedRow(
    "cengel-foot",
    "wood",
    "contact of a bare foot of 32 °C with wood of 20 °C, effusivities 1.1 and 0.38",
    "28.9",
    "degC",
    "problem 18-82",
    () => touching(1.1, 32, 0.38, 20),
  ),
  publishedRow(
    "recknagel-contact",
    "iron",
    "contact of a hand of 30 °C with an iron plate of 5 °C, effusivities 1.1 and 14",
    "6.8",
    "degC",
    "example",
    () => touching(1.1, 30, 14, 5),
  ),
  publishedRow(
    "nellis-klein",
    "held",
    "50 mm deep, 2 s after the surface of a metal went from 378 to 303 K",
    "377.2",
    "K",
    "example of the constant temperature step",
    () =>
      heldSurfaceTemperature({
        initialTemperature: 378,
        surfaceTemperature: 303,
        depth: 0.05,
        time: 2,
        thermalDiffusivity: 0.00009547,
      }),
  ),
  publishedRow(
    "nellis-klein",
    "stream",
    "3 mm deep, 100 s after a stream of 355 K came over a body of 393 K",
    "389.5",
    "K",
    "example of surface convection",
    () =>
      streamTemperatureAt({
        initialTemperature: 393,
        streamTemperature: 355,
        heatTransfer: 50,
        conductivity: 10,
        thermalDiffusivity: 0.000004029,
        depth: 0.003,
        time: 100,
      }),
  ),
  {
    ...publishedRow(
      "semi-infinite-tests",
      "soil",
      "surface of soil of 15.6 °C after 5 h under air of −17.8 °C",
      "267.982",
      "K",
      "test_solve_for_T; another program's output",
      () =>
        streamTemperatureAt({
          initialTemperature: 15.6 + zero,
          streamTemperature: -17.8 + zero,
          heatTransfer: 11.36,
          conductivity: 0.865,
          thermalDiffusivity: 4.65e-7,
          depth: 0,
          time: 5 * 3600,
        }),
    ),
    evidence: "independent",
  },
  {
    ...publishedRow(
      "accelerating-slide",
      "start",
      "warming under heat that grows with speed over that under steady heat, at the start of a slide",
      "0 2/3",
      "1",
      "abstract, two thirds; 1000 steps of time, hence ± 0.001",
      acceleratingOverSteady,
    ),
    readingError: 0.001,
  },
  {
    ...publishedRow(
      "iso-13732",
      "half-second",
      "bare hand on thick aluminium of 65 °C for 0.5 s is burnt, at the bad end of the range: 1 yes, 0 no",
      "0",
      "1",
      "4.2.1.2: no burn below 65 °C in contacts under 0.5 s; 0 stands for this sentence",
      () => (safeTouchTemperature({ solid: "aluminium", duration: 0.5 }).low > 65 + zero ? 0 : 1),
    ),
    evidence: "independent",
    readingError: 0.25,
  },
  limit(
    "jaeger-1942",
    "fast-most",
    "hottest place under a fast patch, over (q/λ) √(α b / v)",
    "1.596",
    "2 √(2/π)",
    () => {
      const { maximum, fastUnit } = flash(50);
      return maximum / fastUnit;
    },
  ),
  limit("jaeger-1942", "fast-mean", "mean under a fast patch, over (q/λ) √(α b / v)", "1.064", "4/3 √(2/π)", () => {
    const { mean, fastUnit } = flash(50);
    return mean / fastUnit;
  }),
  limit("jaeger-1942", "slow-most", "hottest place under a patch at rest, over q b / λ", "1.000", "limit", () => {
    const { maximum, slowUnit } = flash(0);
    return maximum / slowUnit;
  }),
  limit(
    "jaeger-1942",
    "slow-mean",
    "mean under a patch at rest, over heat / (radius · λ)",
    "0.270",
    "8 / (3 π²)",
    () => {
      const { mean, slowUnit } = flash(0);
      return mean / slowUnit / Math.PI;
    },
  ),
  limit("carslaw-jaeger", "patch", "a patch heated for ever, over a/λ", "1.000", "disc source at long times", () => {
    const area = 1e-4;
    const whole = Math.sqrt(area / Math.PI) / wood.conductivity;
    return patchResponse({ solid: wood, area }, 1e9) / whole;
  }),
];

/** Worked examples and limits of heat in thick bodies. */
export const heatSolids: CheckSet = { topic: "heat", rows };
