import { fixed } from "../drawing/format.ts";
import { freeRadiusMm, loadedRadiusMm, type Elastic } from "../forming/springback.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import {
  basisOf,
  bentOf,
  CAUTION,
  columnsOf,
  COMMON_USE,
  FORMULA,
  RADII,
  ratio,
  THICKNESS,
  wideSteps,
  WORKED,
  type Bent,
} from "./springbackShared.ts";
import { rowOf } from "./steps.ts";
import type { ReckonerTable } from "./table.ts";

/** What a loaded radius comes to. */
export function comesTo(materials: Catalogue["materials"]): ReckonerTable {
  const bent = bentOf(materials);
  const plates = bent.flatMap((one) => one.plates);
  const rows = [
    ...RADII.map((r) => [String(r), ...plates.map((plate) => ratio(freeRadiusMm(r, plate) / r))]),
    ["flat at", ...plates.map((plate) => fixed(loadedRadiusMm(Infinity, plate), 0))],
  ];
  const [one] = bent as [Bent];
  const [plate] = one.plates as [Elastic, Elastic];
  const { strength, stiffness, first } = wideSteps(one, one.plates);
  const x = (WORKED * plate.yieldMPa) / plate.youngsMPa;
  const opened = fixed(freeRadiusMm(WORKED, plate) / WORKED, 3);
  const middle = WORKED * THICKNESS;
  return {
    id: "springback-comes-to",
    goesBy: ["materials"],
    twin: "springback-bend-to",
    title: "Springback: what a bend comes to",
    about:
      "How far a bend of a given radius opens when the load is taken off, and when it springs back flat.",
    use: [
      ...COMMON_USE,
      "Divide the radius under load by the thickness, find the row, and take the figure times the radius under load: that is the radius of the free piece. More than 10 times is as good as flat. Flat means that nothing of the bend is left; the last row says from which radius over thickness on that is so.",
    ],
    formula: FORMULA,
    columns: columnsOf(bent, "Radius under load ÷ thickness"),
    entries: 1,
    rows,
    worked: {
      row: rowOf(rows, [String(WORKED)]),
      columns: [1],
      steps: [
        ...first,
        { what: "x", sum: `${WORKED} × ${strength} ÷ ${stiffness}`, is: fixed(x, 5) },
        { what: "Free ÷ loaded", sum: `1 ÷ (4 × ${fixed(x, 5)}³ − 3 × ${fixed(x, 5)} + 1)`, is: opened },
        {
          what: `Plate of ${THICKNESS} mm bent to a middle radius of ${middle} mm comes to`,
          sum: `${middle} × ${opened}`,
          is: `${fixed(middle * Number(opened), 0)} mm`,
        },
        {
          what: "Flat from radius ÷ thickness",
          sum: `${stiffness} ÷ (2 × ${strength})`,
          is: fixed(loadedRadiusMm(Infinity, plate), 0),
        },
      ],
    },
    basis: basisOf(materials),
    caution: CAUTION,
  };
}
