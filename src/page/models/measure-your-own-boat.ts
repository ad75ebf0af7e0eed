import { measureYourOwnBoat } from "../../live/measure-your-own-boat.js";
import { startPanels } from "../live-panel.js";

startPanels(measureYourOwnBoat);
