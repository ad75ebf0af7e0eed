import { allDayFactor } from "../crew/all-day.js";
import { crewDays } from "../crew/crew-days.js";
import { ratesOf } from "../crew/fatigue.js";
import { holdingTension } from "../crew/grip-demand.js";
import { dayAtHand, type SheetOption } from "../crew/sheet-option.js";
import { bearings } from "../materials/bearings.js";
import { type Cover, coverFriction } from "../materials/covers.js";
import { personalSpread } from "../materials/people-fatigue.js";
import { stiffnessLaws } from "../materials/stiffness.js";
import { type TreadName, treads } from "../materials/surfaces.js";
import { wearVerdict } from "../materials/wear.js";
import type { Series } from "../notebook/output.js";
import type { Station } from "../reeving/reeving.js";
import { tackle } from "../reeving/tackle.js";
import { type Band, bandOf } from "../sources/band.js";
import { coefficient } from "../sources/coefficient.js";
import { sheetHolds } from "../uncertainty/sheet-hold.js";
import { choice, slide } from "./control.js";
import { coverControls, coverOf, type strandCounts, treadWords } from "./covers.js";
import { blockDrag, gennakerLoad, windForLoad } from "./demo-skiff.js";
import { lastAnswer } from "./last-answer.js";
import { liveModel } from "./model.js";
import { drawnDay, gustFactor, raceDay, runsOf } from "./race-day.js";

const ownGrip = coefficient({
  value: 330,
  unit: "N",
  low: 300,
  high: 360,
  status: "invented for the demo",
  place: "grip of the demo crew on a hand scale, and how it varies from day to day",
});

/** A sheet of 7 mm over one ratchet block of 63 mm, with a purchase of two parts before it where one is wanted. */
function sheetOf(cover: Cover, tread: TreadName, parts: 1 | 2): SheetOption {
  const { braidedCover } = stiffnessLaws;
  const diameter = 0.063;
  return {
    name: "your sheet",
    parts: [],
    hold: { cover, diameter: 0.007, hands: 1 },
    causes: {
      tread: coverFriction(cover, treads[tread]),
      bearing: bearings.ball.friction,
      radius: bearings.ball.radiusShare,
      tensionTerm: braidedCover.tensionTerm,
      constantTerm: braidedCover.constantTerm,
      diameterTerm: braidedCover.diameterTerm,
    },
    lineWith: (values) => {
      const block = {
        diameter,
        wrapAngle: Math.PI,
        pinRadius: (diameter / 2) * values.radius!,
        bearingFriction: values.bearing!,
        drag: blockDrag.value,
      };
      const purchase: Station[] =
        parts === 1
          ? []
          : [
              {
                kind: "tackle",
                name: "purchase",
                reeving: tackle({
                  parts,
                  hauledFrom: "moving",
                  turn: { ...block, kind: "sheave", name: "clew block" },
                }),
              },
            ];
      const { tensionTerm, constantTerm, diameterTerm } = values as Record<keyof typeof braidedCover, number>;
      return {
        rope: { diameter: 0.007, stiffness: { tensionTerm, constantTerm, diameterTerm } },
        stations: [...purchase, { ...block, kind: "ratchet", name: "ratchet", treadFriction: values.tread! }],
      };
    },
  };
}

/** The sheet as the reader rigs it, and what of a load it leaves in the hand. */
const rigged = lastAnswer((strands: keyof typeof strandCounts, wet: boolean, tread: TreadName, parts: 1 | 2) => {
  const option = sheetOf(coverOf({ strands, wet }), tread, parts);
  return { option, holds: sheetHolds(option) };
});

/** Grip of a person whose hand scale says so, as it varies from day to day. */
const gripBand = (grip: number): Band => ({
  value: grip,
  low: (grip * ownGrip.low) / ownGrip.value,
  high: (grip * ownGrip.high) / ownGrip.value,
});

const initialWind = 8;

/** The highest load that a hand holds all day: all loads of the day grow in step, so any day tells it. */
const allDayLoad = lastAnswer((option: SheetOption, races: number, grip: number): Band => {
  const load = gennakerLoad(initialWind);
  const { value, low, high } = allDayFactor({
    intervals: raceDay(races, load),
    maximumGrip: gripBand(grip),
    option,
  });
  return { value: value * load, low: low * load, high: high * load };
});

const hour = 3600;
const drawnEvery = 120;

