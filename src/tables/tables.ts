import type { Catalogue } from "../shapes/catalogue.ts";
import { ductCones, inchCones, pipeConesInch, pipeConesMm } from "./cones.ts";
import { hopperCorner } from "./hopperCorner.ts";
import { plateMass } from "./plateMass.ts";
import { sectorAngle } from "./sectorAngle.ts";
import { shortfall } from "./shortfall.ts";
import { bendTo } from "./bendTo.ts";
import { comesTo } from "./comesTo.ts";
import type { ReckonerTable } from "./table.ts";
import { template } from "./template.ts";

/** All ready reckoners, in the order of the work: pattern, forming, corners, mass. */
export function reckonerTables({ materials }: Catalogue): readonly ReckonerTable[] {
  return [
    sectorAngle(),
    ductCones(),
    inchCones(),
    pipeConesMm(),
    pipeConesInch(),
    shortfall(),
    template("mm"),
    template("in"),
    bendTo(materials),
    comesTo(materials),
    hopperCorner(),
    plateMass("mm", materials),
    plateMass("in", materials),
  ];
}
