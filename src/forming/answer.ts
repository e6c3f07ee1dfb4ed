import type { Check, Verdict } from "./check.ts";
import type { Evenness } from "./evenness.ts";
import type { Inspection } from "./inspection.ts";
import type { FormingPlan } from "./plan.ts";
import type { SpringbackAnswer } from "./springbackAnswer.ts";

/**
 * One end of the closure table. Radii of the middle surface, and what a template or tape touches inside (0 where the
 * wall leaves no inside). Gaps run straight from seam edge to seam edge of one blank.
 */
export interface ClosureEnd {
  readonly levelRadiusMm: number;
  readonly squareRadiusMm: number;
  readonly gapMm: number;
  readonly insideLevelRadiusMm: number;
  readonly insideSquareRadiusMm: number;
  readonly insideGapMm: number;
}

export interface ClosureRow {
  /** Share of the full turn that the blank sweeps about the axis. */
  readonly closed: number;
  /** Why this row is there: "start of the window", "end of the window", "cap of the first pass", … or null. */
  readonly mark: string | null;
  /** Share of the final bend; null where the flat blank is already this far closed. */
  readonly share: number | null;
  /** Left straight at one seam edge, which widens the gaps. [mm] */
  readonly leadMm: number;
  readonly large: ClosureEnd | null;
  /** Null at a point too. */
  readonly small: ClosureEnd | null;
}

/** One machine's answers. */
export interface MachineAnswer {
  readonly machine: string;
  readonly kind: "plate roll" | "press brake";
  /** The part on this machine: the worst of its checks and of those of the part itself. */
  readonly verdict: Verdict;
  /** What the machine is asked. */
  readonly checks: readonly Check[];
}

export interface Forming {
  /** How it will be made: on the best machine that takes it, or the shape's usual way where no shop is given. */
  readonly route: "roll" | "brake";
  /** The machine of that route, or null where no shop is given or none takes it. */
  readonly machine: string | null;
  /** The worst of `checks`; where no shop was given that is of the part alone. */
  readonly verdict: Verdict;
  /** The checks that need no machine, then those of the chosen machine (of the nearest miss where none takes it). */
  readonly checks: readonly Check[];
  readonly machines: readonly MachineAnswer[];
  /** Right cones; last row closed = 1. */
  readonly closure: readonly ClosureRow[];
  /** What springback asks of it; null where the skin is folded, not bent round. */
  readonly springback: SpringbackAnswer | null;
  /** How each machine that takes it makes it; without a shop one plan for the usual way. */
  readonly plans: readonly FormingPlan[];
  /** Skins that are curved unevenly: how much, and what to do about it; else null. */
  readonly evenness: Evenness | null;
  /** The inspection sheet of the finished part; null where that is not known. */
  readonly inspection: Inspection | null;
}
