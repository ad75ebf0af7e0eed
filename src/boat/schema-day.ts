import type { z } from "zod";
import type { BoatDay } from "./day.js";
import { chosenName, list, mapping, named, plain, quantity } from "./schema-words.js";

const repeat = (what: string) =>
  mapping(
    {
      every: quantity("duration", "from the start of one to the start of the next"),
      lasts: quantity("duration", "how long each lasts"),
      factor: plain("loadShare", "load meanwhile over that of the leg; 0 sets the hand free", 0, 10),
    },
    what,
  ).exactOptional();

const leg = mapping(
  {
    name: chosenName("name of the leg"),
    length: quantity("duration", "how long it takes"),
    holds: named(
      plain("loadShare", "load over that of the design wind", 0, 10),
      "lines that are held by hand, each with its load",
    ),
    gusts: repeat("gusts that come back"),
    tacks: repeat("tacks and gybes that come back"),
    rests: repeat("rests of the hand that come back: the other hand, both hands or a cleat take over"),
  },
  "a part of a race",
);

/** A day on the water. */
export const daySchema = mapping(
  {
    length: quantity("duration", "length of the day"),
    races: list(
      mapping(
        {
          name: chosenName("name of the race"),
          start: quantity("duration", "from the start of the day"),
          legs: list(leg, 40, "legs in their order"),
        },
        "legs that follow one another",
      ),
      20,
      "races in the order of the day",
    ),
  },
  "a day on the water; hands rest between the races",
) satisfies z.ZodType<BoatDay>;
