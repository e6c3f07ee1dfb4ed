import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { add2, type Vec2 } from "../geometry/vector.ts";
import type { Drawable } from "../report/report.ts";
import type { Board } from "./board.ts";
import { boxOf, height, width } from "./box.ts";
import { linearDimension } from "./dimension/linear.ts";
import { angleText, dimension, drawnUnit, unitName } from "./format.ts";
import { drawnThickness } from "./thickness.ts";
import type { Box, Drawing } from "./model.ts";
import type { Paper } from "./paper.ts";
import type { Projection } from "./projectionSign.ts";
import { fitSheet } from "./sheet.ts";
import {
  axes,
  elevation,
  elevationLines,
  extremes,
  FRONT,
  LEFT,
  project,
  type Sight,
} from "./views/elevation.ts";
import { centreOf, curveOf, type End, endsOfPart, inPlan, offsetOf, sizeText } from "./views/ends.ts";
import { nameSeams, nameViews } from "./views/names.ts";
import { numberPlan } from "./views/numbers.ts";
import { crosses, plan, planLines } from "./views/plan.ts";

/** The nearest dimension line below a view. [mm of paper] */
const BELOW = 9;
/** Clear room for what is lettered there; on a narrow paper views would no longer fit side by side with more. [mm of paper] */
const CLEAR = 8;
const CLEAR_NARROW = 5.5;

/**
 * Between neighbouring views: room for one dimension, in inches on a sheet with its fraction below, and for the numbers of the
 * other. [mm of paper]
 */
function between({ capsMm, name }: Paper, { units }: Drawable["part"]): number {
  const numbers = BELOW + 1.5 * capsMm.small;
  return name === "narrow"
    ? numbers + CLEAR_NARROW
    : numbers + CLEAR + (units === "in" ? 1.6 * capsMm.figure : 0);
}

/**
 * The part as it stands: front view, view from above below it, and where it leans sideways the view from the left.
 * Two views say as much, and on a small sheet they are larger.
 */
export function viewsDrawing(
  report: Drawable,
  {
    paper,
    views = "all",
    gauge = null,
  }: {
    paper: Paper;
    views?: "all" | "two";
    /** The sheet gauge that the plate is. */
    gauge?: string | null;
  },
): Drawing {
  const { part } = report;
  const ends = endsOfPart(report);
  const [dx, dy] = offsetOf(report);
  const sizes = boxesOf(ends);
  const side = views === "all" && Math.abs(dy) > SAME_POINT_MM;
  const narrow = paper.name === "narrow";
  const projection: Projection = part.units === "in" ? "third" : "first";
  const rows = [height(sizes.front) + height(sizes.plan) + (side && narrow ? height(sizes.left) : 0)];
  const core = {
    widthMm: Math.max(width(sizes.front), width(sizes.plan)) + (side && !narrow ? width(sizes.left) : 0),
    heightMm: rows.reduce((sum, one) => sum + one, 0),
  };
  const { units } = part;
  const cone =
    report.cone && report.cone.halfAngleDeg > 0 ? ` Half angle ${angleText(report.cone.halfAngleDeg)}.` : "";
  return fitSheet(
    {
      paper,
      core,
      text: {
        title: `Views of ${part.title}`,
        description:
          `Front view and view from above${side ? ", and view from the left" : ""}, in ${projection}-angle projection. ` +
          `Height ${dimension(report.shape.heightMm, units)}, offset ${dimension(dx, units)} to the right and ` +
          `${dimension(dy, units)} away, in ${unitName(units)}.`,
        lines: [
          part.title,
          `${projection === "first" ? "First" : "Third"}-angle projection. Plate ${drawnThickness(part.thickness, units, gauge)} thick.${cone} Sizes in ${drawnUnit(units)}.`,
        ],
      },
      projection,
    },
    (board) => drawViews(board, { report, ends, sizes, side, narrow, projection }),
  );
}

/** Outlines of the views about their own origins, which is the centre of end A. [mm] */
function boxesOf(ends: { a: End; b: End }): { front: Box; left: Box; plan: Box } {
  const all = [...curveOf(ends.a.curves, "outside"), ...curveOf(ends.b.curves, "outside")];
  const from = (sight: Sight) => boxOf(all.map((p) => project(sight, p)));
  return { front: from(FRONT), left: from(LEFT), plan: boxOf(inPlan(all)) };
}

interface Scene {
  readonly report: Drawable;
  readonly ends: { readonly a: End; readonly b: End };
  readonly sizes: { readonly front: Box; readonly left: Box; readonly plan: Box };
  readonly side: boolean;
  readonly narrow: boolean;
  readonly projection: Projection;
}

/**
 * Where the view from above and the view from the left stand, the front view standing at the origin. First angle: below it
 * and to its right. Third angle: above it and to its left. A narrow sheet has the view from the left at its foot.
 */
function placesOf({ sizes, narrow, projection }: Scene, gap: number): { plan: Vec2; left: Vec2 } {
  const { front, left, plan } = sizes;
  const third = projection === "third";
  const above: Vec2 = [0, third ? front.top + gap - plan.bottom : front.bottom - gap - plan.top];
  const foot = third ? front.bottom : above[1] + plan.bottom;
  if (narrow) return { plan: above, left: [0, foot - gap - left.top] };
  return {
    plan: above,
    left: [
      third
        ? Math.min(front.left, plan.left) - gap - left.right
        : Math.max(front.right, plan.right) + gap - left.left,
      0,
    ],
  };
}

