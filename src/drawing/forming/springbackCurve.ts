import type { Vec2 } from "../../geometry/vector.ts";
import type { Report } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { dimension, lengthNumber, MM_PER_INCH, strengthText, type Units, unitName } from "../format.ts";
import { type Box, circle, type Drawing, path } from "../model.ts";
import type { Paper } from "../paper.ts";
import { FULL_SIZE } from "../scale.ts";
import { fitSheet } from "../sheet.ts";
import { axesRoom, drawAxes } from "./axes.ts";
import { hatch } from "./hatch.ts";
import { spaced, within } from "./plotCurve.ts";
import { pointAt } from "./pointAt.ts";

type Springback = NonNullable<Report["forming"]["springback"]>;

/** Radius of a marked place's dot. [mm of paper] */
const DOT = 0.9;
/** The plot runs so far above the slackest place, however much slacker strong plate springs. [-] */
const [ABOVE, FURTHEST] = [1.15, 2.2];
const BAND = { angleDeg: 45, apartMm: 1.8 };
const POINTING = { liked: [-45, -30, -60, -75, 0, -90], else: [135, 120, 150, 180, 60, 90] };

/** Free radius against the radius under load, the band of yields hatched, the part's places marked; nothing for folded skins. */
export function springbackCurve(report: Report, { paper }: { paper: Paper }): Drawing | undefined {
  const { part, forming } = report;
  const { springback } = forming;
  if (!springback) return undefined;
  const { units } = part;
  const { left, below } = axesRoom(paper.capsMm.small);
  const wide = paper.widthMm - 6 - left;
  const high = Math.min(0.6 * wide, paper.heightMm - below);
  const strong =
    springback.strongYieldMPa === null
      ? `By the certificate’s yield of ${strengthText(springback.yieldMPa, units)}.`
      : `Hatched: plate from its grade’s yield of ${strengthText(springback.yieldMPa, units)} to ${strengthText(springback.strongYieldMPa, units)}, which plate of that grade may well have.`;
  return fitSheet(
    {
      paper: { ...paper, scales: FULL_SIZE },
      core: { widthMm: wide, heightMm: high },
      plot: true,
      text: {
        title: `Springback of ${part.title}`,
        description: springback.places
          .map(
            ({ place, freeMm, loadedMm }) =>
              `At the ${place}, to be ${dimension(freeMm, units)} when free, bend to ${dimension(loadedMm, units)} under load.`,
          )
          .join(" "),
        lines: [
          part.title,
          `Springback: middle radii square to the element, in ${unitName(units)}. ${strong}`,
        ],
      },
    },
    (board) => drawCurve(board, springback, { units, box: { left: 0, bottom: 0, right: wide, top: high } }),
  );
}

function drawCurve(
  board: Board,
  { curve, places, flatFromMm, strongFlatFromMm, strongYieldMPa }: Springback,
  { units, box }: { units: Units; box: Box },
): void {
  const unit = units === "mm" ? 1 : MM_PER_INCH;
  const slackest = Math.max(...places.map(({ freeMm }) => freeMm));
  const strongest = Math.max(...places.map(({ freeMm, strongFreeMm }) => strongFreeMm ?? FURTHEST * freeMm));
  const top = ABOVE * Math.min(strongest, FURTHEST * slackest);
  const from = curve[0]?.loadedMm ?? 0;
  const to = Math.max(...curve.map(({ loadedMm }) => loadedMm));
  const frame = drawAxes(board, box, {
    x: { name: `radius under load in ${unitName(units)}`, from: from / unit, to: to / unit },
    y: { name: `radius when free`, from: 0, to: top / unit },
  });
  const at = ([x, y]: Vec2): Vec2 => frame.at(x / unit, y / unit);
  // Where it springs back flat the radius is beyond any height: the curve leaves the plot at the top.
  const line = (which: "freeMm" | "strongFreeMm", flatMm: number | null): Vec2[] =>
    curve.flatMap(({ loadedMm, [which]: free }, i): Vec2[] => {
      if (free !== null) return [[loadedMm, free]];
      const before = curve[i - 1]?.[which];
      return flatMm !== null && before != null ? [[flatMm, 10 * top]] : [];
    });
  const drawn = (points: readonly Vec2[]) => within(points, [0, top]).map((piece) => piece.map(at));
  const own = drawn(line("freeMm", flatFromMm));
  const strong = drawn(line("strongFreeMm", strongFlatFromMm));
  const straight = drawn(curve.map(({ loadedMm }): Vec2 => [loadedMm, loadedMm]));
  board.draw(
    ...own.map((piece) => path("outline", piece)),
    ...strong.map((piece) => path("dimension", piece)),
    ...straight.map((piece) => path("centre", piece)),
  );
  for (const { place, freeMm, loadedMm } of places) {
    const dot = at([loadedMm, freeMm]);
    board.draw(
      circle("arrow", dot, board.mm(DOT)),
      path("hidden", [[box.left, dot[1]], dot, [dot[0], box.bottom]]),
    );
    const text = `${place}: ${lengthNumber(loadedMm, units)} for ${lengthNumber(freeMm, units)}`;
    pointAt(board, { tips: [dot], text, box, directionsDeg: POINTING });
  }
  const [upper] = strong;
  const [lower] = own;
  pointAt(board, { tips: spaced(straight[0] ?? []), text: "no springback", box, directionsDeg: POINTING });
  if (!upper || !lower) return;
  pointAt(board, {
    tips: spaced(upper),
    text: `yield ${strengthText(strongYieldMPa ?? 0, units)}`,
    box,
    directionsDeg: { liked: POINTING.else, else: [] },
  });
  // Both leave at the top or at the right: the corner belongs to the band where only the strong one leaves at the top.
  const ends = [upper.at(-1) as Vec2, lower.at(-1) as Vec2];
  const corner: Vec2[] = (ends[0] as Vec2)[1] > (ends[1] as Vec2)[1] ? [[box.right, box.top]] : [];
  const turns = (ends[0] as Vec2)[0] < (ends[1] as Vec2)[0] ? corner : [];
  board.draw(...hatch(board, [...upper, ...turns, ...lower.toReversed()], BAND));
}
