import { whatMattersMost } from "../../live/what-matters-most.js";
import { startPanels } from "../live-panel.js";

startPanels(whatMattersMost);
