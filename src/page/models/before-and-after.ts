import { beforeAndAfter } from "../../live/before-and-after.js";
import { startPanels } from "../live-panel.js";

startPanels(beforeAndAfter);