/** Persons who tire as printed, half again as fast, and half as fast. */
function personsHolding(tension: number) {
  const { fatigueRate, recoveryRate, restFactor } = ratesOf("hand");
  const { value, low, high } = personalSpread.fatigue;
  const each = (one: number) => Float64Array.of(one, one, one);
  return {
    holdingTension: each(tension),
    fatigueRate: Float64Array.of(value * fatigueRate, high * fatigueRate, low * fatigueRate),
    recoveryRate: each(recoveryRate),
    restFactor: each(restFactor),
  };
}

/** A hand through a day of races. */
export const handsThroughARaceDay = liveModel({
  name: "hands-through-a-race-day",
  controls: {
    wind: slide({
      label: "Apparent wind on a run",
      measure: "wind",
      minimum: 4,
      maximum: 16,
      step: 0.5,
      initial: initialWind,
    }),
    strands: { ...coverControls.strands, initial: "16" },
    tread: choice("Ratchet", treadWords, "faceted"),
    wet: coverControls.wet,
    purchase: choice("Purchase at the clew", { "1": "none", "2": "2:1" }, "1"),
    races: choice("Races", { "1": "one", "2": "two", "3": "three", "4": "four" }, "3"),
    grip: slide({
      label: "Your grip on a hand scale",
      measure: "force",
      minimum: 100,
      maximum: 800,
      step: 10,
      initial: ownGrip.value,
    }),
  },
  compute: ({ wind, strands, tread, wet, purchase, races, grip }, { say, sayFound }) => {
    const { option, holds } = rigged(strands, wet, tread, purchase === "1" ? 1 : 2);
    const load = gennakerLoad(wind);
    const maximumGrip = gripBand(grip);
    const intervals = raceDay(Number(races), load);
    const most = {
      label: "Highest sheet load all day",
      measure: "force",
      ...allDayLoad(option, Number(races), grip),
    } as const;
    const windBand: Band = {
      value: windForLoad(most.value),
      low: windForLoad(most.low),
      high: windForLoad(most.high),
    };
    const onRun = holds(load);
    const holding = holdingTension({ hold: option.hold, maximumGrip });
    const asked = bandOf({ gust: holds(gustFactor * load), holding }, (one) => (100 * one.gust) / one.holding);
    const { stretches, marks, times: at } = drawnDay(intervals, drawnEvery);
    const day = crewDays({
      day: dayAtHand({ intervals: stretches, option }),
      crews: personsHolding(holding.value),
      marks,
    });
    const hours = [0, ...at.map((time) => time / hour)];
    const curve = (person: number) => [100, ...marks.map((_, mark) => 100 * day.marked[person * marks.length + mark]!)];
    const runs = runsOf(Number(races));
    const series: Series[] = [
      { name: "left", x: hours, line: curve(0), highlight: true },
      { name: "tires fast", x: hours, line: curve(1) },
      { name: "tires slowly", x: hours, line: curve(2) },
      {
        name: "asked in gusts",
        x: runs.flatMap(({ from, to }) => [from / hour, to / hour, to / hour]),
        line: runs.flatMap(() => [asked.value, asked.value, null]),
      },
    ];
    const givesOut = day.givesOut[0]!;
    const lasts = givesOut === Number.POSITIVE_INFINITY;
    const ending = lasts
      ? "A middling hand lasts the day."
      : `A middling hand gives out after ${say("hours", givesOut / hour, 2)}.`;
    const wear = wearVerdict({ tread, cover: option.hold.cover });
    return {
      results: [
        { label: "Hand on a run", measure: "force", ...onRun },
        { label: "A gust asks of your grip", measure: "share", ...asked },
        most,
        { label: "Wind that makes it", measure: "wind", ...windBand },
        ...(lasts ? [] : [{ label: "Hand gives out after", measure: "hours", value: givesOut / hour } as const]),
      ],
      figure: {
        name: "your-day",
        title: ending,
        caption:
          "Grip that is left, as a share of the rested maximum. Quiet lines: somebody who tires half again as fast, and half as fast. Short lines: what a gust on a run asks. Where left falls below asked, the hand gives out.",
        altText: `Grip left against time. Gusts ask for ${say("share", asked.value, 2)}. ${ending}`,
        x: { title: "Time on the water", measure: "hours", minimum: 0 },
        y: { title: "Grip left", measure: "share", minimum: 0, maximum: 100 },
        panels: [{ title: "", series }],
      },
      sentence: `${ending} All day it holds ${sayFound(most)}, on the sheet, the load of ${say("wind", windBand.value, 2)}.${wear.outcome === "enough" ? "" : " This tread wears out this cover."}`,
    };
  },
});
