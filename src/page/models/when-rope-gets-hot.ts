import { whenRopeGetsHot } from "../../live/when-rope-gets-hot.js";
import { startPanels } from "../live-panel.js";

startPanels(whenRopeGetsHot);
