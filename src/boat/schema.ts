import { z } from "zod";
import { sailEditions } from "../wind/coefficients.js";
import type { SailName } from "../wind/sail-table.js";
import type { Boat } from "./boat.js";
import { catalogueSchema } from "./schema-catalogue.js";
import { daySchema } from "./schema-day.js";
import { kinds, lineSchema } from "./schema-lines.js";
import {
  chosenName,
  mapping,
  named,
  nameIn,
  oneOf,
  plain,
  price,
  quantity,
  wanted,
  words,
  yesOrNo,
} from "./schema-words.js";

/** Every sail that some edition has a table for. */
const sailNames = [
  ...new Set(Object.values(sailEditions).flatMap(({ sails }) => Object.keys(sails) as SailName[])),
].sort() as [SailName, ...SailName[]];

const sheet = kinds(
  [
    mapping(
      {
        kind: z.literal("boom"),
        boomAngle: quantity("boomAngle", "boom from the centreline"),
        forceLever: quantity("lever", "mast to where the sail pushes"),
        sheetLever: quantity("lever", "mast to where the sheet pulls"),
        sheetSlope: quantity("sheetSlope", "slope of the sheet above the level"),
      },
      "sheet of a sail on a boom",
    ),
    mapping(
      {
        kind: z.literal("clew"),
        leech: quantity("lineLength", "head to clew"),
        leechSag: quantity("sag", "sag of the leech"),
        leechShare: plain("share", "part of the sail force that the leech carries"),
        clewAngle: quantity("clewAngle", "angle at the clew between leech and foot"),
        leadAngle: quantity("clewAngle", "angle at the clew between the foot and the line of the sheet"),
      },
      "sheet at a free clew",
    ),
    mapping(
      {
        kind: z.literal("measured"),
        load: quantity("sheetLoad", "pull on the whole sheet as a scale showed it"),
        at: quantity("apparentWindSpeed", "apparent wind while it was measured"),
      },
      "sheet load that was measured",
    ),
  ],
  ["boom", "clew", "measured"],
);

const sail = mapping(
  {
    edition: nameIn(sailEditions, "printed table of sail coefficients"),
    table: oneOf(sailNames, "sail in that table"),
    area: quantity("sailArea", "area"),
    mass: quantity("mass", "mass of the sail").exactOptional(),
    course: quantity("trueWindAngle", "angle from the bow to the true wind on which the lines are checked"),
    boatSpeed: mapping(
      { design: quantity("boatSpeed", "in the design wind"), light: quantity("boatSpeed", "in light air") },
      "speed on that course",
    ),
    sheet: sheet.exactOptional(),
    edges: mapping(
      {
        luff: quantity("lineLength", "tack to head"),
        leech: quantity("lineLength", "head to clew"),
        foot: quantity("lineLength", "tack to clew"),
      },
      "straight lengths between the corners, for the loads of halyard, tack and outhaul",
    ).exactOptional(),
    luffOn: oneOf(
      ["mast", "stay", "flying"],
      "what the luff is on; a mast under a boom, otherwise set flying, when left out",
    ).exactOptional(),
    halyard: mapping(
      {
        luff: quantity("lineLength", "length of the luff"),
        luffSag: quantity("sag", "sag of the luff"),
        luffShare: plain("share", "part of the sail force that the luff carries"),
      },
      "luff that carries its own wind load",
    ).exactOptional(),
  },
  "a sail and the course on which it loads its lines",
);

const fileName = z
  .string()
  .meta({ description: "name of a catalogue file in the same folder", examples: ["shop.yaml"] });

/** How a file of the first form, which had no version, becomes one of the second. */
const newerForm =
  "Write version: 2 at its head. What changed since 1: ends: [splice] is ends: { sail: splice, hand: …, between: [ … ] } now; a V cleat is type: vee; a stated load says how it grows in a gust, grows: wind, weight or set.";

/** A boat file, with the catalogue in it or the name of a file that holds it. */
const fields = {
  version: z.literal(2, { error: () => wanted("version: 2", newerForm) }).meta({ description: "form of the file" }),
  name: chosenName("name of the boat"),
  note: words("anything worth knowing").exactOptional(),
  invented: yesOrNo("true when boat, crew, masses and prices are made up").exactOptional(),
  crew: named(
    mapping(
      {
        hold: quantity("handTension", "force that one hand keeps up all day"),
        pull: quantity("handTension", "force for a short haul"),
        grip: quantity(
          "maximumGrip",
          "largest grip of one rested hand, for whoever holds lines in a day",
        ).exactOptional(),
        hands: z
          .literal([1, 2], { error: () => wanted("1 or 2", "Count the hands that hold a line.") })
          .meta({ description: "hands that hold a line; one when left out" })
          .exactOptional(),
        gloves: yesOrNo("whether the hands wear gloves; bare when left out").exactOptional(),
      },
      "what somebody on board can pull",
    ),
    "crew by name or place",
  ),
  conditions: mapping(
    {
      designWind: quantity("windSpeed", "true wind that the boat is set up for"),
      lightWind: quantity("windSpeed", "lightest true wind in which it is sailed"),
      gustFactor: plain("gustFactor", "gust over mean wind", 1, 3),
      airTemperature: quantity("temperature", "temperature of the air"),
      airPressure: quantity("pressure", "pressure of the air"),
      wet: yesOrNo("whether the lines are wet"),
    },
    "wind, air and water",
  ),
  sails: named(sail, "sails by name"),
  lines: named(lineSchema, "lines by name"),
  limits: mapping(
    {
      handForce: quantity(
        "handTension",
        "most that any hand holds; the crew's own figures when left out",
      ).exactOptional(),
      safetyFactor: plain("safetyFactor", "break load over working load"),
      runOutWind: quantity("windSpeed", "true wind from which sheets must go out by themselves").exactOptional(),
      leastDiameter: quantity(
        "ropeDiameter",
        "thinnest that a line held by hand may be there; by custom when left out",
      ).exactOptional(),
      mass: quantity("mass", "dry mass of all lines with their hardware").exactOptional(),
      cost: price("whole", "price of all lines with their hardware").exactOptional(),
    },
    "what the boat must keep to",
  ),
  day: daySchema.exactOptional(),
};

/** A boat file as somebody writes it. */
export const boatFileSchema = mapping(
  {
    ...fields,
    catalogue: z.union([fileName, catalogueSchema], {
      error: () =>
        wanted("a catalogue, or the name of a file in the same folder that holds one", "See the demo boats."),
    }),
  },
  "a boat with its crew, sails, lines and limits",
);

/** A boat file whose catalogue has been put in its place. */
export const boatSchema = mapping({ ...fields, catalogue: catalogueSchema }, "a boat") satisfies z.ZodType<Boat>;
