import type { Boat, SailCorner, SailOnBoat, SheetGeometry } from "../boat/boat.js";
import { lineOf } from "../boat/ready.js";
import { sailRecords } from "../wind/sail-records.js";
import { formulas } from "./catalogue.js";
import { formula } from "./formula.js";
import { worked } from "./worked.js";
import type { Working } from "./working.js";

const loadOfScale = formula({
  id: "load-of-scale",
  title: "Load that was measured, in this wind",
  text: "load * (apparentWindSpeed / at)^2",
  symbols: {
    load: { quantity: "sheetLoad", sign: "T_read", words: "load that a scale showed" },
    apparentWindSpeed: "apparentWindSpeed",
    at: { quantity: "apparentWindSpeed", sign: "V_read", words: "apparent wind at that time" },
  },
  result: "sheetLoad",
  source: "statics",
  valid: "a load that grows with the square of the wind",
});
const shareOfLoad = formula({
  id: "share-of-load",
  title: "Part of the load that this line takes",
  text: "share * load",
  symbols: { share: "share", load: { quantity: "tension", words: "whole load" } },
  result: "loadTension",
  source: "statics",
  valid: "lines that share a load",
});

/** How near a working must come to the model, over the load [-]. */
const nearness = 1e-9;

/**
 * The load of a line in the design wind: worked out from the wind on where the file describes a sail.
 *
 * @param boat  boat
 * @param name  name of one of its lines
 * @returns the working of the load [N]; the bare number where the file states it, or where the steps do not lead to it
 * @throws ValueError for a name that no line has
 */
export function designLoadWorking(boat: Boat, name: string): Working | number {
  const { line, loads } = lineOf(boat, name);
  const { value } = loads.design;
  const { load } = line;
  if (load.kind === "stated") return value;
  const { sail, corner, share = 1 } = load;
  const whole = cornerWorking(boat, boat.sails[sail]!, corner);
  const found = whole === undefined || share === 1 ? whole : worked(shareOfLoad, { share, load: whole });
  return found !== undefined && Math.abs(found.value - value) <= nearness * value ? found : value;
}

/** Load at a corner of a sail in the design wind; nothing where the file does not describe the corner. */
function cornerWorking(boat: Boat, sail: SailOnBoat, corner: SailCorner): Working | undefined {
  // With its edges known the loads of a sail come from one balance, which no single formula tells.
  if (corner === "tack" || corner === "outhaul" || (corner === "halyard" && sail.edges !== undefined)) return undefined;
  const { conditions } = boat;
  const wind = { windSpeed: conditions.designWind, trueWindAngle: sail.course, boatSpeed: sail.boatSpeed.design };
  const apparentWindSpeed = worked(formulas.apparentSpeed, wind);
  const geometry = sail[corner];
  if (geometry === undefined) return undefined;
  if ("kind" in geometry && geometry.kind === "measured")
    return worked(loadOfScale, { load: geometry.load, apparentWindSpeed, at: geometry.at });
  const apparentWindAngle = worked(formulas.apparentAngle, { ...wind, apparentWindSpeed });
  const records = sailRecords({
    edition: sail.edition,
    sail: sail.table,
    apparentWindAngle: apparentWindAngle.value,
  });
  const coefficients = { liftCoefficient: records.lift, dragCoefficient: records.drag };
  const onSail = {
    apparentWindSpeed,
    sailArea: sail.area,
    airDensity: worked(formulas.airDensity, {
      pressure: conditions.airPressure,
      temperature: conditions.airTemperature,
    }),
  };
  const onEdge = (share: number, lineLength: number) =>
    worked(formulas.windOnEdge, {
      share,
      sailForce: worked(formulas.sailForce, { ...onSail, ...coefficients }),
      lineLength,
    });
  if (!("kind" in geometry))
    return worked(formulas.halyard, {
      edgeLoad: onEdge(geometry.luffShare, geometry.luff),
      lineLength: geometry.luff,
      sag: geometry.luffSag,
      sailMass: sail.mass ?? 0,
    });
  if (geometry.kind === "clew")
    return worked(formulas.clewSheet, {
      leechTension: worked(formulas.leechTension, {
        edgeLoad: onEdge(geometry.leechShare, geometry.leech),
        lineLength: geometry.leech,
        sag: geometry.leechSag,
      }),
      clewAngle: geometry.clewAngle,
      leadAngle: geometry.leadAngle,
    });
  return boomWorking(geometry, {
    sailLift: worked(formulas.sailLift, { ...onSail, liftCoefficient: coefficients.liftCoefficient }),
    sailDrag: worked(formulas.sailDrag, { ...onSail, dragCoefficient: coefficients.dragCoefficient }),
    apparentWindAngle,
  });
}

type SailParts = Readonly<Record<"sailLift" | "sailDrag" | "apparentWindAngle", Working>>;

/** Load of a sheet on a boom, from lift and drag of its sail. */
function boomWorking(
  { boomAngle, forceLever, sheetLever, sheetSlope }: Extract<SheetGeometry, { kind: "boom" }>,
  parts: SailParts,
): Working {
  const drive = worked(formulas.drive, parts);
  const sideForce = worked(formulas.sideForce, parts);
  return worked(formulas.fixedLeadSheet, {
    acrossForce: worked(formulas.forceAcrossBoom, { drive, sideForce, boomAngle }),
    forceLever,
    sheetLever,
    sheetAngle: Math.PI / 2,
    sheetSlope,
  });
}
