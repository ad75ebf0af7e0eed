import { purchasesAndLostForce } from "../../live/purchases-and-lost-force.js";
import { startPanels } from "../live-panel.js";

startPanels(purchasesAndLostForce);
