import type { FormingCase } from "./case.ts";
import { FIRST_PASS_SHARES, firstPass, shareOfClosure } from "./firstPass.ts";

/** A moment of rolling that has a setting of its own. */
export interface PassPoint {
  readonly id: "start" | "aim" | "end" | "finished";
  readonly label: string;
  /** Share of the turn that the blank sweeps; null where the skin is curved unevenly. */
  readonly closed: number | null;
  /** Share of the final bend. */
  readonly share: number;
}

const LABELS = {
  start: "first pass, start of the window",
  aim: "first pass, middle of the window",
  end: "first pass, end of the window",
  finished: "second pass, closed",
} as const;

/**
 * The moments that the plan gives settings for: both ends and the middle of the first pass's window, and the finished
 * bend. By closure for right cones and pipes, else by the share of the bend.
 *
 * @see derived here, from the window of the first pass
 */
export function passPoints({ cone }: FormingCase): PassPoint[] {
  const window = cone ? firstPass(cone.halfAngleRad) : FIRST_PASS_SHARES;
  const at = { start: window.from, aim: (window.from + window.to) / 2, end: window.to, finished: 1 };
  return (["start", "aim", "end", "finished"] as const).map((id) => ({
    id,
    label: LABELS[id],
    closed: cone ? at[id] : null,
    // The window never begins at the flat blank, so there is always a share.
    share: cone ? (shareOfClosure({ halfAngleRad: cone.halfAngleRad, closed: at[id] }) ?? 0) : at[id],
  }));
}
