import { whatTheHandFeels } from "../../live/what-the-hand-feels.js";
import { startPanels } from "../live-panel.js";

startPanels(whatTheHandFeels);
