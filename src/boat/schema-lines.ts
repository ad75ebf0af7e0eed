import { z } from "zod";
import { useFactors } from "../materials/ageing.js";
import { ropeEnds } from "../materials/ends.js";
import { type BoatLine, type BoatStation, lineKinds, sailCorners } from "./boat.js";
import { wrapAt } from "./places.js";
import {
  chosenName,
  count,
  list,
  mapping,
  nameIn,
  oneOf,
  plain,
  price,
  quantity,
  quoted,
  wanted,
  words,
  yesOrNo,
} from "./schema-words.js";

/** A mapping of one of several kinds. */
export function kinds<const Options extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]]>(
  options: Options,
  names: readonly string[],
) {
  return z.discriminatedUnion("kind", options, {
    error: () => wanted(`a mapping with the key "kind": one of ${quoted(names)}`, "Say first of which kind it is."),
  });
}

const load = kinds(
  [
    mapping(
      {
        kind: z.literal("sail"),
        sail: chosenName("sail of this file"),
        corner: oneOf(sailCorners, "which load of the sail"),
        lock: yesOrNo("true for a halyard that ends in a lock at the head: the line only hoists").exactOptional(),
        share: plain("share", "part of that load that this line takes").exactOptional(),
      },
      "load that a sail gives",
    ),
    mapping(
      {
        kind: z.literal("stated"),
        design: quantity("loadTension", "load in the design wind, between gusts"),
        light: quantity("loadTension", "load in light air, for a line that must go out by itself").exactOptional(),
        grows: oneOf(
          ["wind", "weight", "set"],
          "what makes it grow in a gust: the wind; a weight and what the crew sets do not",
        ).exactOptional(),
        spread: plain("share", "how far the truth may lie from these loads, as a part of them", 0, 0.9).exactOptional(),
      },
      "load as stated",
    ),
  ],
  ["sail", "stated"],
);

const coordinates = (meaning: string) =>
  z
    .tuple([quantity("coordinate", "ahead"), quantity("coordinate", "to lee"), quantity("coordinate", "up")], {
      error: () => wanted("three lengths: ahead, to lee, up", "Write them like [1.2 m, 0.3 m, 0 m]."),
    })
    .meta({ description: meaning });

const attachment = kinds(
  [
    mapping(
      { kind: z.literal("rated"), ratedLoad: quantity("workingLoad", "load that it is good for") },
      "an eye, strap or screw whose load is stated",
    ),
    mapping(
      {
        kind: z.literal("lashing"),
        twine: chosenName("rope of the catalogue"),
        rounds: count("rounds of the lashing", 1, 30),
        gap: quantity("lineLength", "distance between the eyes"),
        bar: quantity("sheaveDiameter", "bar of the thinner eye"),
      },
      "twine between two eyes",
    ),
    mapping({ kind: z.literal("shackle"), bar: quantity("sheaveDiameter", "diameter of its bar") }, "a steel shackle"),
  ],
  ["rated", "lashing", "shackle"],
);

const place = {
  name: chosenName("name of the station"),
  at: coordinates("where it sits: ahead, to lee, up, from any one point of the boat").exactOptional(),
  attached: attachment.exactOptional(),
  distance: quantity(
    "lineLength",
    "rope from the station before, or from the sail, to here, hauled in",
  ).exactOptional(),
};
const wrap = quantity(
  "wrapAngle",
  "angle over which the rope touches; worked out where the places before, here and after are given",
).exactOptional();
const lines = count("lines that share it", 1, 8).exactOptional();

const station = kinds(
  [
    mapping(
      { kind: z.literal("block"), ...place, block: chosenName("block of the catalogue"), wrap, lines },
      "a block",
    ),
    mapping({ kind: z.literal("ring"), ...place, ring: chosenName("ring of the catalogue"), wrap, lines }, "a ring"),
    mapping(
      {
        kind: z.literal("tackle"),
        ...place,
        parts: count("rope parts that pull on the moving block", 1, 12),
        hauledFrom: oneOf(["moving", "fixed"], "block that the hauling part leaves"),
        block: chosenName("block of the catalogue; one for each sheave"),
        leadBlocks: count("lead blocks after the tackle", 0, 8).exactOptional(),
        length: quantity("lineLength", "length of one part, hauled in").exactOptional(),
        letOut: quantity("lineLength", "length of one part, all let out").exactOptional(),
        otherParts: list(
          count("rope parts", 1, 12),
          11,
          "other numbers of parts that there is room for",
          0,
        ).exactOptional(),
      },
      "a purchase",
    ),
    mapping(
      {
        kind: z.literal("cleat"),
        ...place,
        cleat: chosenName("cleat of the catalogue"),
        turns: plain("turnCount", "turns round the base of a horn cleat", 0, 15).exactOptional(),
        eights: plain("turnCount", "crossings over its horns", 0, 10).exactOptional(),
        hitch: yesOrNo(
          "whether a locking hitch finishes it; when left out, on halyards and control lines that have a crossing",
        ).exactOptional(),
      },
      "a cleat",
    ),
  ],
  ["block", "ring", "tackle", "cleat"],
);

