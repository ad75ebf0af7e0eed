import { handsThroughARaceDay } from "../../live/hands-through-a-race-day.js";
import { startPanels } from "../live-panel.js";

startPanels(handsThroughARaceDay);
