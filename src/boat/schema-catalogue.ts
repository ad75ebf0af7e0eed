import { z } from "zod";
import { bearings } from "../materials/bearings.js";
import { cleats } from "../materials/cleats.js";
import { constructions } from "../materials/constructions.js";
import { fibres } from "../materials/fibres.js";
import { surfaces, treads } from "../materials/surfaces.js";
import { type Catalogue, lineKinds } from "./boat.js";
import { list, mapping, named, nameIn, oneOf, plain, price, quantity, wanted, yesOrNo } from "./schema-words.js";

const hardware = {
  for: list(
    oneOf(lineKinds, "kind of line"),
    lineKinds.length,
    "kinds of lines that it is for; all when left out",
  ).exactOptional(),
  mass: quantity("mass", "mass as weighed"),
  price: price("whole", "price of one"),
};

const rope = mapping(
  {
    fibre: nameIn(fibres, "fibre that carries the load"),
    construction: nameIn(constructions, "how the yarns are put together; a cover goes with coveredCore only"),
    cover: mapping(
      {
        fibre: nameIn(fibres, "fibre of the cover"),
        strands: z
          .literal([8, 16, 24], { error: () => wanted("8, 16 or 24", "Count the strands round the cover.") })
          .meta({ description: "strands of the cover" }),
      },
      "cover over the core",
    ).exactOptional(),
    diameter: quantity("ropeDiameter", "diameter under light tension"),
    mass: quantity("linearDensity", "mass of a dry metre as weighed; worked out when left out").exactOptional(),
    ratedStrength: quantity(
      "breakLoad",
      "break load that the maker states, new and straight; worked out when left out",
    ).exactOptional(),
    price: price("metre", "price of a metre"),
  },
  "a rope that can be had",
);

const block = mapping(
  {
    diameter: quantity("sheaveDiameter", "diameter at the bottom of the groove"),
    groove: quantity("grooveWidth", "width of the groove"),
    bearing: nameIn(bearings, "how the sheave turns"),
    workingLoad: quantity("workingLoad", "load that the maker allows"),
    ratchet: mapping(
      {
        tread: nameIn(treads, "what the rope lies on"),
        engageLoad: quantity("engageLoad", "block load above which it locks; always on when left out").exactOptional(),
      },
      "makes the block a ratchet",
    ).exactOptional(),
    builtIn: yesOrNo(
      "true for a sheave that is built into mast or deck: it takes the place of such a one only",
    ).exactOptional(),
    ...hardware,
  },
  "a single block that can be had",
);

const ring = mapping(
  {
    diameter: quantity("sheaveDiameter", "diameter round which the ring bends the rope"),
    opening: quantity("grooveWidth", "width of the hole"),
    surface: nameIn(surfaces, "what the rope slides on"),
    workingLoad: quantity("workingLoad", "load that the maker allows"),
    ...hardware,
  },
  "a ring that can be had",
);

const cleat = mapping(
  {
    type: nameIn(cleats, "how it grips"),
    thinnest: quantity("ropeDiameter", "thinnest rope that it takes"),
    thickest: quantity("ropeDiameter", "thickest rope that it takes"),
    ratedLoad: quantity(
      "workingLoad",
      "load that the maker allows; judged from the size when left out",
    ).exactOptional(),
    ...hardware,
  },
  "a cleat that can be had",
);

const winch = mapping(
  {
    drumRadius: quantity("drumRadius", "middle of the winch to the rope on its drum"),
    handleLength: quantity("handleLength", "middle of the winch to the hand on its handle"),
    gearRatios: list(
      plain("gearRatio", "turns of the handle for one turn of the drum"),
      4,
      "its gears; [1] where the handle turns the drum directly",
    ),
    selfTailing: yesOrNo("whether jaws over the drum hold the tail"),
    ratedLoad: quantity("workingLoad", "load that the maker allows"),
    ...hardware,
  },
  "a winch that can be had",
);

/** What can be had: ropes and hardware, with the user's own masses and prices. */
export const catalogueSchema = mapping(
  {
    ropes: named(rope, "ropes by name"),
    blocks: named(block, "blocks by name"),
    rings: named(ring, "rings by name"),
    cleats: named(cleat, "cleats by name"),
    winches: named(winch, "winches by name").exactOptional(),
  },
  "ropes and hardware that can be had",
) satisfies z.ZodType<Catalogue>;
