import { ReevingError } from "../quantity/errors.js";

const kinds = ["sheave", "ring", "ratchet", "measured", "cleat", "tackle"] as const;

/**
 * Refuses what is no station of a line: data from a file or an untyped program may hold anything.
 *
 * @param part  a station, or a turn inside a tackle
 * @throws ReevingError when it is no object, has an unknown kind, or a name that is no text
 */
export function checkPart(part: unknown): void {
  const { kind, name } = (typeof part === "object" && part !== null ? part : {}) as Record<string, unknown>;
  if (typeof name !== "string") {
    refuse("name of a station", name, "a text", "Give every station a name.");
  }
  if (!kinds.some((known) => known === kind)) {
    refuse(`kind of station "${name}"`, kind, kinds.join(", "), "Use one of the kinds.");
  }
}

/**
 * Refuses a line that has no rope or no list of stations.
 *
 * @param line  anything
 * @throws ReevingError naming the part that is missing
 */
export function checkWhole(line: unknown): void {
  const { rope, stations } = (typeof line === "object" && line !== null ? line : {}) as Record<string, unknown>;
  const { stiffness } = (typeof rope === "object" && rope !== null ? rope : {}) as Record<string, unknown>;
  if (typeof stiffness !== "object" || stiffness === null) {
    refuse("rope of the line", rope, "diameter and stiffness", "Describe the rope.");
  }
  for (const term of ["tensionTerm", "constantTerm", "diameterTerm"]) {
    const value = (stiffness as Record<string, unknown>)[term];
    if (typeof value !== "number" || !(value >= 0 && value < Number.POSITIVE_INFINITY)) {
      refuse(`${term} of the rope's stiffness`, value, "a finite number, 0 or more", "Give all three terms.");
    }
  }
  if (!Array.isArray(stations)) {
    refuse("stations of the line", stations, "a list, empty for a rope in the air", "Give a list.");
  }
}

function refuse(quantity: string, value: unknown, allowed: string, advice: string): never {
  throw new ReevingError({
    quantity,
    value: typeof value === "object" ? JSON.stringify(value) : String(value),
    allowed,
    advice,
  });
}
