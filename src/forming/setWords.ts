import type { RollAsked } from "./asked.ts";
import {
  bearingsOf,
  type BearingsRead,
  raisesOf,
  type SetAt,
  type SetProblem,
  SHARE_DIGITS,
} from "./bearingsRead.ts";
import { settable } from "./rollPlaces.ts";
import { number, type Say } from "./say.ts";
import { isPipe } from "./skin.ts";

/** What is wrong with how a trial was set: the key of its row, what, and what would be right. */
export interface SetWrong {
  readonly key: "setting" | "drop";
  readonly problem: string;
  readonly remedy: string;
}

/** "drop end 190 − 150 = 40 mm, fixed end 18 mm": the raises, from what the scales showed. */
function raisesSaid(read: BearingsRead, say: Say): string {
  const one = (name: string, at: number, at0: number | undefined) =>
    at0 === undefined
      ? `${name} ${say.length(settable(at, say.units))}`
      : `${name} ${say.bare(settable(at, say.units))} − ${say.bare(settable(at0, say.units))} = ${say.length(settable(at - at0, say.units))}`;
  return `${one("drop end", read.dropMm, read.dropAt0Mm)}, ${one("fixed end", read.fixedMm, read.fixedAt0Mm)}`;
}

/**
 * The sum that was done: "0.412 × 40 + 0.588 × 18 = 27.1 mm at the large edge".
 *
 * @returns empty where the shop gives no bearings
 */
export function sumOf(asked: RollAsked, read: BearingsRead, zone = 1): string {
  const { item, say } = asked;
  const of = bearingsOf(asked, zone);
  if (!of) return "";
  if (isPipe(item)) return `${raisesSaid(read, say)}: one raise`;
  const { large } = of.shares;
  const { dropMm, fixedMm } = raisesOf(read);
  const bare = (mm: number) => say.bare(settable(mm, say.units));
  const [drop, fixed] = [number(large, SHARE_DIGITS), number(1 - large, SHARE_DIGITS)];
  const from0 = read.dropAt0Mm === undefined && read.fixedAt0Mm === undefined;
  const largeMm = large * dropMm + (1 - large) * fixedMm;
  return `${from0 ? "" : `${raisesSaid(read, say)}; `}${drop} × ${bare(dropMm)} + ${fixed} × ${bare(fixedMm)} = ${say.length(settable(largeMm, say.units))} at the large edge`;
}

/** What is wrong, and what would be right. */
export function wrongOf(
  asked: RollAsked,
  { settingMm = 0, bearings = { dropMm: 0, fixedMm: 0 } }: SetAt,
  { why, zone = 1 }: { readonly why: SetProblem; readonly zone?: number },
): SetWrong {
  const { say } = asked;
  const { dropMm, fixedMm } = raisesOf(bearings);
  const sum = sumOf(asked, bearings, zone);
  switch (why) {
    case "nothing":
      return {
        key: "setting",
        problem: "there is neither a raise nor two bearings",
        remedy: "give setting, or drop and fixed",
      };
    case "no bearings":
      return {
        key: "drop",
        problem:
          "the shop file gives no bearings of this roll, so that the raise at the large edge cannot be worked out from them",
        remedy:
          "give bearings in the shop file, from each end of the roll face to its bearing, or setting, the raise at the large edge",
      };
    case "askew":
      return {
        key: "drop",
        problem: `the drop end at ${say.length(dropMm)} and the fixed end at ${say.length(fixedMm)} do not stand alike, and a pipe wants the roll square`,
        remedy: "set both bearings alike and roll the trial again, or give setting alone, the raise of both",
      };
    case "disagree":
      return {
        key: "setting",
        problem: `${say.length(settingMm)} is not what the two bearings come to (${sum})`,
        remedy: "leave out whichever was not read at the roll: setting, or drop and fixed",
      };
    case "no raise":
      return {
        key: "drop",
        problem: `the two bearings come to no raise at the large edge (${sum})`,
        remedy:
          "write the raises from each bearing's own 0, or what the scales show together with dropAt0 and fixedAt0",
      };
    case "swapped":
      return {
        key: "drop",
        problem: `the drop end at ${say.length(dropMm)} stands below the fixed end at ${say.length(fixedMm)}: the small edge lies towards the drop end in the first pass, and its end stands higher in the plan`,
        remedy:
          "look whether the two scales are exchanged; where it was really rolled so, take that blank out and give no trial of it",
      };
  }
}
