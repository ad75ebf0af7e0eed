import { aroundARing } from "../../live/around-a-ring.js";
import { startPanels } from "../live-panel.js";

startPanels(aroundARing);
