import { z } from "zod";
import { boatFileSchema } from "./schema.js";

/**
 * The form of a boat file as JSON Schema, for editors that help while one writes.
 *
 * @returns JSON Schema of draft 2020-12; loads and lengths are texts with units there
 */
export function boatJsonSchema(): object {
  return z.toJSONSchema(boatFileSchema, { io: "input", unrepresentable: "any" });
}
