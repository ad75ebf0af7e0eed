import { gripWithoutStrain } from "../../live/grip-without-strain.js";
import { startPanels } from "../live-panel.js";

startPanels(gripWithoutStrain);
