import { heatLimits } from "../materials/heat-limits.js";
import { type RubbedHardwareName, rubbedHardware } from "../materials/rubbed-hardware.js";
import { skinLimits } from "../materials/skin.js";
import type { HeatFibre } from "../materials/thermal.js";
import type { Limit } from "../notebook/output.js";
import { zeroCelsius } from "../quantity/constants.js";
import { type Outcome, outcomeOf } from "../quantity/verdict.js";
import { frictionPower } from "../rope/friction-heat.js";
import { handStands } from "../rope/hand-burn.js";
import { hardwareStands } from "../rope/hardware-heat.js";
import type { Band } from "../sources/band.js";
import { choice, slide } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { lastAnswer } from "./last-answer.js";
import { type Found, liveModel, type Words } from "./model.js";

const brakes = {
  bare: "a bare hand",
  glove: "a gloved hand",
  ring: "an aluminium ring",
  plasticRing: "a plastic ring",
  ratchet: "a locked ratchet",
  jammer: "a steel jammer",
} as const satisfies Record<"bare" | "glove" | RubbedHardwareName, string>;

const covers = {
  polyester: "polyester",
  hmpe: "HMPE",
  polyamide: "polyamide",
  aramidBlend: "aramid blend",
  aramid: "aramid",
} as const satisfies Partial<Record<HeatFibre, string>>;

const celsius = ({ value, low, high }: Band): Band => ({
  value: value - zeroCelsius,
  low: low - zeroCelsius,
  high: high - zeroCelsius,
});

/** What a line that runs through or over something does to it. */
interface Heated {
  /** What gets hot, as the subject of a sentence. */
  readonly part: string;
  /** How hot, at a load that is taken out [°C]. */
  readonly at: (load: number) => Band;
  /** Loads that may be taken out, by what happens above them; the last one is judged [N]. */
  readonly from: readonly (readonly [label: string, band: Band])[];
  readonly limit: Limit;
  /** What happens, in words, by how the load stands against the last limit. */
  readonly words: Readonly<Record<Outcome, string>>;
  /** Above this nothing is drawn [°C]. */
  readonly hottest: number;
}

interface Ease {
  readonly fibre: keyof typeof covers;
  readonly ropeDiameter: number;
  readonly speed: number;
  readonly duration: number;
}

function inHand(ease: Ease, gloved: boolean): Heated {
  const { living, pain, burn } = handStands({ ...ease, gloved });
  return {
    part: "living skin",
    at: (load) => celsius(living(load)),
    from: [
      ["It hurts from", pain],
      ["It burns from", burn],
    ],
    limit: { name: "hurts", ...celsius(skinLimits.pain) },
    words: {
      enough: "That burns no hand.",
      "can't tell": "That may burn the hand: let the line go.",
      "not enough": "That burns the hand: let the line go.",
    },
    hottest: 100,
  };
}

function onHardware(ease: Ease, name: RubbedHardwareName): Heated {
  const { rope, marked } = hardwareStands({ ...ease, hardware: rubbedHardware[name] });
  return {
    part: "cover",
    at: (load) => celsius(rope(load)),
    from: [["The cover is marked from", marked]],
    limit: { name: "cover is marked", ...celsius(heatLimits[ease.fibre].damage) },
    words: {
      enough: "The cover stands that.",
      "can't tell": "The cover may be marked for good.",
      "not enough": "The cover is marked for good.",
    },
    hottest: 450,
  };
}

/** What gets hot as the reader lets the line run, at any load. */
const braked = lastAnswer(
  (brake: keyof typeof brakes, fibre: keyof typeof covers, ropeDiameter: number, speed: number, duration: number) => {
    const ease: Ease = { fibre, ropeDiameter, speed, duration };
    return brake === "bare" || brake === "glove" ? inHand(ease, brake === "glove") : onHardware(ease, brake);
  },
);

