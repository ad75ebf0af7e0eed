import type { Band } from "../sources/band.js";
import { choice, slideFrom } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { feelAt, resized, sizesOf, times } from "./line-changes.js";
import { demoLine, type LineFacts } from "./line-facts.js";
import { type Found, liveModel, modelOfFacts } from "./model.js";

const mostParts = 12;

/** Counts of parts that a reader may choose from: each up to a few more than the line has. */
function partsAround(parts: number): Readonly<Record<string, string>> {
  const most = Math.min(mostParts, Math.max(6, parts + 2));
  const counts = Array.from({ length: most - 1 }, (_, index) => index + 2).filter((count) => count <= most);
  return Object.fromEntries([...new Set([...counts, parts])].sort((a, b) => a - b).map((one) => [`${one}`, `${one}`]));
}

/** Controls of a line; a line without sheave or tackle has none for it. */
function controlsOf({ wind, line }: LineFacts, { rope, sheave, parts }: ReturnType<typeof sizesOf>) {
  const several = line.rope.length > 1 ? "Rope in the hand" : "Rope";
  return {
    wind: slideFrom({ label: "True wind", measure: "wind", minimum: 2, maximum: 40, step: 0.5, initial: wind }),
    rope: slideFrom({ label: several, measure: "length", minimum: 2, maximum: 16, step: 0.5, initial: rope }),
    ...(sheave !== undefined && {
      sheave: slideFrom({
        label: line.path.filter((one) => "block" in one).length > 1 ? "Sheave nearest the hand" : "Sheave",
        measure: "length",
        minimum: 8,
        maximum: 120,
        step: 1,
        initial: sheave,
      }),
    }),
    ...(parts !== undefined && { parts: choice("Parts of the tackle", partsAround(parts), `${parts}`) }),
  };
}

const [calmest, strongest] = [0.2, 1.5];

/** A line of a plan in other sizes and another wind. */
export const aLinePlan = modelOfFacts(demoLine, (facts) => {
  const { name, boat, load, wind: designWind } = facts;
  const sizes = sizesOf(facts);
  const loadIn = (wind: number): Band => times(load, (wind / designWind) ** 2);
  return liveModel({
    name: "a-line-plan",
    controls: controlsOf(facts, sizes),
    compute: ({ wind, rope, sheave, parts }, { say, sayFound }) => {
      const changed = resized(facts, {
        rope,
        ...(sheave !== undefined && { sheave }),
        ...(parts !== undefined && { parts: Number(parts) }),
      });
      const feel = feelAt(changed);
      const { hauling, easing, runOutLoad } = feel(loadIn(wind));
      const windFor = (at: number) => designWind * Math.sqrt(at / load.value);
      const { value, low, high } = runOutLoad;
      const free: Band = { value: windFor(value), low: windFor(low), high: windFor(high) };
      const haul: Found = { label: "Haul", measure: "force", ...hauling };
      const hold: Found = { label: "Hold", measure: "force", ...easing };
      const winds = evenly(calmest * Math.max(wind, designWind), strongest * Math.max(wind, designWind), 7);
      const curve = winds.map((one) => feel(loadIn(one)));
      const ends = (way: "hauling" | "easing") => ({
        low: curve.map((one) => one[way].low),
        high: curve.map((one) => one[way].high),
      });
      const out: Found = { label: "Goes out by itself from", measure: "wind", ...free };
      return {
        results: [
          haul,
          hold,
          { label: "Load", measure: "force", ...loadIn(wind) },
          { label: "Load from which it goes out by itself", measure: "force", ...runOutLoad },
          out,
        ],
        figure: {
          name: "your-line",
          title: `The ${name} takes ${say("force", haul.value)} to haul in ${say("wind", wind)}, ${say("force", hold.value)} to hold`,
          caption:
            "Hand force against the true wind; the load grows with its square. Solid: hauling. Dashed: holding. Grey tint: 90 % band. Other ropes and sheaves of the line grow in proportion to those nearest the hand.",
          altText: `Hand force against true wind. In ${say("wind", wind)} hauling takes ${say("force", haul.value)}, holding ${say("force", hold.value)}.`,
          x: { title: "True wind", measure: "wind", minimum: 0 },
          y: { title: "Hand force", measure: "force", minimum: 0 },
          panels: [
            {
              title: "",
              series: [
                {
                  name: "hand",
                  x: winds,
                  hauling: curve.map((one) => one.hauling.value),
                  easing: curve.map((one) => one.easing.value),
                  bands: { hauling: ends("hauling"), easing: ends("easing") },
                  highlight: true,
                },
                { name: "yours", x: [wind, wind], points: [haul.value, hold.value] },
              ],
            },
          ],
        },
        sentence: `The ${name} of ${boat} on ${say("length", rope)} rope in ${say("wind", wind)} of true wind: ${sayFound(haul)}, to haul, ${sayFound(hold)}, to hold.`,
      };
    },
  });
});
