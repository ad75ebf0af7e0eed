import { heatLimits } from "../materials/heat-limits.js";
import { fibreHeat, type HeatFibre } from "../materials/thermal.js";
import { zeroCelsius } from "../quantity/constants.js";
import { within } from "../quantity/guard.js";
import { figures, printForce } from "../quantity/print.js";
import { type Margins, outcomeOf, type Verdict } from "../quantity/verdict.js";
import { type Band, bandOf } from "../sources/band.js";
import { type HandEase, safeHandSpeed, safeLostForce } from "./hand-burn.js";
import { type HardwareEase, safeHardwareForce, safeHardwareSpeed } from "./hardware-heat.js";
import { sunlightRetained } from "./sunlight.js";

/** Fibres of covers, in the order in which somebody would move on to the next. */
const nextFibres = ["polyester", "aramidBlend", "aramid", "lcp", "pbo"] as const satisfies readonly HeatFibre[];

/** A season in the sun [days], after which a fibre that keeps less than half gets a warning. */
const season = 60;

/** Temperature from which warming is counted [K]. */
const room = 293.15;

const celsius = (kelvin: number) => `${figures(kelvin - zeroCelsius)} °C`;
/** Without the grade that the table of yarns adds. */
const nameOf = (fibre: HeatFibre) => fibreHeat[fibre].name.split(",")[0]!;
const running = ({ speed, duration }: { readonly speed: number; readonly duration: number }) =>
  `${figures(speed)} m/s for ${figures(duration)} s`;
const range = (band: Band, print: (value: number) => string) => `${print(band.low)} to ${print(band.high)}`;

/** Over what is asked for: at the middle and at the bad end. */
function marginsOver({ value, low }: Band, asked: number): Margins {
  return { middle: value / asked, worst: low / asked };
}

/** The first fibre that passes, with a warning where the sun would spoil it. */
function passingFibre(from: HeatFibre, passes: (fibre: HeatFibre) => boolean): string | undefined {
  const found = nextFibres.find((fibre) => fibre !== from && passes(fibre));
  if (found === undefined) return undefined;
  const sunny = found !== "aramidBlend" && sunlightRetained({ fibre: found, days: season }).high < 0.5;
  return `a cover of ${nameOf(found)}${sunny ? ", kept out of the sun" : ""}`;
}

/** A fibre that is touched by something hot. */
export interface TouchInput {
  readonly fibre: HeatFibre;
  /** Temperature of the contact [K]. */
  readonly temperature: Band;
}

/**
 * Whether a fibre stands a touch at a contact temperature.
 *
 *     margin = (T_damage − 20 °C) / (T_contact − 20 °C)
 *
 * @param fibre  of the rope
 * @param temperature  of the contact, with its range [K]
 * @returns verdict with reason and the next fibre that stands it
 * @throws ValueError for a temperature that cannot exist or is not above 20 °C
 * Valid for a touch of about a second; damage temperatures are judged, see their records.
 * Source: common practice for the order of fibres. Example: touchVerdict({ fibre: "pbo", temperature: { value: 473.15, low: 473.15, high: 473.15 } }).outcome → "enough"
 */
export function touchVerdict({ fibre, temperature }: TouchInput): Verdict {
  within("contactTemperature", temperature.low, room + 1);
  const limits = heatLimits[fibre];
  const marginsOf = (one: HeatFibre) => {
    const band = bandOf(
      { damage: heatLimits[one].damage, contact: temperature },
      ({ damage, contact }) => (damage - room) / (contact - room),
    );
    return marginsOver(band, 1);
  };
  const outcome = outcomeOf(marginsOf(fibre));
  const next = passingFibre(fibre, (one) => outcomeOf(marginsOf(one)) === "enough");
  return {
    subject: `${nameOf(fibre)}, touched at ${celsius(temperature.value)}`,
    outcome,
    reason: `it is marked from ${celsius(limits.damage.value)}, likely ${range(limits.damage, celsius)}, and ${limits.endKind} at ${celsius(limits.end.value)}`,
    ...(outcome !== "enough" && next !== undefined && { change: next }),
  };
}

