import { describe, expect, it } from "vitest";
import { publishedChecks } from "../../src/published/registry.js";
import type { CheckResult } from "../../src/published/row.js";

const results = publishedChecks("wind");

/** Share of the allowed deviation that a row uses up. */
function share({ deviation, allowed }: CheckResult): number {
  return Math.abs(deviation) / allowed;
}

function worst(rows: readonly CheckResult[]): CheckResult {
  return rows.reduce((a, b) => (share(a) >= share(b) ? a : b));
}

describe("published and independent values for wind", () => {
  for (const result of results) {
    it(`${result.id}: ${result.quantity}`, () => {
      expect(result.holds, `${result.computed} against ${result.expected} ± ${result.allowed} ${result.unit}`).toBe(
        true,
      );
    });
  }

  it("counts its rows by evidence, and gives each an id of its own that starts with its source", () => {
    const count = (evidence: string) => results.filter((row) => row.evidence === evidence).length;
    expect({
      published: count("published"),
      independent: count("independent"),
      exact: count("exact"),
      recorded: count("recorded"),
    }).toEqual({ published: 39, independent: 54, exact: 6, recorded: 0 });
    expect(new Set(results.map(({ id }) => id)).size).toBe(results.length);
    for (const { id, source } of results) expect(id.startsWith(source!), id).toBe(true);
  });

  it("never calls a value from memory published", () => {
    for (const row of results) if (row.status === "from memory") expect(row.evidence).not.toBe("published");
  });

  const most = worst(results);
  it(`stays within what each source allows; worst of ${results.length}: ${most.id}, ${Math.abs(most.deviation).toPrecision(3)} of ${most.allowed.toPrecision(3)} ${most.unit}`, () => {
    expect(share(most)).toBeLessThanOrEqual(1 + 1e-6);
  });
});
