import { stripAndTaper } from "../../live/strip-and-taper.js";
import { startPanels } from "../live-panel.js";

startPanels(stripAndTaper);
