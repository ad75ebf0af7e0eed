import { bigSheaveSmallSheave } from "../../live/big-sheave-small-sheave.js";
import { startPanels } from "../live-panel.js";

startPanels(bigSheaveSmallSheave);
