import { fixed } from "../drawing/format.ts";
import { loadedRadiusMm, type Elastic } from "../forming/springback.ts";
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

/** What to bend to for a radius wanted. */
export function bendTo(materials: Catalogue["materials"]): ReckonerTable {
  const bent = bentOf(materials);
  const plates = bent.flatMap((one) => one.plates);
  const rows = RADII.map((r) => [String(r), ...plates.map((plate) => ratio(loadedRadiusMm(r, plate) / r))]);
  const [one] = bent as [Bent];
  const [plate] = one.plates as [Elastic, Elastic];
  const { strength, stiffness, first } = wideSteps(one, one.plates);
  const loaded = loadedRadiusMm(WORKED, plate);
  const x = (loaded * plate.yieldMPa) / plate.youngsMPa;
  const held = fixed(loaded / WORKED, 3);
  const middle = WORKED * THICKNESS;
  const under = middle * Number(held);
  return {
    id: "springback-bend-to",
    goesBy: ["materials"],
    twin: "springback-comes-to",
    title: "Springback: what radius to bend to",
    about: "How much tighter than the radius wanted plate has to be bent under load, by its material.",
    use: [
      ...COMMON_USE,
      "Divide the radius wanted by the thickness, find the row, and take the figure times the radius wanted: that is the radius to bend to while the load is on.",
    ],
    formula: FORMULA,
    columns: columnsOf(bent, "Radius wanted ÷ thickness"),
    entries: 1,
    rows,
    worked: {
      row: rowOf(rows, [String(WORKED)]),
      columns: [1],
      steps: [
        ...first,
        {
          what: `Bent to ${fixed(loaded, 3)} times the thickness, x`,
          sum: `${fixed(loaded, 3)} × ${strength} ÷ ${stiffness}`,
          is: fixed(x, 5),
        },
        {
          what: "Loaded ÷ free, by the formula",
          sum: `4 × ${fixed(x, 5)}³ − 3 × ${fixed(x, 5)} + 1`,
          is: held,
        },
        { what: "The same, from the radii", sum: `${fixed(loaded, 3)} ÷ ${WORKED}`, is: held },
        {
          what: `Inside radius ${middle - THICKNESS / 2} of ${THICKNESS} mm plate is a middle radius of`,
          sum: `${middle - THICKNESS / 2} + ${THICKNESS} ÷ 2`,
          is: `${middle} mm`,
        },
        { what: "Bend it to, at the middle", sum: `${middle} × ${held}`, is: `${fixed(under, 0)} mm` },
      ],
    },
    basis: basisOf(materials),
    caution: CAUTION,
  };
}