const end = (meaning: string) => nameIn(ropeEnds, meaning);

/** A line as it is written. */
const written = mapping(
  {
    kind: oneOf(lineKinds, "what the line is for"),
    note: words("anything worth knowing").exactOptional(),
    load,
    rope: list(
      mapping(
        { rope: chosenName("rope of the catalogue"), length: quantity("lineLength", "length of the piece") },
        "a length of one rope",
      ),
      4,
      "pieces from the sail to the hand",
    ),
    path: list(station, 12, "stations from the sail to the hand"),
    heldBy: oneOf(["hand", "cleat"], "what holds it while sailing"),
    hand: chosenName("who of the crew works it"),
    ends: mapping(
      {
        sail: end("how the rope ends at the sail, or where it is made fast"),
        hand: end("how it ends at the hand, where it is made fast there").exactOptional(),
        between: list(end("knot or splice"), 6, "knots and splices in between").exactOptional(),
      },
      "how the rope ends",
    ),
    inspected: mapping(
      {
        on: z.iso
          .date({ error: () => wanted("a date such as 2026-05-12", "Write year, month and day.") })
          .meta({ description: "day of the inspection" }),
        found: nameIn(useFactors, "what was found; it stands in the place of use"),
      },
      "what an inspection found",
    ).exactOptional(),
    sailAt: coordinates("where the sail end sits").exactOptional(),
    handAt: coordinates("where the hand, or what lies behind the last station, sits").exactOptional(),
    count: z
      .literal([1, 2], { error: () => wanted("1 or 2", "Write 2 for a line that the boat has on each side.") })
      .meta({ description: "how many such lines the boat has; 1 when left out" })
      .exactOptional(),
    form: oneOf(
      ["double-ended", "endless"],
      "double-ended: it can be hauled at both ends at once; endless: its ends are joined",
    ).exactOptional(),
    use: nameIn(useFactors, "how long it has been in use"),
    daysInSun: plain("sunDays", "whole days without a cover in full sun").exactOptional(),
    tailDrag: quantity("tension", "pull that drags the loose tail along").exactOptional(),
    movement: mapping(
      {
        allowed: quantity("stretch", "movement at the sail that is still right"),
        give: quantity("giveStiffness", "load that the sail drops for each metre it is given"),
        settled: quantity("duration", "time under load before the line was set or marked"),
        after: quantity("duration", "time from then to the end of the leg"),
      },
      "how far the set line may move the sail",
    ).exactOptional(),
    touches: list(chosenName("line of this file"), 6, "lines that it rubs on while it runs").exactOptional(),
    safetyFactor: plain("safetyFactor", "for this line instead of the boat's").exactOptional(),
    ease: mapping(
      {
        speed: quantity("ropeSpeed", "speed of the line through the hand"),
        duration: quantity("duration", "how long it runs"),
      },
      "how fast it is let out through the hand; by custom when left out",
    ).exactOptional(),
    limits: mapping(
      {
        leastDiameter: quantity(
          "ropeDiameter",
          "thinnest that it may be where the hand works it; by custom when left out",
        ).exactOptional(),
        hauling: quantity("handTension", "most pull to haul it; that of its hand when left out").exactOptional(),
        holding: quantity("handTension", "most pull to hold it; that of its hand when left out").exactOptional(),
        mostLine: quantity("lineLength", "most line that the hand hauls for each metre at the sail").exactOptional(),
        mass: quantity("mass", "dry mass of the line with its hardware").exactOptional(),
        cost: price("whole", "price of the line with its hardware").exactOptional(),
      },
      "what this line must keep to",
    ).exactOptional(),
  },
  "a line",
);

/** One line of a boat file, its angles worked out where places stand for them. */
export const lineSchema = written.transform((line, context): BoatLine => {
  const path = line.path.map((station, at): BoatStation => {
    if (station.kind !== "block" && station.kind !== "ring") return station;
    const wrap = wrapAt(line, at);
    if (typeof wrap === "string") context.addIssue({ code: "custom", path: ["path", at, "wrap"], message: wrap });
    return { ...station, wrap: typeof wrap === "string" ? 0 : wrap };
  });
  return { ...line, path };
}) satisfies z.ZodType<BoatLine>;
