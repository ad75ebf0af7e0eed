import { type SheaveRule, sheaveRules } from "../materials/block-rules.js";
import { chafeRate, chafeVerdict } from "../materials/chafe.js";
import type { FibreName } from "../materials/fibres.js";
import { fraying } from "../materials/rubbing.js";
import { wearRate, wearRule, wearVerdict } from "../materials/wear.js";
import type { Margins } from "../quantity/verdict.js";
import { bendVerdict, grooveFit, grooveVerdict, type RopeOnBlock } from "../reeving/size-verdicts.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Boat } from "./boat.js";
import { type Judgement, judged } from "./judgement.js";
import { coverOf, rubbingOf } from "./pieces.js";
import type { ReadyLine } from "./ready.js";

const stiff: ReadonlySet<FibreName> = new Set<FibreName>(["aramid", "aramidHighModulus", "lcp", "pbo"]);

function within(limit: Band, rate: Band): Margins {
  const { value, low } = bandOf({ limit, rate }, (one) => one.limit / one.rate);
  return { middle: value, worst: low };
}

/** Whether rope and hardware last: bends, grooves, treads of ratchets, lines that rub on one another. */
export function judgeWear(boat: Boat, ready: ReadyLine): Judgement[] {
  return [...judgeBlocks(boat, ready), ...judgeTouch(boat, ready)];
}

function judgeBlocks({ catalogue, conditions }: Boat, { placed, pieces }: ReadyLine): Judgement[] {
  return placed.flatMap(({ station, piece }) => {
    if (station.kind !== "block" && station.kind !== "tackle") return [];
    const { rope } = pieces[piece]!;
    const { diameter, groove: grooveWidth, mass, workingLoad, ratchet } = catalogue.blocks[station.block]!;
    const block = { name: station.block, diameter, grooveWidth, mass, workingLoad };
    const on: RopeOnBlock = { ropeDiameter: rope.diameter, block, blocks: [], ropeDiameters: [] };
    const rule: SheaveRule = stiff.has(rope.fibre) ? "stiffFibre" : "braided";
    const ratio = diameter / rope.diameter;
    const found = [
      judged(
        "lasts",
        `bend at ${station.name}`,
        { middle: ratio / sheaveRules[rule].value, worst: ratio / sheaveRules[rule].high },
        bendVerdict({ ...on, material: rope.fibre, rule }).reason,
      ),
      judged("lasts", `groove at ${station.name}`, grooveFit(rope.diameter, grooveWidth), grooveVerdict(on).reason),
    ];
    if (ratchet === undefined) return found;
    const pair = { tread: ratchet.tread, cover: coverOf(rope, conditions.wet) };
    const margins = within(wearRule.lastingRate, wearRate(pair));
    return [...found, judged("lasts", `cover on the tread at ${station.name}`, margins, wearVerdict(pair).reason)];
  });
}

/** The outsides of both lines where they run; the first piece stands for a line. */
function judgeTouch({ catalogue, lines }: Boat, { line, pieces }: ReadyLine): Judgement[] {
  return (line.touches ?? []).map((name) => {
    const first = rubbingOf(pieces[0]!.rope);
    const second = rubbingOf(catalogue.ropes[lines[name]!.rope[0]!.rope]!);
    const rates = [chafeRate({ fibre: first, against: second }), chafeRate({ fibre: second, against: first })];
    const margins = rates.map((rate) => within(fraying, rate));
    return judged(
      "lasts",
      `chafe on ${name}`,
      {
        middle: Math.min(...margins.map(({ middle }) => middle)),
        worst: Math.min(...margins.map(({ worst }) => worst)),
      },
      chafeVerdict({ first, second }).reason,
    );
  });
}
