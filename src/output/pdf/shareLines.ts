import { leftOf } from "../../geometry/mirrorLine.ts";
import { distance2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import { hitLines, lineText, type Numbered } from "./numberedLines.ts";
import { ALIKE_MM, type Share } from "./share.ts";

/** A line to be drawn on a template, what is written along it, and how far it stops short of its end `to`. */
export interface Marked {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly stop: Vec2;
  readonly text: string | undefined;
}

/** Turning that prints alike. [degrees] */
const ALIKE_DEG = 0.05;

const near = (p: Vec2, q: Vec2): boolean => distance2(p, q) < ALIKE_MM;

/** Does a line run on the share, its straight edges included? */
export const isOn = (
  { middle, outer }: Share,
  { from, to }: { readonly from: Vec2; readonly to: Vec2 },
): boolean =>
  // The share lies to the right of the middle line, and to the left of the outer one.
  [from, to].every((p) => leftOf(middle, p) < ALIKE_MM && (!outer || leftOf(outer, p) > -ALIKE_MM));

/** The lines of the pattern that one of the share's comes to lie on, turned over; none where one is missing. */
function images(one: Numbered, share: Share, all: readonly Numbered[]): readonly Numbered[] | undefined {
  const found = share.places.map((place) =>
    all.find(
      (other) =>
        near(place(one.from), other.from) &&
        near(place(one.stop), other.stop) &&
        near(place(one.to), other.to) &&
        Math.abs((other.bendDeg ?? 0) - (one.bendDeg ?? 0)) < ALIKE_DEG,
    ),
  );
  return found.every((other) => other !== undefined) ? [...new Set(found)] : undefined;
}

/**
 * The lines of a share, each with the numbers of all lines of the pattern that it becomes: the brake's own where they are alike
 * on all shares, else those of the marking table.
 */
export function shareLines(
  report: Report,
  blank: Blank,
  share: Share,
): { readonly lines: readonly Marked[]; readonly name: "bend lines" | "element lines" } {
  const hits = hitLines(report, blank);
  const bends = hits && marked(share, hits, true);
  if (bends) return { lines: bends, name: "bend lines" };
  const rows = report.hand.rows
    .filter(({ piece }) => piece === blank.piece)
    .map(({ a, b, number }): Numbered => ({ from: a, stop: b, to: b, number, bendDeg: undefined }));
  return { lines: marked(share, rows, false) ?? [], name: "element lines" };
}

/** @returns undefined where a line has no image and has to have one */
function marked(share: Share, all: readonly Numbered[], strict: boolean): Marked[] | undefined {
  const own = all.filter((one) => isOn(share, one));
  const lines = own.map((one) => ({ one, numbers: images(one, share, all) }));
  if (strict && (lines.some(({ numbers }) => !numbers) || countOf(lines) !== all.length)) return undefined;
  return lines.map(({ one: { from, to, stop, bendDeg, ...one }, numbers }): Marked => {
    const all = (numbers ?? [one]).map(({ number }) => number);
    return { from, to, stop, text: lineText(all, bendDeg) };
  });
}

/** How many lines of the pattern the share's stand for. */
const countOf = (lines: readonly { readonly numbers: readonly Numbered[] | undefined }[]): number =>
  new Set(lines.flatMap(({ numbers }) => numbers ?? [])).size;
