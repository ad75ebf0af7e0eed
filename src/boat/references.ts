import { mostRepeats, repeatsOf } from "../crew/day-schedule.js";
import { Refusal } from "../quantity/errors.js";
import { figures } from "../quantity/print.js";
import { checkedMake } from "../rope/make.js";
import type { Boat, BoatLine, BoatStation, Catalogue, Named, Price, TackleStation } from "./boat.js";
import { dayOf, heldInDay } from "./judge-day.js";
import { lineLoads } from "./loads.js";
import { makeOf } from "./pieces.js";
import { lineOf } from "./ready.js";
import { didYouMean, quoted, quotedForeign } from "./schema-words.js";

/** Something that does not go together, and where it stands. */
export interface Finding {
  readonly path: readonly (string | number)[];
  readonly found: string;
  readonly allowed: string;
  readonly advice: string;
}

/** What the form alone cannot tell: names that nothing has, things that do not go together. */
export function crossTroubles(boat: Boat): Finding[] {
  const whole = [...windTroubles(boat), ...ropeTroubles(boat), ...cleatTroubles(boat), ...currencyTroubles(boat)];
  const names = Object.entries(boat.lines).flatMap(([name, line]) => nameTroubles(boat, name, line));
  const found = [...whole, ...names, ...dayTroubles(boat)];
  // The models are asked only about a boat whose parts are all there.
  return found.length > 0
    ? found
    : Object.entries(boat.lines).flatMap(([name, line]) => lineTroubles(boat, name, line));
}

/** A name that must be one of those in a table. */
function unknown(path: Finding["path"], word: string, table: object, what: string): Finding[] {
  const known = Object.keys(table);
  if (known.includes(word)) return [];
  const allowed = known.length === 0 ? `${what}, of which this file has none` : `${what}: ${quoted(known)}`;
  return [{ path, found: quotedForeign(word), allowed, advice: didYouMean(word, known) }];
}

/** What a model refuses, as a trouble of the file. */
function refused(path: Finding["path"], trial: () => unknown): Finding[] {
  try {
    trial();
    return [];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return [{ path, found: `${error.quantity}: ${error.value}`, allowed: error.allowed, advice: error.advice }];
  }
}

function windTroubles({ conditions, limits }: Boat): Finding[] {
  const { designWind, lightWind } = conditions;
  const wind = (name: string, value: number | undefined, path: Finding["path"]): Finding[] =>
    value === undefined || (value > 0 && value <= designWind)
      ? []
      : [
          {
            path,
            found: `${figures(value)} m/s, where the design wind is ${figures(designWind)} m/s`,
            allowed: `a ${name} above nothing and not above the design wind`,
            advice: "Exchange the two, or mend the one that is wrong.",
          },
        ];
  return [
    ...wind("light wind", lightWind, ["conditions", "lightWind"]),
    ...wind("run-out wind", limits.runOutWind, ["limits", "runOutWind"]),
  ];
}

function ropeTroubles({ catalogue: { ropes } }: Boat): Finding[] {
  return Object.keys(ropes).flatMap((name) =>
    refused(["catalogue", "ropes", name], () => checkedMake(makeOf(ropes, name))),
  );
}

function cleatTroubles({ catalogue: { cleats } }: Boat): Finding[] {
  return Object.entries(cleats)
    .filter(([, { thinnest, thickest }]) => thinnest > thickest)
    .map(([name]) => ({
      path: ["catalogue", "cleats", name],
      found: "a thinnest rope that is thicker than the thickest",
      allowed: "thinnest not above thickest",
      advice: "Exchange the two.",
    }));
}

