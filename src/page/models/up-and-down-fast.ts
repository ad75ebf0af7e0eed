import { upAndDownFast } from "../../live/up-and-down-fast.js";
import { startPanels } from "../live-panel.js";

startPanels(upAndDownFast);
