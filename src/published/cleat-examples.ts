import { cleats, gripRecords } from "../materials/cleats.js";
import { type Cover, coverFriction } from "../materials/covers.js";
import { camSlipLoad, lockingFriction } from "../reeving/cam-cleat.js";
import { hornHold, hornSlipLoad, tailNeeded, turnsToHold } from "../reeving/horn.js";
import { curvedFaceFriction, frictionAngle, jawGrip } from "../reeving/jaw.js";
import { liftOutForce } from "../reeving/lift-out.js";
import { capstanRatio, wedgeFriction } from "../reeving/sliding.js";
import { grooveFactor, veeSlipLoad } from "../reeving/vee-cleat.js";
import { wedgeDrive, wedgeRelease } from "../reeving/wedge.js";
import { handleForce, powerRatio } from "../reeving/winch.js";
import { practiceRow, publishedRow } from "./published-row.js";
import type { CheckRow, CheckSet } from "./row.js";

const degrees = (angle: number) => (angle * Math.PI) / 180;

const turnRows: readonly CheckRow[] = [
  publishedRow(
    "two-bollards",
    "hold",
    "load that 50 N hold over two bollards, 300° on each, μ = 0.2",
    "406",
    "N",
    "answer in the thread",
    () => hornHold({ turns: 2 * (300 / 360), frictionCoefficient: 0.2, tail: 50 }),
  ),
  publishedRow(
    "bhandari-elements",
    "band",
    "slack side of a band brake over 240°, μ = 0.25, 15 000 N on the tight side",
    "5263.797108",
    "N",
    "example 12.10",
    () => tailNeeded({ turns: 240 / 360, frictionCoefficient: 0.25, load: 15000 }),
  ),
  {
    ...publishedRow(
      "tayal-mechanics",
      "three-turns",
      "tail that holds 1000 N over three turns on a cylinder, μ = 0.3",
      "3.502492",
      "N",
      "example 7.6; the companion takes e = 2.718, which is worth 0.06 %",
      () => tailNeeded({ turns: 3, frictionCoefficient: 0.3, load: 1000 }),
    ),
    readingError: 0.0022,
  },
];

/** Power that one rope carries in its groove, over what is asked: the printed number of ropes. */
function ropesNeeded(): number {
  const speed = 10;
  const tight = 1500 - (4 / 9.81) * speed ** 2;
  const frictionCoefficient = wedgeFriction({ frictionCoefficient: 0.2, grooveAngle: degrees(60) });
  const slack = tight / capstanRatio({ frictionCoefficient, wrapAngle: Math.PI });
  return 50000 / ((tight - slack) * speed);
}

const grooveRows: readonly CheckRow[] = [
  {
    ...publishedRow(
      "tayal-mechanics",
      "grooved-drive",
      "ropes that carry 50 kW at 10 m/s in grooves of 60° (half angle 30°), half a turn, μ = 0.2, 1500 N each",
      "4.789906",
      "1",
      "example 7.7, wedge and capstan together; the companion takes e = 2.718: four digits hold",
      ropesNeeded,
    ),
    readingError: 0.0005,
  },
  {
    id: "groove-70-theory",
    quantity: "V groove of 70° over flat surface when tests agree with the wedge: the scaled factor",
    printed: "1.743",
    unit: "1",
    evidence: "exact",
    status: "published",
    source: "statics",
    place: "1 / sin 35°",
    compute: () => grooveFactor({ grooveAngle: degrees(70), testedFactor: 1 / Math.sin(degrees(35)) }),
  },
];

/** A block brake on a drum of radius 0.125 m; its friction closes it one way round and opens it the other. */
const blockBrake = (frictionArm: number) =>
  0.125 * jawGrip({ preload: 700, preloadArm: 0.45, frictionArm, normalArm: 0.2, frictionCoefficient: 0.385 }).friction;

/** Push on the lever of a block brake that must hold 250 N·m on a drum of 0.2 m radius, μ = 0.35: friction grows in step with the push. */
const leverPush = (frictionArm: number) =>
  250 / 0.2 / jawGrip({ preload: 1, preloadArm: 0.5, frictionArm, normalArm: 0.2, frictionCoefficient: 0.35 }).friction;

