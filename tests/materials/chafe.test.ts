import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chafeRate, chafeVerdict } from "../../src/materials/chafe.js";
import { fraying, type RubbingFibre, rubbing } from "../../src/materials/rubbing.js";

const seed = { seed: 7 };
const fibres = Object.keys(rubbing) as RubbingFibre[];
const any = fc.constantFrom(...fibres);
const close = (one: number, other: number) => expect(one / other).toBeCloseTo(1, 10);

describe("the fraying of a fibre that runs on another", () => {
  it("is one, without a range, for polyester on polyester", () => {
    const { value, low, high } = chafeRate({ fibre: "polyester", against: "polyester" });
    for (const one of [value, low, high]) expect(one).toBeCloseTo(1, 12);
  });

  it("on its own kind is frailty times its friction over that of polyester", () => {
    for (const fibre of fibres) {
      const { friction, frailty } = rubbing[fibre];
      close(
        chafeRate({ fibre, against: fibre }).value,
        (frailty.value * friction.value) / rubbing.polyester.friction.value,
      );
    }
  });

  it("shares the friction of a pair: both sides together make what each makes on its own kind", () => {
    fc.assert(
      fc.property(any, any, (one, other) => {
        const both = chafeRate({ fibre: one, against: other }).value * chafeRate({ fibre: other, against: one }).value;
        const alone = chafeRate({ fibre: one, against: one }).value * chafeRate({ fibre: other, against: other }).value;
        close(both, alone);
      }),
      seed,
    );
  });

  it("grows with the friction of what it runs on, and stands inside its range", () => {
    fc.assert(
      fc.property(any, any, any, (fibre, one, other) => {
        const first = chafeRate({ fibre, against: one });
        const second = chafeRate({ fibre, against: other });
        if (rubbing[one].friction.value < rubbing[other].friction.value) expect(first.value).toBeLessThan(second.value);
        expect(first.low).toBeGreaterThan(0);
        expect(first.low).toBeLessThanOrEqual(first.value * (1 + 1e-12));
        expect(first.high).toBeGreaterThanOrEqual(first.value * (1 - 1e-12));
      }),
      seed,
    );
  });

  it("counts the friction of polyester once: beside itself it does not vary against itself", () => {
    const { friction } = rubbing.polyester;
    const { low, high } = chafeRate({ fibre: "polyester", against: "aramid" });
    const aramid = rubbing.aramid.friction;
    const most = Math.sqrt(aramid.high / friction.low);
    const least = Math.sqrt(aramid.low / friction.high);
    expect(low).toBeGreaterThan(least);
    expect(high).toBeLessThan(most);
  });

  it("keeps the printed frictions as they stand in their source", () => {
    const { polyester, polyamide, aramid, hmpe } = rubbing;
    for (const { friction } of [polyester, polyamide, aramid]) expect(friction.status).toBe("published");
    expect(hmpe.friction.status).toBe("from memory");
    expect(polyamide.friction.value).toBeGreaterThan(3 * polyester.friction.value);
  });
});

describe("the verdict on two lines that touch", () => {
  it("does not ask which line is named first", () => {
    for (const first of fibres)
      for (const second of fibres)
        expect(chafeVerdict({ first, second }).outcome).toBe(chafeVerdict({ first: second, second: first }).outcome);
  });

  it("flags aramid on aramid and leaves polyester alone", () => {
    expect(chafeVerdict({ first: "aramid", second: "aramid" }).outcome).toBe("not enough");
    expect(chafeVerdict({ first: "polyester", second: "polyester" })).not.toHaveProperty("change");
    expect(chafeRate({ fibre: "polyester", against: "aramid" }).high).toBeLessThan(fraying.low);
  });

  it("is as good as its worse side", () => {
    for (const first of fibres)
      for (const second of fibres) {
        const rates = [chafeRate({ fibre: first, against: second }), chafeRate({ fibre: second, against: first })];
        const fails = Math.max(...rates.map(({ value }) => value)) > fraying.value;
        expect(chafeVerdict({ first, second }).outcome === "not enough").toBe(fails);
      }
  });

  it("puts a polyester cover on as few lines as it takes, and that holds", () => {
    expect(chafeVerdict({ first: "aramid", second: "aramid" }).change).toMatch(/^polyester on polyester/u);
    expect(chafeVerdict({ first: "aramid", second: "hmpe" }).change).toMatch(/^polyester on HMPE/u);
    expect(chafeVerdict({ first: "polyester", second: "hmpe" }).outcome).toBe("enough");
    for (const first of fibres)
      for (const second of fibres) {
        const { outcome, change, reason } = chafeVerdict({ first, second });
        expect(change === undefined).toBe(outcome === "enough");
        expect(reason).toMatch(/\d/u);
      }
  });
});
