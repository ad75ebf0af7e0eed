import { zeroCelsius as zero } from "../quantity/constants.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";

/** A hand that a rope runs through: everything but how its skin and glove carry heat. */
export const hand = {
  /** Temperature of the palm before [K]. */
  temperature: coefficient({
    value: zero + 32,
    unit: "K",
    low: zero + 24,
    high: zero + 35,
    status: "from memory",
    place: "palm; cold and wet hands are cooler, and feel less",
  }),
  /** Depth of the living skin of the palm below its horny layer [m]. */
  livingDepth: coefficient({
    value: 3e-4,
    unit: "m",
    low: 1e-4,
    high: 7e-4,
    status: "from memory",
    place: "thin between the fingers, thick on a worked palm; burn research took about 0.1 mm on other skin",
  }),
  /** Length of rope in one closed hand [m]. */
  contactLength: coefficient({
    value: 0.085,
    unit: "m",
    low: 0.07,
    high: 0.1,
    status: "from memory",
    place: "width of a palm over the knuckles",
  }),
  /** Part of the girth of the rope that skin lies on [-]. */
  girthShare: coefficient({
    value: 0.6,
    unit: "1",
    low: 0.4,
    high: 0.8,
    status: "from memory",
    place: "fingers round a thin rope leave gaps",
  }),
  /** Share of that contact where rope and soft skin really touch [-]. */
  touchingShare: coefficient({
    value: 0.7,
    unit: "1",
    low: 0.4,
    high: 1,
    status: "from memory",
    place: "skin follows the strands; more under a firm grip",
  }),
  /** Friction coefficient of a rope running in a palm or glove [-]. */
  friction: coefficient({
    value: 0.35,
    unit: "1",
    low: 0.15,
    high: 0.6,
    status: "from memory",
    place:
      "no measurement of rope on palm found; a hand scale on a rope pulled through a hand that presses a known force would narrow it",
  }),
  /** Thickness of a glove on the palm [m]. */
  gloveThickness: coefficient({
    value: 1e-3,
    unit: "m",
    low: 6e-4,
    high: 1.6e-3,
    status: "from memory",
    place: "one layer of synthetic leather; doubled palms at the upper end",
  }),
} as const satisfies Record<string, Coefficient>;

/** When heat hurts and when it burns. */
export const skinLimits = {
  /** Temperature of the living skin that hurts [K]. */
  pain: coefficient({
    value: zero + 44.8,
    unit: "K",
    low: zero + 43,
    high: zero + 47,
    status: "published",
    source: "infrared-pain",
    place: "44.8 °C at the receptors, infrared heating for 2 to 60 s; people differ by a few degrees",
  }),
  /** Rate of damage at an endless temperature [1/s]. */
  damageFactor: coefficient({
    value: 3.1e98,
    unit: "1/s",
    low: 3.1e98,
    high: 3.1e98,
    status: "from memory",
    place: "the reference: constant of Henriques, fixed, since the activation temperature carries the spread",
  }),
  /** Activation temperature of the damage [K]. */
  activation: coefficient({
    value: 75_250,
    unit: "K",
    low: 74_850,
    high: 75_531,
    status: "from memory",
    place:
      "75 000 K as first given, 75 531 K where 6.28e5 J/mol is used; lower end set so that 51 °C burns within a minute, as touch limits have it",
  }),
} as const satisfies Record<string, Coefficient>;
