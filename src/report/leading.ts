import type { SharedCheck } from "./checklist.js";
import { html } from "./html.js";
import type { ReportRecord } from "./record.js";

/** What the pages that lead to reports are made from. */
export interface LeadingPage {
  /** In the order in which they are shown. */
  readonly records: readonly ReportRecord[];
  /** Every check once, with the reports that show it. */
  readonly checks: readonly SharedCheck[];
  /** Whether the style stands in the page itself. */
  readonly inline: boolean;
}

/** Foot of the pages that lead to reports. */
export const leadingFoot = html`<footer class="foot">
<p>haulbook: what the hand feels on a sheet, from wind load to hand. All pages here are computed from notebooks; none needs a network.</p>
</footer>`;
