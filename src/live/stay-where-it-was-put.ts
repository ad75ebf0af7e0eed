import { cleats, gripRecords } from "../materials/cleats.js";
import type { Cover } from "../materials/covers.js";
import { creepLaws } from "../materials/creep.js";
import { stiffnessConversion } from "../materials/elasticity.js";
import { fibres } from "../materials/fibres.js";
import type { Outcome } from "../quantity/verdict.js";
import { camSlipLoad } from "../reeving/cam-cleat.js";
import { hornSlipLoad } from "../reeving/horn.js";
import { jammerSlipLoad } from "../reeving/jammer.js";
import { type Line, prepareLine } from "../reeving/line.js";
import { type Span, shapeLost, slipLoadAtSail } from "../reeving/set-shape.js";
import type { Measured } from "../reeving/station.js";
import { veeSlipLoad } from "../reeving/vee-cleat.js";
import { creepStrain } from "../rope/creep.js";
import type { Band } from "../sources/band.js";
import { coefficient } from "../sources/coefficient.js";
import { boundsOf } from "../uncertainty/distribution.js";
import { bandAtLoad } from "../uncertainty/line-band.js";
import { sampledBand } from "../uncertainty/sampled-band.js";
import type { UncertainInput } from "../uncertainty/uncertain-input.js";
import { gustFactors, gustLoadFactor } from "../wind/gust.js";
import { choice, slide, toggle } from "./control.js";
import { liveModel } from "./model.js";

const invented = (value: number, low: number, high: number, unit: string, place: string) =>
  coefficient({ value, unit, low, high, status: "invented for the demo", place });
const blockRatio = invented(
  1.1,
  1.05,
  1.2,
  "1",
  "tension over a small ball-bearing block, half a turn, bending included",
);
const give = invented(4000, 2000, 8000, "N/m", "load that the luff drops for each metre of halyard");
const { value: ratio, low, high } = blockRatio;
const blockInput: UncertainInput = {
  name: "tension over a block",
  turns: "bearing",
  record: { value: ratio - 1, low: low - 1, high: high - 1 },
};

const minute = 60;
/** The shape is set a minute after hoisting. */
const settling = minute;
const room = 293.15;

/** Ropes of the demo skiff's halyard at 5 mm, invented: mass of a metre and break load of the part that carries. */
const demoDiameter = 5;
const ropes = {
  polyester: { fibre: fibres.polyester, law: creepLaws.polyester, linearDensity: 0.018, breakLoad: 5000 },
  aramid: { fibre: fibres.aramid, law: creepLaws.aramid, linearDensity: 0.0095, breakLoad: 8000 },
  hmpe: { fibre: fibres.hmpe, law: creepLaws.hmpe, linearDensity: 0.007, breakLoad: 9500 },
} as const;
/** Thickness of a stripped core over that of the rope with its cover. */
const bareThickness = 0.75;

const rope = { diameter: 0.005, stiffness: { tensionTerm: 0, constantTerm: 0, diameterTerm: 0 } };
const block = (name: string): Measured => ({ kind: "measured", name, tensionRatio: ratio });
const running: Line = { rope, stations: [block("masthead"), block("mast foot")] };
const cleated: Line = {
  rope,
  stations: [...running.stations, { kind: "cleat", name: "cleat", closed: true, holdLoad: 0 }],
};
const halyard = prepareLine(cleated);

const times = ({ value, low, high }: Band, by: number): Band => ({ value: by * value, low: by * low, high: by * high });

/** Gust over mean load, and stiffness over that of the yarns: the same at every setting, so worked out once. */
const gustLoad = once(() =>
  sampledBand({ gustFactor: gustFactors.atSea }, ({ gustFactor }) => gustLoadFactor({ gustFactor }), {
    ownMiddle: true,
    bounds: { gustFactor: boundsOf("gustFactor") },
  }),
);
const stiffness = {
  polyester: once(() => stiffnessOver("polyester")),
  aramid: once(() => stiffnessOver("aramid")),
  hmpe: once(() => stiffnessOver("hmpe")),
};

function stiffnessOver(name: keyof typeof ropes): Band {
  return sampledBand(
    { modulus: ropes[name].fibre.modulus, conversion: stiffnessConversion },
    ({ modulus, conversion }) => modulus * conversion,
    { ownMiddle: true },
  );
}

function once<Result>(work: () => Result): () => Result {
  let found: Result | undefined;
  return () => {
    found ??= work();
    return found;
  };
}

/** Load in a gust that reaches the cleat [N]. */
function atCleat(load: Band): Band {
  const uncertainInputs: UncertainInput[] = [blockInput, { name: "gust", turns: "load", record: load }];
  return bandAtLoad({ line: running, uncertainInputs }, load.value, { samples: 2000, ownMiddle: true }).easing;
}

const cleatWords = {
  cam: "a cam, sharp teeth",
  wornCam: "a cam, worn teeth",
  vee: "a V cleat",
  jammer: "a lever jammer",
  hitchedHorn: "a horn cleat, hitched",
  horn: "a horn cleat, tail in the hand",
} as const;

/** Cleats of the demo skiff: what they are made for. */
const size = { thinnest: 0.003, thickest: 0.01 };
/** The V is made for thicker ropes than the others. */
const veeSize = { thinnest: 0.004, thickest: 0.01 };

