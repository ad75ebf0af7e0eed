import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { boatJsonSchema } from "../../src/boat/schema.js";

const file = new URL("../../notebooks/boats/boat.schema.json", import.meta.url);

describe("the JSON Schema beside the demo boats", () => {
  it("is the one of the boat file as it is now", () => {
    expect(JSON.parse(readFileSync(file, "utf8"))).toEqual(JSON.parse(JSON.stringify(boatJsonSchema())));
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
      "control",
    ]);
    expect(JSON.stringify(schema)).toContain('"examples":["6 mm"]');
  });
});