const jawRows: readonly CheckRow[] = [
  publishedRow(
    "bhandari-elements",
    "push-closing",
    "push on the lever of a block brake whose friction closes it, 250 N·m, μ = 0.35",
    "1303.571429",
    "N",
    "example 12.4, clockwise",
    () => leverPush(0.05),
  ),
  publishedRow(
    "bhandari-elements",
    "push-opening",
    "push on the lever of the same brake turning the other way",
    "1553.571429",
    "N",
    "example 12.4, anticlockwise",
    () => leverPush(-0.05),
  ),
  publishedRow(
    "statics-strength-companion",
    "friction-angle",
    "steepest slope that friction holds, μ = 0.65",
    "33",
    "deg",
    "example 6.1, p. 115",
    () => (180 / Math.PI) * frictionAngle(0.65),
  ),
  publishedRow(
    "beer-johnston-brake",
    "moment",
    "moment of a lever brake on a drum of 10 in that helps itself, 600 lbf, μ = 0.30",
    "666.67",
    "lbf*inch",
    "solution 8.19",
    () =>
      10 * jawGrip({ preload: 600, preloadArm: 6, frictionArm: 6, normalArm: 18, frictionCoefficient: 0.3 }).friction,
  ),
  publishedRow(
    "kannan-transmission",
    "closing",
    "moment of a block brake whose friction closes it, 700 N",
    "83.87",
    "N*m",
    "example 1, first rotation; the source goes on with its rounded μ' = 0.385",
    () => blockBrake(0.05),
  ),
  publishedRow(
    "kannan-transmission",
    "opening",
    "moment of the same brake turning the other way",
    "69.14",
    "N*m",
    "example 1, second rotation; the source goes on with its rounded μ' = 0.385",
    () => blockBrake(-0.05),
  ),
  publishedRow(
    "kannan-transmission",
    "shoe",
    "friction of a face that lies on a drum over 90°, μ = 0.35",
    "0.385",
    "1",
    "example 1, equivalent friction",
    () => curvedFaceFriction({ frictionCoefficient: 0.35, wrapAngle: Math.PI / 2 }),
  ),
  {
    ...publishedRow(
      "sarkar-machines",
      "shoe-brake",
      "moment of a long shoe on a drum of 0.32 m, 820 N at 0.66 m, 90°, μ = 0.35",
      "120.4553",
      "N*m",
      "chapter 10, illustration 1, p. 268; the companion takes π = 3.14 and 57.3° to the radian: 0.1 %",
      () => {
        const frictionCoefficient = curvedFaceFriction({ frictionCoefficient: 0.35, wrapAngle: Math.PI / 2 });
        const { friction } = jawGrip({
          preload: 820,
          preloadArm: 0.66,
          frictionArm: 0.06,
          normalArm: 0.3,
          frictionCoefficient,
        });
        return 0.16 * friction;
      },
    ),
    readingError: 0.12,
  },
];

/** A screw jack: pitch 12.5 mm on a diameter of 100 mm, μ = 0.20, lever 0.5 m, 50 kN. */
const jack = { squeeze: 50, slopeAngle: Math.atan(12.5 / (Math.PI * 100)), frictionCoefficient: 0.2 };

const wedgeRows: readonly CheckRow[] = [
  publishedRow(
    "tayal-mechanics",
    "jack-up",
    "pull on the lever that drives a screw up under 50 kN, μ = 0.20",
    "1.208561",
    "kN",
    "example 7.10",
    () => (wedgeDrive(jack) * 0.05) / 0.5,
  ),
  publishedRow(
    "tayal-mechanics",
    "jack-down",
    "pull on the lever that draws the same screw back: it does not come by itself",
    "-0.794732",
    "kN",
    "example 7.10; the source counts it below zero when the screw locks",
    () => (-wedgeRelease(jack) * 0.05) / 0.5,
  ),
  publishedRow(
    "hibbeler-ramp",
    "crate",
    "level force that just keeps a crate of 50 kg on a ramp of 30°, μ = 0.25",
    "140.3",
    "N",
    "chapter 8, p. 401, exercise 1",
    () => -wedgeRelease({ squeeze: 50 * 9.81, slopeAngle: degrees(30), frictionCoefficient: 0.25 }),
  ),
  publishedRow(
    "hibbeler-wedge",
    "pull",
    "pull that draws a wedge of 15° out from under a crate of 300 lbf, μ = 0.3 on all faces",
    "90.7",
    "lbf",
    "chapter 8, p. 417, exercise 65",
    () => {
      const squeeze = 300 / (1 + 0.3 ** 2);
      const face = wedgeRelease({ squeeze, slopeAngle: degrees(15), frictionCoefficient: 0.3 });
      const floor = wedgeRelease({ squeeze, slopeAngle: 0, frictionCoefficient: 0.3 });
      return face + floor;
    },
  ),
];

const size = { thinnest: 0.004, thickest: 0.01 };
const covered: Cover = { strands: 16, fibre: "polyester", wet: false };
const values = ({ camAngle, pivotShare, pivotFriction }: typeof cleats.cam) => ({
  camAngle: camAngle.value,
  pivotShare: pivotShare.value,
  pivotFriction: pivotFriction.value,
});

const inch = 0.0254;
const drum = { drumRadius: 2 * inch, gearRatio: 1 };

