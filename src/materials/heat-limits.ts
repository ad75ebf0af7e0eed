import { zeroCelsius as zero } from "../quantity/constants.js";
import type { SourceId } from "../sources/bibliography.js";
import { type Coefficient, coefficient } from "../sources/coefficient.js";
import type { HeatFibre } from "./thermal.js";

/** What heat does to a fibre. All temperatures in kelvin. */
export interface HeatLimits {
  /** Contact temperature from which a fibre softens, sticks or is marked for good [K]. */
  readonly damage: Coefficient;
  /** Temperature at which it melts or falls apart [K]. */
  readonly end: Coefficient;
  readonly endKind: "melts" | "decomposes";
  /** Largest temperature of use in a loaded line [K]. */
  readonly service: Coefficient;
}

type Spread = readonly [low: number, value: number, high: number];

function celsius([low, value, high]: Spread, place: string, source?: SourceId): Coefficient {
  return coefficient({
    value: value + zero,
    unit: "K",
    low: low + zero,
    high: high + zero,
    place,
    ...(source === undefined ? { status: "from memory" } : { status: "published", source }),
  });
}

const damaged = "no printed value found; judged from the melting or decomposition temperature";
const morrow = "table of fibres, p. 14";
const sling = "180 °F in the US rule; 100 °C in a European one, from memory";

const hmpe: HeatLimits = {
  damage: celsius([100, 130, 145], `${damaged}; loses strength well before it melts`),
  end: celsius([144, 147, 152], "fibre handbooks"),
  endKind: "melts",
  service: celsius([60, 70, 80], "fibre handbooks, long term"),
};

const aramid: HeatLimits = {
  damage: celsius([250, 300, 400], `${damaged}; strength falls, then it chars`),
  end: celsius([400, 425, 550], "printed range 425 to 550 °C; its lower end taken", "polymer-fire-table"),
  endKind: "decomposes",
  service: celsius([150, 160, 200], "fibre handbooks"),
};

/** What each fibre stands. The damage temperatures are judged: melting is printed, but a cover is spoilt before it melts. */
export const heatLimits = {
  polypropylene: {
    damage: celsius([110, 140, 155], damaged),
    end: celsius([160, 175, 176], `${morrow}; handbooks also 165`, "morrow-knots"),
    endKind: "melts",
    service: celsius([80, 93.3, 94], "200 °F in the US rule; 80 °C in a European one, from memory", "cfr-1926-251"),
  },
  hmpe,
  hmpeHighModulus: hmpe,
  polyamide: {
    damage: celsius([160, 190, 230], damaged),
    end: celsius([215, 255, 268], `${morrow}; other tables 220 for polyamide 6 and 265 for 6.6`, "morrow-knots"),
    endKind: "melts",
    service: celsius([80, 82.2, 100], sling, "cfr-1926-251"),
  },
  polyester: {
    damage: celsius(
      [180, 190, 240],
      "softens and sticks; printed melting is 260 °C, yet in use a touch of 200 °C is known to spoil it, so the middle is set below that",
    ),
    end: celsius([250, 260, 268], `${morrow}; other tables 250 to 268`, "morrow-knots"),
    endKind: "melts",
    service: celsius([80, 82.2, 100], sling, "cfr-1926-251"),
  },
  aramidBlend: {
    damage: celsius([210, 260, 330], "the polyester in it softens, the aramid keeps the cover together"),
    end: celsius([250, 425, 550], "the polyester melts at about 260 °C, the aramid decomposes from 425 °C"),
    endKind: "decomposes",
    service: celsius([80, 100, 150], "between polyester and aramid"),
  },
  lcp: {
    damage: celsius([200, 250, 300], damaged),
    end: celsius([310, 330, 340], "fibre handbooks"),
    endKind: "melts",
    service: celsius([90, 120, 150], "fibre handbooks"),
  },
  aramid,
  aramidHighModulus: aramid,
  pbo: {
    damage: celsius([350, 400, 500], damaged),
    end: celsius([600, 650, 700], "fibre handbooks"),
    endKind: "decomposes",
    service: celsius([150, 200, 300], "fibre handbooks"),
  },
} as const satisfies Record<HeatFibre, HeatLimits>;