/** Slowest ease that is worth naming [m/s]: slower is not an ease. */
const slowest = 0.1;

/** A speed for a reader, rounded down to a tenth, so that it passes as well; nothing for one that is too slow. */
function slowerEase(speed: number): string[] {
  const tenths = Math.floor(10 * speed) / 10;
  return tenths < slowest ? [] : [`let it run at most ${figures(tenths)} m/s`];
}

/**
 * Whether the cover of a rope stands an ease over a piece of hardware.
 *
 *     margin = largest force that may be lost there / force that is lost
 *
 * @param ease  fibre, rope diameter [m], hardware, speed [m/s], duration [s]
 * @param lostForce  tension lost there [N], above 0
 * @returns verdict with reason and the nearest change that passes: a slower ease, or another fibre
 * @throws ValueError outside the ranges of the vocabulary
 * Valid as `hardwareHeat`.
 * Source: jaeger-1942. Example: easeVerdict({ fibre: "polyester", ropeDiameter: 0.008, hardware: rubbedHardware.ring, speed: 0.2, duration: 1 }, 5).outcome → "enough"
 */
export function easeVerdict(ease: HardwareEase, lostForce: number): Verdict {
  const asked = within("lostForce", lostForce, 1e-3);
  const safe = safeHardwareForce(ease);
  const outcome = outcomeOf(marginsOver(safe, asked));
  const changes =
    outcome === "enough"
      ? []
      : [
          ...slowerEase(safeHardwareSpeed(ease, asked).low),
          passingFibre(ease.fibre, (fibre) => safeHardwareForce({ ...ease, fibre }).low >= asked),
        ].filter((change) => change !== undefined);
  return {
    subject: `${nameOf(ease.fibre)}, ${printForce(asked)} lost at the ${ease.hardware.name}, ${running(ease)}`,
    outcome,
    reason: `it may lose ${printForce(safe.value)} there before it is marked, likely ${range(safe, (value) => figures(value, 2))} N`,
    ...(changes.length > 0 && { change: changes.join(", or ") }),
  };
}

/**
 * Whether a hand stands a rope that runs through it without a burn.
 *
 *     margin = largest force that the hand may take out of the rope / force that it takes
 *
 * @param ease  fibre, rope diameter [m], glove, speed [m/s], duration [s]
 * @param lostForce  tension that the hand takes out of the rope [N], above 0
 * @returns verdict with reason and the nearest change that passes: a glove, a slower rope, or letting go
 * @throws ValueError outside the ranges of the vocabulary
 * Valid as `handHeat`.
 * Source: henriques-1947. Example: handVerdict({ fibre: "polyester", ropeDiameter: 0.008, gloved: false, speed: 0.1, duration: 1 }, 5).outcome → "enough"
 */
export function handVerdict(ease: HandEase, lostForce: number): Verdict {
  const asked = within("lostForce", lostForce, 1e-3);
  const safe = safeLostForce(ease, "burn");
  const outcome = outcomeOf(marginsOver(safe, asked));
  return {
    subject: `${ease.gloved ? "gloved" : "bare"} hand that takes ${printForce(asked)}, ${running(ease)}`,
    outcome,
    reason: `it may take ${printForce(safe.value)} out of the rope without a burn, likely ${range(safe, (value) => figures(value, 2))} N; it hurts from ${printForce(safeLostForce(ease, "pain").value)}`,
    ...(outcome !== "enough" && { change: handChange(ease, asked) }),
  };
}

function handChange(ease: HandEase, asked: number): string {
  const glove = !ease.gloved && safeLostForce({ ...ease, gloved: true }, "burn").low >= asked;
  return [
    ...slowerEase(safeHandSpeed(ease, asked, "burn").low),
    ...(glove ? ["wear gloves"] : []),
    "let it go and put the load on a ratchet, a turn or a winch first",
  ].join(", or ");
}
