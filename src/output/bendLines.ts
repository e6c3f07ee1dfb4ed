import { hitOf, linesOf } from "../drawing/forming/brakePicture.ts";
import { readable } from "../drawing/lettering.ts";
import { degrees } from "../geometry/angle.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";

type BrakeLine = ReturnType<typeof linesOf>[number];

/** A line that the brake bends, as a file for the cutting table or the marking bench has it. */
export interface FileBend {
  readonly line: BrakeLine;
  /** From the wide end to where the hit stops. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** Where the line itself ends; the same point where it stops nowhere short. */
  readonly narrow: Vec2;
}

/** The lines of a blank by the plan of the machine that the part is made on; undefined where the part does not go to the brake. */
export function brakeBends({ forming }: Report, blank: Blank): readonly FileBend[] | undefined {
  const plan = forming.plans.find(({ machine }) => machine === forming.machine)?.brake;
  if (!plan) return undefined;
  const lines = linesOf(plan, blank);
  return lines.map((line) => {
    const [from, to, narrow] = hitOf(line, lines);
    return { line, from, to, narrow };
  });
}

/**
 * The lines of the layout, by what is done with them: those of the brake's plan take the place of the layout's own bend
 * lines, which then are element lines like the others.
 */
export function layoutLines(blank: Blank, bends: readonly FileBend[] | undefined) {
  return blank.lines.map(({ kind, from, to }) => ({
    kind: bends === undefined ? kind : ("element" as const),
    from,
    to,
  }));
}

/** Capitals of a line's number: at most so high, and no more of the room between lines than leaves it beside its own. */
const NUMBER_CAP_MM = 5;
const OF_SPACING = 0.4;
/** A number stands so many capitals from the wide end, and its middle so many beside the line. */
const [FROM_END, BESIDE] = [3, 0.9];

/** Where a line's number goes: beside the line near its wide end, and along it, so that it reads without turning over. */
export function numberPlace(
  { from, narrow }: FileBend,
  bends: readonly FileBend[],
): { readonly at: Vec2; readonly capMm: number; readonly alongDeg: number } {
  const long = Math.hypot(narrow[0] - from[0], narrow[1] - from[1]);
  const [ux, uy] = [(narrow[0] - from[0]) / long, (narrow[1] - from[1]) / long];
  const spaces = bends
    .filter((one) => one.from !== from)
    .map(({ from: [x, y] }) => Math.hypot(x - from[0], y - from[1]))
    // Borders of two corners may end in one point; their lines part from there.
    .filter((space) => space > NUMBER_CAP_MM / 2);
  const capMm = Math.min(NUMBER_CAP_MM, OF_SPACING * Math.min(...spaces, long / 2));
  const at: Vec2 = [
    from[0] + capMm * (FROM_END * ux - BESIDE * uy),
    from[1] + capMm * (FROM_END * uy + BESIDE * ux),
  ];
  return { at, capMm, alongDeg: readable(degrees(Math.atan2(uy, ux))) };
}