/** Lines that the day holds but nobody can, people without a grip, and times that do not go together. */
function dayTroubles({ day, lines, crew }: Boat): Finding[] {
  if (day === undefined) return [];
  const held = day.races.flatMap(({ legs }, race) =>
    legs.flatMap(({ holds }, leg) =>
      Object.keys(holds).flatMap((name): Finding[] => {
        const path = ["day", "races", race, "legs", leg, "holds", name];
        const strange = unknown(path, name, lines, "a line of this file");
        if (strange.length > 0 || lines[name]!.heldBy === "hand") return strange;
        const advice = "Leave it out here, or write heldBy: hand at the line.";
        return [{ path, found: `"${name}", which a cleat holds`, allowed: "a line that is held by hand", advice }];
      }),
    ),
  );
  const hands = new Set(heldInDay(day).flatMap((name) => (Object.hasOwn(lines, name) ? [lines[name]!.hand] : [])));
  const weak = [...hands]
    .filter((name) => Object.hasOwn(crew, name) && crew[name]!.grip === undefined)
    .map((name) => ({
      path: ["crew", name],
      found: "no grip",
      allowed: "the largest grip of one rested hand of whoever holds a line in the day",
      advice: 'Squeeze a hand scale, and write for example "grip: 350 N".',
    }));
  const often = oftenTroubles(day);
  return [...held, ...weak, ...often, ...(often.length > 0 ? [] : refused(["day"], () => dayOf(day, "")))];
}

/** The leg with which gusts and tacks become too many to be worked out one by one. */
function oftenTroubles({ races }: NonNullable<Boat["day"]>): Finding[] {
  let repeats = 0;
  for (const [race, { legs }] of races.entries())
    for (const [leg, one] of legs.entries()) {
      repeats += repeatsOf(one);
      if (repeats > mostRepeats)
        return [
          {
            path: ["day", "races", race, "legs", leg],
            found: `${repeats} gusts and tacks up to here`,
            allowed: `at most ${mostRepeats} in a day`,
            advice: "Let them come back more seldom.",
          },
        ];
    }
  return [];
}

function currencyTroubles({ catalogue, lines, limits }: Boat): Finding[] {
  const prices = Object.entries(catalogue).flatMap(([kind, things]) =>
    Object.entries(things as Named<{ price: Price }>).map(([name, { price }]) => ({
      path: ["catalogue", kind, name, "price"],
      price,
    })),
  );
  if (limits.cost !== undefined) prices.push({ path: ["limits", "cost"], price: limits.cost });
  for (const [name, line] of Object.entries(lines))
    if (line.limits?.cost !== undefined)
      prices.push({ path: ["lines", name, "limits", "cost"], price: line.limits.cost });
  const first = prices[0]?.price.currency;
  return prices
    .filter(({ price }) => price.currency !== first)
    .map(({ path, price }) => ({
      path,
      found: price.currency === "" ? "a price without a currency" : price.currency,
      allowed: `one currency in the whole file: ${first === "" ? "none" : first}`,
      advice: "Turn the price into that currency.",
    }));
}

function nameTroubles({ sails, crew, lines, catalogue }: Boat, name: string, line: BoatLine): Finding[] {
  const path = ["lines", name];
  return [
    ...line.rope.flatMap(({ rope }, at) =>
      unknown([...path, "rope", at, "rope"], rope, catalogue.ropes, "a rope of the catalogue"),
    ),
    ...line.path.flatMap((station, at) => stationTroubles(catalogue, [...path, "path", at], station)),
    ...unknown([...path, "hand"], line.hand, crew, "one of the crew"),
    ...(line.touches ?? []).flatMap((other, at) =>
      unknown([...path, "touches", at], other, lines, "a line of this file"),
    ),
    ...(line.load.kind === "sail"
      ? unknown([...path, "load", "sail"], line.load.sail, sails, "a sail of this file")
      : []),
  ];
}

function lineTroubles(boat: Boat, name: string, line: BoatLine): Finding[] {
  const path = ["lines", name];
  const form = [...pathTroubles(path, line), ...lengthTroubles(path, line)];
  const load = refused([...path, "load"], () => lineLoads(boat, line));
  return form.length + load.length > 0 ? [...form, ...load] : refused(path, () => lineOf(boat, name));
}

function stationTroubles(catalogue: Catalogue, path: Finding["path"], station: BoatStation): Finding[] {
  const { attached } = station;
  const twine =
    attached?.kind === "lashing"
      ? unknown([...path, "attached", "twine"], attached.twine, catalogue.ropes, "a rope of the catalogue")
      : [];
  return [...twine, ...thingTroubles(catalogue, path, station)];
}