const winchRows: readonly CheckRow[] = [
  ...(
    [
      ["4", 8],
      ["5", 10],
    ] as const
  ).map(([printed, inches]) =>
    publishedRow(
      "winch-ratios",
      `lever-${inches}`,
      `lever of a handle of ${inches} in on a drum of 2 in radius`,
      printed,
      "1",
      "ratio of handle to drum",
      () => powerRatio({ ...drum, handleLength: inches * inch }),
    ),
  ),
  ...(
    [
      ["5", 1, "20"],
      ["25", 5, "4"],
    ] as const
  ).flatMap(([printed, gearRatio, force]) => {
    const ratio = () => powerRatio({ ...drum, handleLength: 10 * inch, gearRatio });
    const gear = gearRatio === 1 ? "without a gear" : `with a gear of ${gearRatio}:1`;
    return [
      publishedRow(
        "winches-101",
        `power-${gearRatio}`,
        `power ratio of a handle of 10 in on a drum of 4 in across, ${gear}`,
        printed,
        "1",
        "power ratio",
        ratio,
      ),
      publishedRow(
        "winches-101",
        `handle-${gearRatio}`,
        `force on that handle for 100 lbf, ${gear}, no loss`,
        force,
        "lbf",
        "force on the handle",
        () => handleForce({ load: 100, tail: 0, powerRatio: ratio(), efficiency: 1 }),
      ),
    ];
  }),
];

const practiceRows: readonly CheckRow[] = [
  practiceRow(
    "hitched-horn",
    "load that a turn, a figure of eight and a locking hitch hold, over the break load of the rope",
    "0.8",
    "1",
    "turn, figures of eight and a locking hitch hold to near the strength of the rope; allowed: 0.6 to 1",
    () => {
      const breakLoad = { value: 2000, low: 2000, high: 2000 };
      const made = { turns: 1, eights: 1, hitch: true, tail: gripRecords.tail };
      return hornSlipLoad({ cleat: cleats.horn, size, cover: covered, ...made, breakLoad }).value / breakLoad.value;
    },
    0.2,
  ),
  practiceRow(
    "cam-angle",
    "friction of a 16-strand cover on sharp teeth, over the least with which a cam locks",
    "2.5",
    "1",
    "a cam locks when its angle is smaller than the friction angle, and is made with room to spare; allowed: 1 to 4",
    () => coverFriction(covered, cleats.cam.jaw).value / lockingFriction(values(cleats.cam)),
    1.5,
  ),
  practiceRow(
    "bare-core-slips",
    "hold of a cam with worn teeth on a bare HMPE core, over its hold on a covered rope when sharp",
    "0.05",
    "1",
    "a slippery core without cover slips in worn jaws; allowed: up to a tenth",
    () => {
      const bare: Cover = { strands: 24, fibre: "bareCore", wet: false };
      const slips = camSlipLoad({ cleat: cleats.wornCam, size, cover: bare, ropeDiameter: 0.004 }).value;
      return slips / camSlipLoad({ cleat: cleats.cam, size, cover: covered, ropeDiameter: 0.006 }).value;
    },
    0.05,
  ),
  practiceRow(
    "thin-line-slips",
    "hold of a V cleat on a line too thin for it, over its hold on a line that fits",
    "0.1",
    "1",
    "a line on the bottom of the groove is not held; allowed: up to a fifth",
    () => {
      const hold = (ropeDiameter: number) =>
        veeSlipLoad({ cleat: cleats.vee, size, cover: covered, ropeDiameter }).value;
      return hold(0.003) / hold(0.006);
    },
    0.1,
  ),
  practiceRow(
    "turns-before-eights",
    "turns with which a hand of 50 N holds 500 N on a smooth horn",
    "2.5",
    "1",
    "two or three turns before the figures of eight",
    () => turnsToHold({ load: 500, tail: 50, frictionCoefficient: 0.15 }),
    0.5,
  ),
  practiceRow(
    "turns-while-easing",
    "tail that still feels 500 N over two turns on a smooth horn",
    "80",
    "N",
    "no more than two turns while a loaded line is eased: with three the hand feels too little; allowed: 50 to 110 N",
    () => tailNeeded({ turns: 2, frictionCoefficient: 0.15, load: 500 }),
    30,
  ),
  practiceRow(
    "haul-then-lift",
    "pull straight up over pull along the line and a little up, cam cleat under 300 N",
    "3",
    "1",
    "take the load first, then lift: a straight lift is far harder; allowed: 2 to 4",
    () => {
      const pull = (angle: number) =>
        liftOutForce({ cleat: cleats.cam, cover: covered, load: 300, pullAngle: degrees(angle) }).value;
      return pull(90) / pull(20);
    },
    1,
  ),
];

/** Worked examples of things that lock, wedge or are wound round, and rules of practice about cleats. */
export const cleatExamples: CheckSet = {
  topic: "cleat",
  rows: [...turnRows, ...grooveRows, ...jawRows, ...wedgeRows, ...winchRows, ...practiceRows],
};
