import { stayWhereItWasPut } from "../../live/stay-where-it-was-put.js";
import { startPanels } from "../live-panel.js";

startPanels(stayWhereItWasPut);
