import type { Feel } from "../boat/judge-hand.js";
import { bearings } from "../materials/bearings.js";
import type { StrandCount } from "../materials/covers.js";
import type { PanelFacts, Series } from "../notebook/output.js";
import { choice, slideFrom } from "./control.js";
import { evenly } from "./demo-skiff.js";
import { feelAt, feelsCover, resized, sizesOf, times, withBearings, withCover } from "./line-changes.js";
import { demoLine, type LineFacts } from "./line-facts.js";
import { liveModel, modelOfFacts } from "./model.js";

/** A line in two versions, each with the word that the page has for it. */
export interface VersionFacts extends PanelFacts {
  readonly about: "two versions of a line";
  readonly before: LineFacts;
  readonly after: LineFacts;
  readonly words: { readonly before: string; readonly after: string };
}

/**
 * A line in two versions, as a panel takes it.
 *
 * @param versions  the line before and after, and the page's words for the two
 * @returns facts for the panel
 */
export function versionFacts(versions: Omit<VersionFacts, "about">): VersionFacts {
  return { about: "two versions of a line", ...versions };
}

const kept = "own";
const covers: Readonly<Record<"8" | "16" | "24", StrandCount>> = { 8: 8, 16: 16, 24: 24 };

function controlsOf({ before, after }: VersionFacts) {
  const { rope, sheave } = sizesOf(after);
  return {
    load: slideFrom({
      label: "Load",
      measure: "force",
      minimum: 10,
      maximum: 4 * before.load.value,
      step: 5,
      initial: before.load.value,
    }),
    ...(sheave !== undefined && {
      ratio: slideFrom({
        label: "Sheave over rope, after",
        measure: "plain",
        minimum: 2,
        maximum: 30,
        step: 0.5,
        initial: sheave / rope,
      }),
      bearing: choice("Bearings, after", { [kept]: "as they are", ball: "balls", plain: "plain" }, kept),
    }),
    ...(feelsCover(after) && {
      cover: choice(
        "Cover, after",
        {
          [kept]: "as it is",
          "8": "8 strands, coarse",
          "16": "16 strands",
          "24": "24 strands, smooth",
          stripped: "stripped core",
        },
        kept,
      ),
    }),
  };
}

type Asked = { readonly ratio?: number; readonly bearing?: string; readonly cover?: string };

/** The second version as the reader wants it. */
function changed(after: LineFacts, { ratio, bearing = kept, cover = kept }: Asked): LineFacts {
  const { rope } = sizesOf(after);
  const sized = ratio === undefined ? after : resized(after, { sheave: ratio * rope });
  const turning = bearing in bearings ? withBearings(sized, bearing as keyof typeof bearings) : sized;
  if (cover === kept) return turning;
  if (cover === "stripped") return withCover(turning, cover);
  return withCover(turning, { fibre: "polyester", strands: covers[cover as keyof typeof covers] });
}

const ways = [
  ["Haul", "hauling"],
  ["Hold", "easing"],
] as const;

/** A line before and after a change, under the same load. */
export const beforeAndAfter = modelOfFacts<VersionFacts>(
  {
    about: "two versions of a line",
    before: withBearings(demoLine, "plain"),
    after: demoLine,
    words: { before: "before", after: "after" },
  },
  (facts) => {
    const { before, after, words } = facts;
    const was = feelAt(before);
    return liveModel({
      name: "before-and-after",
      controls: controlsOf(facts),
      compute: ({ load, ...asked }, { say }) => {
        const is = feelAt(changed(after, asked));
        const scale = load / before.load.value;
        const at = (factor: number) => [was(times(before.load, factor)), is(times(after.load, factor))] as const;
        const [old, now] = at(scale);
        const factors = evenly(0.1 * scale, 1.4 * scale, 6);
        const curves = factors.map(at);
        const loads = factors.map((factor) => factor * before.load.value);
        const seriesOf = (name: string, feels: readonly Feel[]): Series => ({
          name,
          x: loads,
          hauling: feels.map(({ hauling }) => hauling.value),
          easing: feels.map(({ easing }) => easing.value),
        });
        const ends = (way: "hauling" | "easing") => ({
          low: curves.map(([, feel]) => feel[way].low),
          high: curves.map(([, feel]) => feel[way].high),
        });
        const less = (100 * now.hauling.value) / old.hauling.value;
        return {
          results: [
            ...ways.flatMap(([label, way]) => [
              { label: `${label}, ${words.before}`, measure: "force", ...old[way] } as const,
              { label: `${label}, ${words.after}`, measure: "force", ...now[way] } as const,
            ]),
            { label: `Haul, ${words.after} over ${words.before}`, measure: "share", value: less },
          ],
          figure: {
            name: "your-two-versions",
            title: `At ${say("force", load)} the ${before.name} takes ${say("force", old.hauling.value)} to haul ${words.before}, ${say("force", now.hauling.value)} ${words.after}`,
            caption: `Hand force against the load, ${words.before} and ${words.after}. Solid: hauling. Dashed: holding. Grey tint: 90 % band of the line ${words.after}.`,
            altText: `Hand force against load. At ${say("force", load)} hauling takes ${say("force", old.hauling.value)} ${words.before} and ${say("force", now.hauling.value)} ${words.after}; holding ${say("force", old.easing.value)} and ${say("force", now.easing.value)}.`,
            x: { title: "Load", measure: "force", minimum: 0 },
            y: { title: "Hand force", measure: "force", minimum: 0 },
            panels: [
              {
                title: "",
                series: [
                  seriesOf(
                    words.before,
                    curves.map(([feel]) => feel),
                  ),
                  {
                    ...seriesOf(
                      words.after,
                      curves.map(([, feel]) => feel),
                    ),
                    bands: { hauling: ends("hauling"), easing: ends("easing") },
                    highlight: true,
                  },
                ],
              },
            ],
          },
          sentence: `Under ${say("force", load)} the ${before.name} of ${after.boat} takes ${say("force", old.hauling.value)} to haul ${words.before} and ${say("force", now.hauling.value)} ${words.after}; ${say("force", old.easing.value)} and ${say("force", now.easing.value)} are left to hold.`,
        };
      },
    });
  },
);
