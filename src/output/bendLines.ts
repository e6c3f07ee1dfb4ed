import { hitOf, linesOf } from "../drawing/forming/brakePicture.ts";
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
function layoutLines(blank: Blank, bends: readonly FileBend[] | undefined) {
  return blank.lines.map(({ kind, from, to }) => ({
    kind: bends === undefined ? kind : ("element" as const),
    from,
    to,
  }));
}

/** Every line on a blank: those of the layout first, then those that the brake bends. */
export const linesOn = (blank: Blank, bends: readonly FileBend[] | undefined) => [
  ...layoutLines(blank, bends),
  ...(bends ?? []).map(({ from, to }) => ({ kind: "bend" as const, from, to })),
];
