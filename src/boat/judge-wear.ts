import { type SheaveRule, sheaveRules } from "../materials/block-rules.js";
import { chafeRate, chafeVerdict } from "../materials/chafe.js";
import type { FibreName } from "../materials/fibres.js";
import { fraying } from "../materials/rubbing.js";
import { wearRate, wearRule, wearVerdict } from "../materials/wear.js";
import { bendVerdict, grooveFit, grooveVerdict, type RopeOnBlock } from "../reeving/size-verdicts.js";
import { type Band, bandOf } from "../sources/band.js";
import type { Boat } from "./boat.js";
import { type Demand, demand, exactly } from "./demand.js";
import { coverOf, rubbingOf } from "./pieces.js";
import type { ReadyLine } from "./ready.js";

const stiff: ReadonlySet<FibreName> = new Set<FibreName>(["aramid", "aramidHighModulus", "lcp", "pbo"]);

const within = (limit: Band, rate: Band): Band => bandOf({ limit, rate }, (one) => one.limit / one.rate);

/** Whether rope and hardware last: bends, grooves, treads of ratchets, lines that rub on one another. */
export function judgeWear(boat: Boat, ready: ReadyLine): Demand[] {
  return [...judgeBlocks(boat, ready), ...judgeTouch(boat, ready)];
}

function judgeBlocks({ catalogue, conditions }: Boat, { placed, pieces }: ReadyLine): Demand[] {
  return placed.flatMap(({ station, piece }) => {
    if (station.kind !== "block" && station.kind !== "tackle") return [];
    const { rope } = pieces[piece]!;
    const { diameter, groove: grooveWidth, mass, workingLoad, ratchet } = catalogue.blocks[station.block]!;
    const block = { name: station.block, diameter, grooveWidth, mass, workingLoad };
    const on: RopeOnBlock = { ropeDiameter: rope.diameter, block, blocks: [], ropeDiameters: [] };
    const rule: SheaveRule = stiff.has(rope.fibre) ? "stiffFibre" : "braided";
    const ratio = diameter / rope.diameter;
    const custom = { consequence: "comfort", ground: "custom" } as const;
    const found = [
      demand({
        ...custom,
        subject: `bend at ${station.name}`,
        margin: exactly(ratio / sheaveRules[rule].value),
        reason: bendVerdict({ ...on, material: rope.fibre, rule }).reason,
      }),
      demand({
        ...custom,
        subject: `groove at ${station.name}`,
        margin: exactly(grooveFit(rope.diameter, grooveWidth).middle),
        reason: grooveVerdict(on).reason,
      }),
    ];
    if (ratchet === undefined) return found;
    const pair = { tread: ratchet.tread, cover: coverOf(rope, conditions.wet) };
    return [
      ...found,
      demand({
        subject: `cover on the tread at ${station.name}`,
        consequence: "race",
        margin: within(wearRule.lastingRate, wearRate(pair)),
        reason: wearVerdict(pair).reason,
        settle: "look at the cover after a day on the tread: broken yarns tell",
      }),
    ];
  });
}

/** The outsides of both lines where they run; the first piece stands for a line. */
function judgeTouch({ catalogue, lines }: Boat, { line, pieces }: ReadyLine): Demand[] {
  return (line.touches ?? []).map((name) => {
    const first = rubbingOf(pieces[0]!.rope);
    const second = rubbingOf(catalogue.ropes[lines[name]!.rope[0]!.rope]!);
    const rates = [chafeRate({ fibre: first, against: second }), chafeRate({ fibre: second, against: first })];
    const margins = rates.map((rate) => within(fraying, rate));
    const [margin] = margins.sort((one, other) => one.value - other.value);
    return demand({
      subject: `chafe on ${name}`,
      consequence: "race",
      margin: margin!,
      reason: chafeVerdict({ first, second }).reason,
      settle: "look at both covers where they cross, after a day",
    });
  });
}
