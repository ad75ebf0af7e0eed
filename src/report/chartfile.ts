import { digestOf } from "../notebook/run-causes.js";

/** Name under which the file beside a page hands over its chart data. */
const chartsName = "haulbookCharts";

const inPage = /<script type="application\/json" class="chart-data">([^<]*)<\/script>/gu;

/** A page whose chart data stand in a file beside it, which is read when a chart is to be explored. */
interface PartedPage {
  readonly page: string;
  /** The file's text. */
  readonly charts: string;
}

/**
 * Takes the data of the charts to explore out of a page. Both say which data they are of: a page whose build was cut short shows no
 * chart of another build.
 *
 * @param page  HTML text
 * @param address  of the file beside the page
 * @returns the page, whose figures say where their data stand, and the file
 * Example: partedPage("<p>No chart.</p>", "assets/charts-a.js").page → "<p>No chart.</p>"
 */
export function partedPage(page: string, address: string): PartedPage {
  const data = [...page.matchAll(inPage)].map(([, text = ""]) => text);
  const of = digestOf(data.join("\n")).slice(0, 8);
  let place = 0;
  const parted = page.replaceAll(
    inPage,
    () =>
      `<script type="application/json" class="chart-data" data-file="${address}" data-of="${of}" data-place="${place++}"></script>`,
  );
  const list = data.map((text) => JSON.stringify(text)).join(",\n");
  return { page: parted, charts: `window.${chartsName} = Object.assign([${list}], { of: "${of}" });\n` };
}
