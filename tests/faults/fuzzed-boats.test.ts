import { expect, test } from "vitest";
import { boatOf } from "../../src/boat/read.js";
import { BoatFileError } from "../../src/boat/trouble.js";
import { smallBoat } from "../boat/small-boat.js";
import { long } from "../long.js";
import { damaged, seeded } from "./random.js";

const cases = long(500, 10_000);
/** The small boat with its mainsheet alone. */
const shortBoat = smallBoat
  .replace(/ {2}halyard:\n.*?(?=catalogue:)/su, "")
  .replace(/^ +(?:braid 4|block 40|horn):.*\n/gmu, "");

test(`${cases} damaged boat files: each is read, or refused with the place of what is wrong`, () => {
  const random = seeded(7);
  expect(Object.keys(boatOf(shortBoat, { file: "whole.yaml" }).lines)).toEqual(["mainsheet"]);
  const counts = { read: 0, refused: 0 };
  for (let number = 0; number < cases; number += 1) {
    const text = damaged(shortBoat, random);
    try {
      expect(Object.keys(boatOf(text, { file: "hurt.yaml" }).lines).length).toBeGreaterThan(0);
      counts.read += 1;
    } catch (error) {
      if (!(error instanceof BoatFileError)) throw new Error(`case ${number} of seed 7: ${text}`, { cause: error });
      expect(error.troubles.length).toBeGreaterThan(0);
      expect(error.message).toContain("hurt.yaml");
      counts.refused += 1;
    }
  }
  expect(counts.read + counts.refused).toBe(cases);
  // Both ends are met often enough to mean something.
  expect(Math.min(counts.read, counts.refused)).toBeGreaterThan(cases / 100);
});
