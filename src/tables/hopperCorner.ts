import { fixed } from "../drawing/format.ts";
import { degrees, radians } from "../geometry/angle.ts";
import { rowOf, steps } from "./steps.ts";
import type { ReckonerTable } from "./table.ts";

/** Slopes of hopper walls from level. [degrees] */
const SLOPES = steps(30, 85, 5);
const WORKED = { first: 50, second: 60 };

/** The corner of two plane walls whose level edges are square to each other. Degrees. */
export function corner(firstDeg: number, secondDeg: number) {
  const [first, second] = [radians(firstDeg), radians(secondDeg)];
  // For a drop of 1 the valley goes cot β₂ along the level edge of wall 1 and cot β₁ along that of wall 2.
  const valley = Math.atan(1 / Math.hypot(1 / Math.tan(first), 1 / Math.tan(second)));
  const between = Math.acos(-Math.cos(first) * Math.cos(second));
  return {
    valley: degrees(valley),
    between: degrees(between),
    bend: 180 - degrees(between),
    plan: degrees(Math.atan(Math.tan(second) / Math.tan(first))),
    /** In each flat wall, between its level edge and the valley. */
    edges: [
      degrees(Math.atan(Math.tan(second) / Math.sin(first))),
      degrees(Math.atan(Math.tan(first) / Math.sin(second))),
    ] as const,
  };
}

function row(first: number, second: number): string[] {
  const { valley, between, bend, plan, edges } = corner(first, second);
  return [
    String(first),
    String(second),
    ...[valley, between, bend, plan, ...edges].map((one) => fixed(one, 2)),
  ];
}

/** Corners of pyramid hoppers by the slopes of their walls. @see derived here; pyramid-60 and math-central-qq-09-08 recompute */
export function hopperCorner(): ReckonerTable {
  const rows = SLOPES.flatMap((first) =>
    SLOPES.filter((second) => second >= first).map((second) => row(first, second)),
  );
  const { first, second } = WORKED;
  const at = rowOf(rows, [String(first), String(second)]);
  const cells = rows[at] as string[];
  const deg = (column: number) => `${cells[column] ?? ""}°`;
  return {
    id: "hopper-corner",
    title: "Hopper corners by the slopes of the walls",
    about: "How steep the valley of a pyramid hopper is, and at which angle its two walls meet there.",
    use: [
      "Slopes are counted from level, in degrees, each in the direction in which its wall is steepest. The walls’ upper edges are level and square to each other, as round any rectangular hopper.",
      "The valley is the line in the corner where two walls meet; its slope is from level too, and it is always less steep than either wall. The angle between the walls is the inside one, measured square to the valley: what an angle gauge shows there, more than 90°. The bend is what a flat plate has to be bent by along that line, 180° less that angle.",
      "Valley in plan is the valley’s direction seen from above, from the level edge of wall 1. The corner of a flat wall lies between its level edge and the valley: it is the angle to cut on the plate, along the faces that meet at the corner.",
      "A square-to-round has no valley but a curved corner. The angle between its two flats is still that of the table, if their slopes are taken; the bends of its corner add up to no less than the bend here. Its element lines are on the part’s page.",
    ],
    formula: [
      "tan(valley) = 1 ÷ √(1 ÷ tan²(slope 1) + 1 ÷ tan²(slope 2))",
      "cos(angle between the walls) = −cos(slope 1) × cos(slope 2); bend = 180° − that angle",
      "tan(valley in plan) = tan(slope 2) ÷ tan(slope 1)",
      "tan(corner of wall 1) = tan(slope 2) ÷ sin(slope 1); wall 2 the other way round",
    ],
    columns: [
      { group: "Slope from level", head: "wall 1", unit: "°" },
      { group: "Slope from level", head: "wall 2", unit: "°" },
      { group: "Valley", head: "slope from level", unit: "°" },
      { group: "Between the walls", head: "inside angle", unit: "°" },
      { group: "Between the walls", head: "bend", unit: "°" },
      { group: "Valley", head: "in plan, from wall 1", unit: "°" },
      { group: "Corner of the flat wall", head: "wall 1", unit: "°" },
      { group: "Corner of the flat wall", head: "wall 2", unit: "°" },
    ],
    entries: 2,
    block: 0,
    rows,
    worked: {
      row: at,
      columns: [2, 3, 4, 5, 6, 7],
      steps: [
        { what: "Valley", sum: `arctan(1 ÷ √((1 ÷ tan ${first}°)² + (1 ÷ tan ${second}°)²))`, is: deg(2) },
        { what: "Angle between the walls", sum: `arccos(−cos ${first}° × cos ${second}°)`, is: deg(3) },
        { what: "Bend", sum: `180° − ${deg(3)}`, is: deg(4) },
        { what: "Valley in plan", sum: `arctan(tan ${second}° ÷ tan ${first}°)`, is: deg(5) },
        { what: "Corner of wall 1", sum: `arctan(tan ${second}° ÷ sin ${first}°)`, is: deg(6) },
        { what: "Corner of wall 2", sum: `arctan(tan ${first}° ÷ sin ${second}°)`, is: deg(7) },
      ],
    },
    basis: ["derived here"],
    checked: ["pyramid-60", "math-central-qq-09-08"],
    caution:
      "How steep a hopper has to be for its material to flow depends on the material and the wall, and belongs to a flow test; the valley is the flattest place. A hopper may be a confined space: local codes first.",
  };
}
