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
 * Takes the data of the charts to explore out of a page.
 *
 * @param page  HTML text
 * @param address  of the file beside the page
 * @returns the page, whose figures say where their data stand, and the file
 * Example: partedPage("<p>No chart.</p>", "assets/charts-a.js").page → "<p>No chart.</p>"
 */
export function partedPage(page: string, address: string): PartedPage {
  const data: string[] = [];
  const parted = page.replaceAll(inPage, (_, text: string) => {
    data.push(text);
    return `<script type="application/json" class="chart-data" data-file="${address}" data-place="${data.length - 1}"></script>`;
  });
  return {
    page: parted,
    charts: `window.${chartsName} = [${data.map((text) => JSON.stringify(text)).join(",\n")}];\n`,
  };
}
