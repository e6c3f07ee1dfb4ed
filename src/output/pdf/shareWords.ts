import { checkDistance, checkUnit, dimension, unitName } from "../../drawing/format.ts";
import { edgePaths, endsOf, isSeam } from "../../drawing/pattern/edges.ts";
import { leftOf } from "../../geometry/mirrorLine.ts";
import type { Units } from "../../geometry/units.ts";
import { distance2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";
import { ALIKE_MM, type Share } from "./share.ts";

/** What a share is, and why it may stand for the whole. */
export function shareFact({ kind }: Share, { faceUp }: Blank): string {
  const over = faceUp === "inside" ? "outside" : "inside";
  return kind === "half"
    ? `This is one half: the other is the same turned over about the middle of the pattern (measured here to ${ALIKE_MM} mm). Turned over, the paper lies with its print down; the plate keeps its ${faceUp} face up, and no mark goes on the ${over}.`
    : `This is one quarter: all four are the same, every other one turned over (measured here to ${ALIKE_MM} mm, but for the joint at the seam). Turned over, the paper lies with its print down; the plate keeps its ${faceUp} face up, and no mark goes on the ${over}.`;
}

/** How the share is laid on the plate again and again, and what to measure when the whole is marked. */
export function shareSteps(share: Share, whole: Blank, units: Units): string[] {
  const base =
    "Cut the paper out along its edges. Scribe a straight line on the plate, longer than the edge “middle of the pattern”, and prick both ends of that edge on it. Lay the edge between the pricks and scribe round the paper (1 in the picture); mark the ends of its lines.";
  const turns =
    share.kind === "half"
      ? [
          "Turn the paper over about that line, its edge between the same pricks, and scribe round it again (2).",
        ]
      : [
          "Prick both ends of the edge “turn over here”, turn the paper over about it, and scribe round it again (2). Then turn both over about the middle in the same way: 3 with the paper turned over, 4 with its print up again.",
          ...(share.seam ? [seamStep(share, share.seam, units)] : []),
        ];
  return [base, ...turns, wholeStep(whole, units)];
}

function seamStep({ middle }: Share, seam: readonly [Vec2, Vec2], units: Units): string {
  const [one, other] = seam.map((p) => -leftOf(middle, p)) as [number, number];
  const far = (mm: number) => dimension(Math.abs(mm), units);
  const by = far(one) === far(other) ? far(one) : `${far(one)} at one end and ${far(other)} at the other`;
  return `On 2 and 4, the outermost, the seam is the line ${by} ${unitName(units)} ${one > 0 ? "inside" : "outside"} the edge “middle of the pattern”, drawn dashed beside it: the joint takes that much there. On 1 and 3 there is no such line.`;
}

/** The distances across the whole that no turning over can have right by chance. */
function wholeStep(blank: Blank, units: Units): string {
  const edges = edgePaths(blank);
  const [a, b] = endsOf(edges);
  const seam = edges.find(isSeam);
  const across = (p: Vec2 | undefined, q: Vec2 | undefined) =>
    checkDistance(distance2(p as Vec2, q as Vec2), units);
  // Both ends run the same way round, one from the corner where the other ends.
  const [first, last] = [a?.points[0], a?.points.at(-1)];
  const checks = b
    ? [
        `between the outer corners of the ${a?.name} ${across(first, last)}`,
        `of the ${b.name} ${across(b.points[0], b.points.at(-1))}`,
        `from corner to corner both ways ${across(first, b.points[0])}`,
      ]
    : [
        `between the outer corners of the ${a?.name} ${across(first, last)}`,
        `from each to the point ${across(seam?.points[0], seam?.points.at(-1))}`,
      ];
  return `When all is scribed, measure straight across the whole, in ${checkUnit(units)}: ${checks.join(", ")} (derived here).`;
}
