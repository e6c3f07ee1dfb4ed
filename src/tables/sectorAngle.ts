import { fixed, plain } from "../drawing/format.ts";
import { radians } from "../geometry/angle.ts";
import { rowOf, steps } from "./steps.ts";
import type { ReckonerTable } from "./table.ts";

/** Half degrees where most reducers lie, whole ones elsewhere. [degrees] */
const HALF_ANGLES = [...steps(5, 9, 1), ...steps(10, 35, 0.5), ...steps(36, 85, 1)];
const WORKED = 20;
const DIAMETER = 800;

/** Lengths for 1000 of whatever they go by, so that one table serves millimetres and inches. */
function reckon(halfAngleDeg: number) {
  const alpha = radians(halfAngleDeg);
  const sectorDeg = 360 * Math.sin(alpha);
  return {
    sectorDeg,
    growth: 2000 * Math.tan(alpha),
    slant: 1000 / Math.cos(alpha),
    radius: 500 / Math.sin(alpha),
    chord: 2000 * Math.sin(radians(sectorDeg / 2)),
  };
}

function row(deg: number): string[] {
  const { sectorDeg, growth, slant, radius, chord } = reckon(deg);
  return [
    fixed(deg, 1),
    plain(2 * deg, 1),
    fixed(90 - deg, 1),
    fixed(growth, 1),
    fixed(slant, 1),
    fixed(radius, 1),
    fixed(sectorDeg, 2),
    fixed(360 - sectorDeg, 2),
    fixed(chord, 2),
  ];
}

/** Sector of the flat pattern of a right cone by its half angle. @see derived here; net-of-a-frustum recomputes */
export function sectorAngle(): ReckonerTable {
  const rows = HALF_ANGLES.map(row);
  const { sectorDeg, growth, slant, radius, chord } = reckon(WORKED);
  const per1000 = fixed(radius, 1);
  return {
    id: "sector-angle",
    title: "Sector angle by half angle",
    about:
      "How large a piece of a flat disc makes a right cone, and the lengths that go with its half angle.",
    use: [
      "The half angle lies between the centre line of the cone and its wall. The sector angle is the angle at the centre of the flat pattern, between its two straight edges.",
      "Lengths are for 1000 of what their heading names, in millimetres, inches or any other unit. All sizes are those of the middle of the plate’s thickness.",
      "Set the pattern out by its chord, the straight line from corner to corner of the large edge: it is surer than a protractor. Above 30° the pattern is more than half a disc, and the same chord closes the piece left out.",
    ],
    formula: [
      "sector angle = 360° × sin(half angle)",
      "outer radius = diameter ÷ (2 × sin(half angle))",
      "chord = 2 × outer radius × sin(sector angle ÷ 2)",
      "diameter grows by 2 × height × tan(half angle); slant = height ÷ cos(half angle)",
    ],
    columns: [
      { head: "Half angle", unit: "°" },
      { head: "Both walls together", unit: "°" },
      { head: "Wall above level", unit: "°" },
      { group: "For 1000 of height", head: "diameter grows by" },
      { group: "For 1000 of height", head: "slant" },
      { group: "For 1000 of diameter", head: "outer radius of the pattern" },
      { group: "Pattern", head: "sector angle", unit: "°" },
      { group: "Pattern", head: "left out of the disc", unit: "°" },
      { group: "For 1000 of outer radius", head: "chord" },
    ],
    entries: 1,
    rows,
    worked: {
      row: rowOf(rows, [fixed(WORKED, 1)]),
      columns: [3, 4, 5, 6, 7, 8],
      steps: [
        { what: "Diameter grows by", sum: `2 × 1000 × tan ${WORKED}°`, is: fixed(growth, 1) },
        { what: "Slant", sum: `1000 ÷ cos ${WORKED}°`, is: fixed(slant, 1) },
        { what: "Outer radius", sum: `1000 ÷ (2 × sin ${WORKED}°)`, is: per1000 },
        { what: "Sector angle", sum: `360° × sin ${WORKED}°`, is: `${fixed(sectorDeg, 2)}°` },
        {
          what: "Left out of the disc",
          sum: `360° − ${fixed(sectorDeg, 2)}°`,
          is: `${fixed(360 - sectorDeg, 2)}°`,
        },
        { what: "Chord", sum: `2 × 1000 × sin(360° × sin ${WORKED}° ÷ 2)`, is: fixed(chord, 2) },
        {
          what: `A cone of half angle ${WORKED}° and middle diameter ${DIAMETER} has the outer radius`,
          sum: `${DIAMETER} ÷ 1000 × ${per1000}`,
          is: fixed((DIAMETER / 1000) * Number(per1000), 1),
        },
      ],
    },
    basis: ["derived here"],
  };
}
