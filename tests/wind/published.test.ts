import { describe, expect, it } from "vitest";
import { compare } from "../../src/published/compare.js";
import type { CheckResult } from "../../src/published/row.js";
import { windAerodynamicsHomework } from "../../src/published/wind-aerodynamics-homework.js";
import { windAerospaceToolbox } from "../../src/published/wind-aerospace-toolbox.js";
import { windAirAtOneAtmosphere } from "../../src/published/wind-air-at-one-atmosphere.js";
import { windAirDensityArticle } from "../../src/published/wind-air-density-article.js";
import { windApparentTests } from "../../src/published/wind-apparent-tests.js";
import { windAsce7 } from "../../src/published/wind-asce-7.js";
import { windBeaufort } from "../../src/published/wind-beaufort.js";
import { windDenker } from "../../src/published/wind-denker.js";
import { windEn1991 } from "../../src/published/wind-en-1991.js";
import { windFao56 } from "../../src/published/wind-fao-56.js";
import { windFlagProblem } from "../../src/published/wind-flag-problem.js";
import { windHendricks } from "../../src/published/wind-hendricks.js";
import { windIec61400 } from "../../src/published/wind-iec-61400.js";
import { windIrodov } from "../../src/published/wind-irodov.js";
import { windIso2533 } from "../../src/published/wind-iso-2533.js";
import { windIso19901 } from "../../src/published/wind-iso-19901.js";
import { windKutz } from "../../src/published/wind-kutz.js";
import { windLoadTable } from "../../src/published/wind-load-table.js";
import { windNoon } from "../../src/published/wind-noon.js";
import { windOrc2013 } from "../../src/published/wind-orc-2013.js";
import { windOrcSpeedGuide } from "../../src/published/wind-orc-speed-guide.js";
import { windPowerProgram } from "../../src/published/wind-power-program.js";
import { windProfileTable } from "../../src/published/wind-profile-table.js";
import { windSagOfLines } from "../../src/published/wind-sag-of-lines.js";
import { windStandardAtmosphere } from "../../src/published/wind-standard-atmosphere.js";
import { windStatics } from "../../src/published/wind-statics.js";
import { windTurbulenceProgram } from "../../src/published/wind-turbulence-program.js";

const sets = [
  windAerodynamicsHomework,
  windAerospaceToolbox,
  windAirAtOneAtmosphere,
  windAirDensityArticle,
  windApparentTests,
  windAsce7,
  windBeaufort,
  windDenker,
  windEn1991,
  windFao56,
  windFlagProblem,
  windHendricks,
  windIec61400,
  windIrodov,
  windIso19901,
  windIso2533,
  windKutz,
  windLoadTable,
  windNoon,
  windOrc2013,
  windOrcSpeedGuide,
  windPowerProgram,
  windProfileTable,
  windSagOfLines,
  windStandardAtmosphere,
  windStatics,
  windTurbulenceProgram,
];

const results: readonly CheckResult[] = sets.flatMap(({ rows }) => rows.map(compare));

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
    }).toEqual({ published: 61, independent: 53, exact: 6, recorded: 0 });
    expect(new Set(results.map(({ id }) => id)).size).toBe(results.length);
    for (const { id, source } of results) expect(id.startsWith(source), id).toBe(true);
  });

  it("draws its published rows from 15 sources or more", () => {
    const sources = new Set(results.filter((row) => row.evidence === "published").map((row) => row.source));
    expect(sources.size).toBeGreaterThanOrEqual(15);
  });

  it("never calls a value from memory published", () => {
    for (const row of results) if (row.status === "from memory") expect(row.evidence).not.toBe("published");
  });

  const most = worst(results);
  it(`stays within what each source allows; worst of ${results.length}: ${most.id}, ${Math.abs(most.deviation).toPrecision(3)} of ${most.allowed.toPrecision(3)} ${most.unit}`, () => {
    expect(share(most)).toBeLessThanOrEqual(1 + 1e-6);
  });
});
