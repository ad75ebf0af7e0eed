import { ReevingError } from "../quantity/errors.js";
import { handEnd, type Reeving } from "./reeving.js";

/**
 * Refuses a reeving whose blocks and ropes do not make one purchase between a load and a hand.
 *
 * @param reeving  bodies and ropes
 * @throws ReevingError naming the part that is wrong and what would be right
 * Found here: no moving block, an unknown body, a rope without a hand, two hands, a rope that turns twice round the
 * same block in a row, a station that no rope reaches, ropes that run in a loop without reaching load or hand.
 */
export function checkStructure(reeving: Reeving): void {
  const names = Object.keys(reeving.bodies);
  const moving = names.filter((name) => reeving.bodies[name]?.moves);
  if (moving.length === 0) {
    refuse(
      "tackle",
      "no moving block",
      "at least one block that moves with the load",
      "Mark the load's block as moving.",
    );
  }
  if (!moving.includes(reeving.load.body)) {
    refuse(
      "load",
      `hung on "${reeving.load.body}"`,
      `a moving block: ${moving.join(", ")}`,
      "Hang the load on a moving block.",
    );
  }
  for (const rope of reeving.ropes) checkName(rope.name);
  for (const rope of reeving.ropes) checkRope(reeving, ropePath(reeving, rope.name), rope.name);
  const held = reeving.ropes.filter((rope) => rope.end === handEnd);
  if (held.length !== 1) {
    refuse("hauling part", `${held.length} rope ends in the hand`, "exactly one", `Let one rope end at "${handEnd}".`);
  }
  checkConnected(reeving, names);
}

/** Names of the places that a rope passes, from start to end. */
export function ropePath(reeving: Reeving, ropeName: string): string[] {
  const rope = reeving.ropes.find(({ name }) => name === ropeName);
  return rope === undefined ? [] : [rope.start, ...rope.turns.map(({ body }) => body), rope.end];
}

function checkName(rope: unknown): void {
  if (typeof rope !== "string") refuse("name of a rope", JSON.stringify(rope), "a text", "Give every rope a name.");
}

function checkRope(reeving: Reeving, path: readonly string[], rope: string): void {
  path.forEach((name, index) => {
    const known = name in reeving.bodies || (name === handEnd && index === path.length - 1);
    if (!known) {
      refuse(
        `rope "${rope}"`,
        `the unknown place "${name}"`,
        Object.keys(reeving.bodies).join(", "),
        "Name a body of the reeving.",
      );
    }
    if (index > 0 && path[index - 1] === name) {
      refuse(
        `rope "${rope}"`,
        `"${name}" twice in a row: a loop on one block`,
        "a path from block to block",
        "Lead the rope to another block in between.",
      );
    }
  });
}

/** Every body must be reached from the hand along ropes; whatever is not reached is a stray station or a loop. */
function checkConnected(reeving: Reeving, names: readonly string[]): void {
  const paths = reeving.ropes.map((rope) => ({ rope: rope.name, path: ropePath(reeving, rope.name) }));
  const reached = new Set<string>([handEnd]);
  for (let before = 0; before !== reached.size; ) {
    before = reached.size;
    for (const { path } of paths)
      if (path.some((name) => reached.has(name))) for (const name of path) reached.add(name);
  }
  for (const { rope, path } of paths) {
    if (path.some((name) => reached.has(name))) continue;
    refuse(
      `rope "${rope}"`,
      `a loop through ${[...new Set(path)].join(", ")} that never reaches the hand`,
      "ropes connected to the hand",
      "Lead this rope to a block of the hauling rope.",
    );
  }
  for (const name of names) {
    if (!reached.has(name))
      refuse(
        `station "${name}"`,
        "no rope that reaches it",
        "a station on a rope",
        "Lead a rope through it, or leave it out.",
      );
  }
}

function refuse(quantity: string, value: string, allowed: string, advice: string): never {
  throw new ReevingError({ quantity, value, allowed, advice });
}
