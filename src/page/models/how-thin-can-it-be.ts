import { howThinCanItBe } from "../../live/how-thin-can-it-be.js";
import { startPanels } from "../live-panel.js";

startPanels(howThinCanItBe);
