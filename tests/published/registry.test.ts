import { describe, expect, it } from "vitest";
import { publishedChecks } from "../../src/published/registry.js";
import { type CheckResult, topics } from "../../src/published/row.js";
import type { Evidence } from "../../src/sources/status.js";

/** Some rows fit or sample a thousand times: all are worked out once. */
const byTopic = new Map(topics.map((topic) => [topic, publishedChecks(topic)]));
const all = [...byTopic.values()].flat();
const kinds: readonly Evidence[] = ["published", "independent", "exact", "recorded"];
const share = ({ deviation, allowed }: CheckResult) => Math.abs(deviation) / Math.max(allowed, Number.MIN_VALUE);

describe("values of other people", () => {
  it.each(topics)("of the topic %s are all reproduced within their printed digits", (topic) => {
    const rows = byTopic.get(topic)!;
    const counts = kinds.map((kind) => `${rows.filter(({ evidence }) => evidence === kind).length} ${kind}`).join(", ");
    const printed = rows.filter(({ evidence }) => evidence === "published");
    const [worst] = [...printed].sort((one, other) => share(other) - share(one));
    if (worst !== undefined)
      process.stdout.write(
        `${topic}: ${counts}; worst published row ${worst.id}: off by ${worst.deviation.toPrecision(3)}, allowed ${worst.allowed.toPrecision(3)} ${worst.unit}\n`,
      );
    expect(rows.filter(({ holds }) => !holds).map(({ id }) => id)).toEqual([]);
  });

  it("have ids of their own, in lower case with hyphens", () => {
    const ids = all.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    expect(ids.filter((id) => !/^[a-z0-9.]+(?:-[a-z0-9.]+)*$/u.test(id))).toEqual([]);
  });

  it("are at least 60 rows from at least 15 sources", () => {
    const published = all.filter(({ evidence, status }) => evidence === "published" && status === "published");
    expect(published.length).toBeGreaterThanOrEqual(60);
    expect(new Set(published.map(({ source }) => source)).size).toBeGreaterThanOrEqual(15);
  });

  it("from memory never count as published, and nothing of our own counts at all", () => {
    const wrong = all.filter(({ evidence, status }) => status !== "published" && evidence === "published");
    expect(wrong.map(({ id }) => id)).toEqual([]);
    expect(all.filter(({ evidence }) => evidence === "recorded")).toEqual([]);
  });

  it("say what, in which unit, and where", () => {
    for (const { id, quantity, unit, place, expected, computed, allowed } of all) {
      expect(quantity.length, id).toBeGreaterThan(5);
      expect(unit.length, id).toBeGreaterThan(0);
      expect(place.length, id).toBeGreaterThan(2);
      expect(Number.isFinite(expected) && Number.isFinite(computed), id).toBe(true);
      expect(allowed, id).toBeGreaterThan(0);
    }
  });

  it("are worked out, not read back: nearly none meets its print to the last bit", () => {
    const published = all.filter(({ evidence }) => evidence === "published");
    const differing = published.filter(({ deviation }) => deviation !== 0);
    expect(differing.length).toBeGreaterThan(0.6 * published.length);
  });

  it("come out the same twice", () => {
    for (const topic of topics) expect(publishedChecks(topic)).toEqual(byTopic.get(topic));
  });
});
