import { coefficient } from "../sources/coefficient.js";

/** Rules of the trade about blocks and leads that a model needs as numbers. */
export const practice = {
  /** Groove width over rope diameter below which the rope touches the cheeks [-]. */
  cheekContactRatio: coefficient({
    value: 1.1,
    unit: "1",
    low: 1.05,
    high: 1.15,
    status: "common practice",
    place: "a groove narrower than 1.10 rope diameters lets the rope touch the cheeks",
  }),
  /** Loss of lines led together through one ring over their loss led apart [-]. */
  sharedLeadFactor: coefficient({
    value: 1.25,
    unit: "1",
    low: 1.1,
    high: 1.4,
    status: "common practice",
    place: "lines sharing a ring lose about a quarter more",
  }),
  /** Part of the rope's pressure that goes sideways on the cheeks when the groove is as wide as the rope [-]. */
  cheekPressureShare: coefficient({
    value: 0.3,
    unit: "1",
    low: 0.1,
    high: 0.8,
    status: "from memory",
    place: "no printed number found: a wide judged range; a pull over a tight and a free block would narrow it",
  }),
  /** Friction of rope on a cheek [-]. */
  cheekFriction: coefficient({
    value: 0.2,
    unit: "1",
    low: 0.1,
    high: 0.35,
    status: "from memory",
    place: "cover on plastic or metal cheeks",
  }),
  /** Length of contact in rope diameters from which the rope takes the full curve of the sheave [-]. */
  fullBendContact: coefficient({
    value: 1,
    unit: "1",
    low: 0.5,
    high: 2,
    status: "from memory",
    place: "a shorter contact bends the rope less; no printed number found",
  }),
} as const;
