import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import { boatJsonSchema } from "../../src/boat/json-schema.js";
import { demoNames, demoText, smallBoat, smallBoatWith } from "./small-boat.js";

const file = new URL("../../notebooks/boats/boat.schema.json", import.meta.url);

describe("the JSON Schema beside the demo boats", () => {
  it("is the one of the boat file as it is now", () => {
    expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(JSON.parse(JSON.stringify(boatJsonSchema())));
  });

  it("takes the demo boats and the small one, and refuses what the reader refuses by its form", () => {
    const schema = z.fromJSONSchema(JSON.parse(readFileSync(file, "utf8")));
    const takes = (text: string) => schema.safeParse(parse(text)).success;
    for (const name of demoNames) expect(takes(demoText(`${name}.yaml`)), name).toBe(true);
    expect(takes(smallBoat)).toBe(true);
    for (const change of [
      ["heldBy: hand", "heldby: hand"],
      ["kind: halyard", "kind: haliard"],
      ["area: 8 m^2", "area: 8"],
      ["parts: 3", "parts: 3.5"],
      ["strands: 16", "strands: 12"],
      ["  wet: false\n", ""],
    ] as const)
      expect(takes(smallBoatWith(change)), change[1]).toBe(false);
  });

  it("refuses unknown keys, knows words and shows examples of quantities", () => {
    const schema = boatJsonSchema() as {
      additionalProperties: boolean;
      required: string[];
      properties: Record<string, { additionalProperties?: { properties: Record<string, { enum?: string[] }> } }>;
    };
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toContain("lines");
    expect(schema.required).not.toContain("note");
    expect(schema.properties.lines!.additionalProperties!.properties.kind!.enum).toEqual([
      "sheet",
      "halyard",
      "vang",
      "control",
    ]);
    expect(JSON.stringify(schema)).toContain('"examples":["6 mm"]');
  });
});
