import type { PartAsked } from "../asked.ts";
import { fromSeam1 } from "../brakeLines.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { linesWords } from "../brakeThroat.ts";
import { DERIVED } from "../judge.ts";
import { type PlanStep, taped } from "./step.ts";

type Turned = NonNullable<BrakePlan["behind"]>["turned"];
type Words = Pick<PlanStep, "text" | "figures">;

const piecesIn = ({ lines }: BrakePlan): number[] => [...new Set(lines.map(({ piece }) => piece))];
const countIn = ({ lines }: BrakePlan, piece: number): number =>
  lines.filter((one) => one.piece === piece).length;

/** Is a line left out on the brake? */
const isLeft = ({ closes }: BrakePlan, piece: number, line: number): boolean =>
  closes?.left.some((one) => one.piece === piece && one.line === line) === true;

/** From seam edge to middle: "lines 1 to 16", then "lines 36 to 21"; null where nothing is hit from there. */
function rangesOf(plan: BrakePlan, piece: number): readonly (readonly [number, number] | null)[] {
  const count = countIn(plan, piece);
  const half = fromSeam1(count);
  const kept = Array.from({ length: count }, (_, i) => i + 1).filter((line) => !isLeft(plan, piece, line));
  const [first, second] = [kept.filter((line) => line <= half), kept.filter((line) => line > half)];
  const [last, next] = [first.at(-1), second[0]];
  return [last === undefined ? null : [1, last], next === undefined ? null : [count, next]];
}

const rangeWords = (range: readonly [number, number] | null | undefined): string =>
  range ? ` (line${range[0] === range[1] ? ` ${range[0]}` : `s ${range[0]} to ${range[1]}`})` : "";

/** Which way the lines are gone through, and which side is behind: always that of the seam edge that is come from. */
export function orderWords(plan: BrakePlan): string {
  const pieces = piecesIn(plan);
  const ranges = pieces.map((piece) => rangesOf(plan, piece));
  const alike = new Set(ranges.map((one) => JSON.stringify(one))).size === 1;
  const behind = "side behind the punch, towards the frame";
  if (Math.max(...pieces.map((piece) => countIn(plan, piece))) === 1) return `Seam edge 1 and its ${behind}.`;
  const [first, then] = alike ? [rangeWords(ranges[0]?.[0]), rangeWords(ranges[0]?.[1])] : ["", ""];
  return `Go from seam edge 1 to the middle${first}, that edge’s ${behind}; then turn the piece round on the table, inside still up, so that seam edge 2’s side is behind, and go from there${then}.`;
}

/** Are all lines between this one and the turn hit after it, so that the order of hits stays? */
function isLastBefore(plan: BrakePlan, own: Turned, { piece, line }: Turned[number]): boolean {
  const half = fromSeam1(countIn(plan, piece));
  return Array.from({ length: half - line }, (_, i) => line + 1 + i).every(
    (next) => isLeft(plan, piece, next) || own.some((one) => one.piece === piece && one.line === next),
  );
}

/** Lines at which the other side is behind, because it is shallower there: which side that is. */
function turnedWords({ item }: PartAsked, plan: BrakePlan): string {
  const turned = (plan.behind?.turned ?? []).filter(({ piece, line }) => !isLeft(plan, piece, line));
  return ([2, 1] as const)
    .map((edge) => {
      const own = turned.filter(
        ({ piece, line }) => (line <= fromSeam1(countIn(plan, piece)) ? 2 : 1) === edge,
      );
      if (own.length === 0) return "";
      if (edge === 2 && own.every((one) => isLastBefore(plan, own, one)))
        return ` Hit ${linesWords(own, item.pieces)} right after the turn instead: with seam edge 2’s side behind it is shallower there.`;
      return ` For ${linesWords(own, item.pieces)} have seam edge ${edge}’s side behind instead: it is shallower there.`;
    })
    .join("");
}

/** How deep plate reaches behind the punch at most, and at which lines the other side is behind. */
export function behindWords(asked: PartAsked, plan: BrakePlan): Words {
  const { item, say } = asked;
  const { behind, throatMm } = plan;
  if (!behind) return { text: "", figures: [] };
  const { inOrder } = behind;
  const room =
    throatMm === null
      ? ""
      : ` Plate reaches about ${say.tape(inOrder.depthMm)} behind at most (${linesWords([inOrder], item.pieces)}), in a throat of ${say.shops(throatMm)}.`;
  return {
    text: turnedWords(asked, plan) + room,
    figures:
      throatMm === null ? [] : [taped("plate behind the punch at most, about", inOrder.depthMm, DERIVED)],
  };
}

/** What is left out of a piece that closes round the punch, and how it comes off. */
export function leftWords({ item, say }: PartAsked, { closes }: BrakePlan): Words {
  if (!closes) return { text: "", figures: [] };
  const { left, openMm, openAt } = closes;
  return {
    text: ` Leave out ${linesWords(left, item.pieces)}: the seam then stands about ${say.tape(openMm)} open at the ${openAt}. See before the last hits that punch and holder go through it, else leave out the next line on both sides too. Take the piece off through its open seam, or past the free end of the punch.`,
    figures: [taped(`seam open at the ${openAt}, lines left out, about`, openMm, DERIVED)],
  };
}
