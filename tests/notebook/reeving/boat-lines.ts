import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { loadBoat } from "../../../src/boat/load.js";
import { lineOf } from "../../../src/boat/ready.js";
import type { DrawnLine } from "../../../src/notebook/reeving/strips.js";

const folder = resolve(import.meta.dirname, "../../../notebooks/boats");

/** Every line of every demo boat under its design load. */
export const boatLines: readonly { readonly name: string; readonly line: DrawnLine; readonly load: number }[] =
  readdirSync(folder)
    .filter((file) => /^demo-.*\.yaml$/u.test(file) && !file.includes("shop"))
    .flatMap((file) => {
      const boat = loadBoat(resolve(folder, file));
      return Object.keys(boat.lines).map((name) => {
        const { parts, loads } = lineOf(boat, name);
        return { name: `${boat.name}, ${name}`, line: parts, load: loads.design.value };
      });
    });
