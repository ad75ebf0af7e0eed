import type { BuildRequest } from "../../src/report/build.js";

/** A request of a build with small stand-ins for the libraries that pages load; it says nothing, and no time passes. */
export function smallRequest(
  own: Pick<BuildRequest, "notebooks" | "outputFolder" | "run" | "files">,
  changed: Partial<BuildRequest> = {},
): BuildRequest {
  return {
    ...own,
    minisearch: async () => "window.MiniSearch = {};",
    plotly: async () => "window.Plotly = {};",
    panel: async () => "",
    log: () => {},
    now: () => 0,
    ...changed,
  };
}