/** Load at which a cleat lets its rope slip [N]; a hitched horn is as strong as its rope. */
function slipLoad(cleat: keyof typeof cleatWords, cover: Cover, ropeDiameter: number, breakLoad: number): Band {
  const rope = { size, cover, ropeDiameter };
  switch (cleat) {
    case "cam":
    case "wornCam":
      return camSlipLoad({ ...rope, cleat: cleats[cleat] });
    case "vee":
      return veeSlipLoad({ ...rope, cleat: cleats.vee, size: veeSize });
    case "jammer":
      return jammerSlipLoad({ ...rope, cleat: cleats.jammer });
    case "horn":
    case "hitchedHorn":
      return hornSlipLoad({
        ...rope,
        cleat: cleats.horn,
        turns: 2,
        eights: 3,
        hitch: cleat === "hitchedHorn",
        tail: gripRecords.tail,
        breakLoad: { value: breakLoad, low: breakLoad, high: breakLoad },
      });
  }
}

const heldWords: Readonly<Record<Outcome, string>> = {
  enough: "The cleat holds the gust",
  "can't tell": "The cleat may hold the gust, or may slip",
  "not enough": "The cleat slips in the gust",
};

const drawnMinutes = [1, 3, 8, 15, 30, 45, 60, 90, 120];

/** What a halyard loses in an hour, by rope and cleat. */
export const stayWhereItWasPut = liveModel({
  name: "stay-where-it-was-put",
  controls: {
    fibre: choice("Rope", { polyester: "polyester", aramid: "aramid", hmpe: "HMPE" }, "polyester"),
    diameter: slide({
      label: "Thickness with its cover",
      measure: "length",
      minimum: 4,
      maximum: 10,
      step: 0.5,
      initial: demoDiameter,
    }),
    length: slide({
      label: "Line from sail to cleat",
      measure: "metres",
      minimum: 1,
      maximum: 20,
      step: 0.1,
      initial: 7.3,
    }),
    load: slide({
      label: "Load when it was set",
      measure: "force",
      minimum: 50,
      maximum: 800,
      step: 0.5,
      initial: 396.5,
    }),
    cleat: choice("Held by", cleatWords, "cam"),
    bare: toggle("Cover stripped where the cleat bites"),
    wet: toggle("Wet"),
  },
  compute: ({ fibre, diameter, length, load, cleat, bare, wet }, { say, sayFound }) => {
    const { law, linearDensity, breakLoad } = ropes[fibre];
    const section = (diameter / demoDiameter) ** 2;
    const over = stiffness[fibre]();
    const axialStiffness = over.value * linearDensity * section;
    const span = (after: number, share: number): Span => ({ after, length: share * length, axialStiffness });
    const cover: Cover = bare ? { strands: 24, fibre: "bareCore", wet } : { strands: 16, fibre: "polyester", wet };
    const holds = slipLoad(cleat, cover, ((bare ? bareThickness : 1) * diameter) / 1000, breakLoad * section);
    const gust = times(gustLoad(), load);
    const halyardSet = {
      line: halyard,
      // The demo skiff's halyard: a little above the masthead, the most along the mast, the rest behind its foot.
      spans: [span(0, 0.2 / 7.3), span(1, 6.2 / 7.3), span(2, 0.9 / 7.3)],
      stiffnessFactor: times(over, 1 / over.value),
      setLoad: load,
      gustLoad: gust,
      slipLoad: slipLoadAtSail({ line: cleated, slipLoad: holds }),
      giveStiffness: give,
    };
    const after = (duration: number) =>
      shapeLost({
        ...halyardSet,
        creep: (tension) =>
          creepStrain({ law, loadShare: tension / (breakLoad * section), settling, duration, temperature: room }),
      });
    const hour = after(60 * minute);
    const moved = (label: string, band: Band) => ({ label, measure: "length", ...times(band, 1000) }) as const;
    const all = moved("Lower in a gust, after an hour", hour.total);
    const courses = drawnMinutes.map((minutes) => after(minutes * minute));
    const millimetres = (pick: (one: (typeof courses)[number]) => number) => courses.map((one) => 1000 * pick(one));
    return {
      results: [
        all,
        moved("Of this, stretch in the gust", hour.stretch),
        moved("Creep", hour.creep),
        moved("Slip", hour.slip),
        { label: "Pull of the gust at the cleat", measure: "force", ...atCleat(gust) },
        { label: "The cleat slips at", measure: "force", ...holds },
      ],
      figure: {
        name: "your-halyard",
        title: `An hour after it was set, a gust finds the head ${say("length", all.value)} lower`,
        caption:
          "Movement at the sail by the time since it was set, a minute after hoisting. A horn has two turns and three crossings. Grey tint: 90 % band of all together.",
        altText: `Movement at the sail against time. In a gust, after an hour: ${say("length", all.value)}, of it stretch ${say("length", 1000 * hour.stretch.value)}, creep ${say("length", 1000 * hour.creep.value)}, slip ${say("length", 1000 * hour.slip.value)}.`,
        x: { title: "Since it was set", measure: "time", minimum: 0, maximum: 120 },
        y: { title: "Lower at the sail", measure: "length", minimum: 0 },
        panels: [
          {
            title: "",
            series: [
              {
                name: "all, in a gust",
                x: drawnMinutes,
                line: millimetres(({ total }) => total.value),
                bands: {
                  line: { low: millimetres(({ total }) => total.low), high: millimetres(({ total }) => total.high) },
                },
                highlight: true,
              },
              { name: "creep alone", x: drawnMinutes, line: millimetres(({ creep }) => creep.value) },
              { name: "after an hour", x: [60], points: [all.value] },
            ],
          },
        ],
      },
      sentence: `${heldWords[hour.holds]}. After an hour the head is ${sayFound(all)}, lower in a gust.`,
    };
  },
});