/** Its temperature along the axis of the chart. */
const along = lastAnswer((heated: Heated, most: number) => {
  const forces = evenly(0, most, 11);
  return { forces, curve: forces.map((force) => heated.at(force)) };
});

/** The curve as far as it is drawn; a band that leaves the chart lies on its edge. */
function drawn(curve: readonly Band[], hottest: number) {
  const shown = (pick: (band: Band) => number) =>
    curve.map((band) => (band.low > hottest ? null : Math.min(hottest, pick(band))));
  return {
    line: curve.map(({ value }) => (value > hottest ? null : value)),
    bands: { line: { low: shown(({ low }) => low), high: shown(({ high }) => high) } },
  };
}

function results(heated: Heated, now: Found, made: number): Found[] {
  return [
    { label: "Heat made", measure: "power", value: made },
    { ...now, label: `Hottest ${heated.part}` },
    ...heated.from.map(([label, band]) => ({ label, measure: "force", ...band }) as const),
  ];
}

function altText({ part, from }: Heated, now: Found, load: number, say: Words["say"]): string {
  const edges = from.map(([label, { value }]) => `${label} ${say("force", value, 2)}.`).join(" ");
  return `Temperature of the ${part} against the load taken out. At ${say("force", load)} it is ${say("temperature", now.value, 2)}. ${edges}`;
}

/** A line that is braked while it runs: what gets hot, and from which load that is too much. */
export const whenRopeGetsHot = liveModel({
  name: "when-rope-gets-hot",
  controls: {
    brake: choice("Braked by", brakes, "bare"),
    load: slide({ label: "Load taken out there", measure: "force", minimum: 5, maximum: 400, step: 5, initial: 80 }),
    speed: slide({ label: "Line runs at", measure: "speed", minimum: 0.2, maximum: 8, step: 0.1, initial: 3 }),
    time: slide({ label: "For", measure: "seconds", minimum: 0.5, maximum: 10, step: 0.5, initial: 2 }),
    rope: slide({ label: "Rope", measure: "length", minimum: 4, maximum: 14, step: 1, initial: 8 }),
    cover: choice("Cover of", covers, "polyester"),
  },
  compute: ({ brake, load, speed, time, rope, cover }, { say, sayFound }) => {
    const heated = braked(brake, cover, rope / 1000, speed, time);
    const { forces, curve } = along(heated, load <= 160 ? 200 : 500);
    const [edge, limit] = heated.from.at(-1)!;
    const now = { label: heated.part, measure: "temperature", ...heated.at(load) } as const;
    const outcome = outcomeOf({ middle: limit.value / load, worst: limit.low / load });
    const made = frictionPower({ lostForce: load, speed });
    return {
      results: results(heated, now, made),
      figure: {
        name: "your-ease",
        title: `${edge} ${say("force", limit.value, 2)} at ${say("speed", speed)} for ${say("seconds", time)}`,
        caption: `Hottest ${heated.part} by the load that is taken out of the line. Grey tint: 90 % band. The rule has one too. What is hotter than ${heated.hottest} °C is not drawn.`,
        altText: altText(heated, now, load, say),
        x: { title: "Load taken out", measure: "force", minimum: 0, maximum: forces.at(-1)! },
        y: { title: `Hottest ${heated.part}`, measure: "temperature", minimum: 0, maximum: heated.hottest },
        panels: [
          {
            title: "",
            series: [
              { name: heated.part, x: forces, ...drawn(curve, heated.hottest), highlight: true },
              ...(now.value > heated.hottest
                ? []
                : [{ name: `at ${say("force", load)}`, x: [load], points: [now.value] }]),
            ],
            limits: [heated.limit],
          },
        ],
      },
      sentence: `${say("force", load)} at ${say("speed", speed)} make ${say("power", made)} of heat. The ${heated.part} gets to ${sayFound(now)}. ${heated.words[outcome]}`,
    };
  },
});
