/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { liveModels } from "../live/models.js";
import { LivePanelOnPage } from "./live-panel.js";

for (const place of document.querySelectorAll<HTMLElement>("[data-live-model]")) {
  const model = liveModels.find(({ name }) => name === place.dataset.liveModel);
  if (model !== undefined) new LivePanelOnPage(place, model).start();
}