function thingTroubles(catalogue: Catalogue, path: Finding["path"], station: BoatStation): Finding[] {
  if (station.kind === "ring")
    return unknown([...path, "ring"], station.ring, catalogue.rings, "a ring of the catalogue");
  if (station.kind !== "cleat")
    return unknown([...path, "block"], station.block, catalogue.blocks, "a block of the catalogue");
  const strange = unknown([...path, "cleat"], station.cleat, catalogue.cleats, "a cleat of the catalogue");
  const horn = catalogue.cleats[station.cleat]?.type === "horn";
  if (strange.length > 0) return strange;
  if (horn !== (station.turns !== undefined))
    return [
      {
        path,
        found: horn ? "a horn cleat without turns" : "turns on a cleat that has no horns",
        allowed: "turns exactly on a horn cleat",
        advice: horn ? "Say how many turns lie round it." : "Leave turns and eights out.",
      },
    ];
  if (station.hitch !== true || (horn && (station.eights ?? 0) >= 1)) return [];
  return [
    {
      path: [...path, "hitch"],
      found: horn ? "a locking hitch without a crossing" : "a locking hitch on a cleat that has no horns",
      allowed: "a hitch over at least one crossing of a horn cleat",
      advice: horn ? "Say how many eights lie under it, or leave hitch out." : "Leave hitch out.",
    },
  ];
}

function pathTroubles(path: Finding["path"], { path: stations, heldBy }: BoatLine): Finding[] {
  const troubles: Finding[] = [];
  const seen = new Set<string>();
  stations.forEach(({ name }, at) => {
    if (seen.has(name))
      troubles.push({
        path: [...path, "path", at, "name"],
        found: `"${name}" for the second time`,
        allowed: "every station of a line with a name of its own",
        advice: "A block that the line passes twice is part of a tackle: describe it as one.",
      });
    seen.add(name);
  });
  const cleats = stations.filter(({ kind }) => kind === "cleat").length;
  if (cleats > 1 || (heldBy === "cleat" && cleats === 0))
    troubles.push({
      path: [...path, "path"],
      found: `${cleats} cleats`,
      allowed: heldBy === "cleat" ? "one cleat, which holds the line" : "at most one cleat",
      advice: "Name the cleat that holds while sailing.",
    });
  return troubles;
}

/** Rope in a tackle: let out where that is known. */
function inTackle({ length = 0, letOut = length, parts }: TackleStation): number {
  return Math.max(length, letOut) * parts;
}

/** Rope that the way takes, sail to the last station. */
function wayLength(stations: readonly BoatStation[]): number {
  return stations.reduce(
    (sum, station) => sum + (station.distance ?? 0) + (station.kind === "tackle" ? inTackle(station) : 0),
    0,
  );
}

function lengthTroubles(path: Finding["path"], line: BoatLine): Finding[] {
  const { path: stations, rope, movement } = line;
  if (rope.length > 1 || movement !== undefined) {
    const at = stations.findIndex(
      (one) => one.distance === undefined || (one.kind === "tackle" && one.length === undefined),
    );
    const bare = stations[at];
    if (bare !== undefined)
      return [
        {
          path: [...path, "path", at],
          found: bare.distance === undefined ? "no distance" : "no length of a part",
          allowed:
            "a distance at every station, and a length at every tackle, of a line of several ropes or of one whose movement is asked for",
          advice: "Measure the rope from the station before to this one, and one part of a tackle, hauled in.",
        },
      ];
  }
  const way = wayLength(stations);
  const there = rope.reduce((sum, { length }) => sum + length, 0);
  if (way <= there) return [];
  return [
    {
      path: [...path, "rope"],
      found: `${figures(there)} m of rope for a way of ${figures(way)} m`,
      allowed: "at least as much rope as the way takes",
      advice: "Mend the lengths of the rope or the distances.",
    },
  ];
}
