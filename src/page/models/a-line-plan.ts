import { aLinePlan } from "../../live/a-line-plan.js";
import { startPanels } from "../live-panel.js";

startPanels(aLinePlan);
