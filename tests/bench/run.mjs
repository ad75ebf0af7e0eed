// Speed of this package beside something else that does the same. `--json` prints the rows as JSON and nothing else.
// The exit code tells whether results agree; it never depends on a time.
import { bandsRow } from "./bands.mjs";
import { batchRow } from "./batch.mjs";
import { crewsRow } from "./crews.mjs";
import { panelRows } from "./panel.mjs";
import { planRow } from "./plan.mjs";
import { reportsRow } from "./reports.mjs";

const rows = [batchRow(), bandsRow(), crewsRow(), await planRow(), ...(await panelRows()), reportsRow()];

if (process.argv.includes("--json")) {
  const plain = rows.map(({ name, ours, baseline, ratio, unit }) => ({ name, ours, baseline, ratio, unit }));
  process.stdout.write(`${JSON.stringify(plain, undefined, 2)}\n`);
} else {
  for (const { name, ours, baseline, ratio, unit, note } of rows) {
    const beside = baseline === null ? note : `baseline ${number(baseline)} ${unit}, ratio ${number(ratio)} (${note})`;
    process.stdout.write(`${name}\n  ours ${number(ours)} ${unit}; ${beside}\n`);
  }
}

/** Three digits, thousands apart. */
function number(value) {
  return value.toLocaleString("en", { maximumSignificantDigits: 3 });
}