function drawViews(board: Board, scene: Scene): void {
  const { report, ends, sizes, side } = scene;
  const { unit } = board;
  const gap = board.mm(between(board.paper, report.part));
  const { units } = report.part;
  const front: Vec2 = [0, 0];
  const { plan: seenFromAbove, left } = placesOf(scene, gap);
  const levels = [sizes.front.bottom, sizes.front.top] as const;
  const centres = [centreOf(ends.a), centreOf(ends.b)];

  board.draw(...elevation(report, { ends, sight: FRONT, at: front, unit }));
  board.draw(...axes({ ends: centres, sight: FRONT, at: front, unit }, levels));
  board.draw(
    ...plan(report, { ends, at: seenFromAbove, unit }),
    ...crosses({ ends, at: seenFromAbove, unit }),
  );
  if (side) {
    board.draw(...elevation(report, { ends, sight: LEFT, at: left, unit }));
    board.draw(...axes({ ends: centres, sight: LEFT, at: left, unit }, levels));
  }
  board.locate(...elevationLines(report, { sight: FRONT, at: front, unit }));
  board.locate(...planLines(report, { at: seenFromAbove, unit }));
  if (side) board.locate(...elevationLines(report, { sight: LEFT, at: left, unit }));

  dimensionFront(board, { report, ends, box: sizes.front });
  dimensionOffset(board, {
    report,
    ends,
    at: seenFromAbove,
    box: sizes.plan,
    above: scene.projection === "third",
  });
  if (!ends.a.sizes.round) {
    const points = inPlan(curveOf(ends.a.curves, ends.a.measured)).map((p) => add2(p, seenFromAbove));
    const at = boxOf(points);
    const ways = linearDimension(board, {
      from: [at.left, at.bottom],
      to: [at.left, at.top],
      along: [0, 1],
      text: sizeText(board, ends.a, "width", units),
      offsetsMm: [12, 16, 20],
    });
    board.put("width of end A", ways, Infinity);
  }
  nameSeams(board, { report, at: seenFromAbove });
  numberPlan(board, { report, isOpen: ends.b.sizes.round && ends.b.sizes.diameter > 0, at: seenFromAbove });
  nameViews(board, [
    { text: "front", box: shifted(sizes.front, front) },
    { text: "from above", box: shifted(sizes.plan, seenFromAbove) },
    ...(side ? [{ text: "from the left", box: shifted(sizes.left, left) }] : []),
  ]);
}

const shifted = (box: Box, [x, y]: Vec2): Box => ({
  left: box.left + x,
  right: box.right + x,
  bottom: box.bottom + y,
  top: box.top + y,
});

/** Sizes of both ends above and below the front view, the height to its left, a right cone's slant to its right. */
function dimensionFront(
  board: Board,
  { report, ends, box }: { report: Drawable; ends: { a: End; b: End }; box: Box },
): void {
  const { units } = report.part;
  const across = (end: End, name: string, offsetsMm: readonly number[]): void => {
    if (end.sizes.round && end.sizes.diameter === 0) return;
    const [from, to] = extremes(end, end.measured, FRONT);
    const text = sizeText(board, end, "length", units);
    board.put(name, linearDimension(board, { from, to, along: [1, 0], text, offsetsMm }), Infinity);
  };
  across(ends.a, "size of end A", [-9, -12, -15]);
  across(ends.b, "size of end B", [9, 12, 15]);
  const [low] = extremes(ends.a, "outside", FRONT);
  const [high] = extremes(ends.b, "outside", FRONT);
  const foot: Vec2 = [low[0], box.bottom];
  const head: Vec2 = [high[0], box.top];
  const most = Math.min(foot[0], head[0]);
  const text = board.length(report.shape.heightMm, units);
  board.put(
    "height",
    linearDimension(board, {
      from: foot,
      to: head,
      along: [0, 1],
      text,
      offsetsMm: [10, 14, 18].map((gap) => gap + (most - box.left) / board.unit),
    }),
    Infinity,
  );
  if (!report.cone || report.cone.halfAngleDeg === 0) return;
  const [, footRight] = extremes(ends.a, "outside", FRONT);
  const [, headRight] = extremes(ends.b, "outside", FRONT);
  const slant = board.length(report.cone.slantMm, units);
  board.put(
    "slant",
    linearDimension(board, { from: footRight, to: headRight, text: slant, offsetsMm: [-9, -12, -16] }),
  );
}

/** How far end B's centre stands from end A's, in the view from above. */
function dimensionOffset(
  board: Board,
  {
    report,
    ends,
    at,
    box,
    above,
  }: { report: Drawable; ends: { a: End; b: End }; at: Vec2; box: Box; above: boolean },
): void {
  const { units } = report.part;
  const [dx, dy] = offsetOf(report);
  const [from, to] = [add2(centreOf(ends.a), at), add2(centreOf(ends.b), at)];
  // Extension lines begin at the outermost rim: on the plate they would read as seams. Within it the centre lines stand for them.
  const put = (
    name: string,
    length: number,
    { along, onRim, offsetsMm }: { along: Vec2; onRim: (p: Vec2) => Vec2; offsetsMm: readonly number[] },
  ): void => {
    if (Math.abs(length) <= SAME_POINT_MM) return;
    const text = board.length(Math.abs(length), units);
    const points = { from: onRim(from), to: onRim(to) };
    board.put(name, linearDimension(board, { ...points, along, text, offsetsMm }), Infinity);
  };
  put("offset to the right", dx, {
    along: [Math.sign(dx) || 1, 0],
    // On the side where the front view does not stand.
    onRim: ([x]) => [x, at[1] + (above ? box.top : box.bottom)],
    offsetsMm: [9, 13, 17].map((gap) => Math.sign(dx) * (above ? gap : -gap)),
  });
  put("offset away", dy, {
    along: [0, Math.sign(dy) || 1],
    onRim: ([, y]) => [at[0] + box.right, y],
    offsetsMm: [9, 13, 17].map((gap) => -Math.sign(dy) * gap),
  });
}
