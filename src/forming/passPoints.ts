import type { FormingCase } from "./case.ts";
import { closureOfShare, FIRST_PASS_SHARES, firstPass, shareOfClosure } from "./firstPass.ts";

/** A moment of rolling that has a setting of its own. */
export interface PassPoint {
  readonly id: "trial" | "start" | "aim" | "end" | "finished";
  readonly label: string;
  /** Share of the turn that the blank sweeps; null where the skin is curved unevenly. */
  readonly closed: number | null;
  /** Share of the final bend. */
  readonly share: number;
}

/** The first trial aims at this share of the bend that the window begins with: a lively machine must not pass the cap on it. [-] */
const TRIAL_SHARE = 0.85;

const LABELS = {
  trial: "first pass, first trial",
  start: "first pass, start of the window",
  aim: "first pass, middle of the window",
  end: "first pass, end of the window",
  finished: "second pass, closed",
} as const;

/**
 * The moments that the plan gives settings for: a first trial from below, both ends and the middle of the first pass's
 * window, and the finished bend. By closure for right cones and pipes, else by the share of the bend.
 *
 * @see derived here, from the window of the first pass
 */
export function passPoints({ cone }: FormingCase): PassPoint[] {
  const window = cone ? firstPass(cone.halfAngleRad) : FIRST_PASS_SHARES;
  // The window never begins at the flat blank, so a closure in it always has a share.
  const shareOf = (at: number) =>
    cone ? (shareOfClosure({ halfAngleRad: cone.halfAngleRad, closed: at }) ?? 0) : at;
  const point = (id: PassPoint["id"], share: number, closed: number): PassPoint => ({
    id,
    label: LABELS[id],
    closed: cone ? closed : null,
    share,
  });
  const at = (id: PassPoint["id"], closed: number) => point(id, shareOf(closed), closed);
  const trial = TRIAL_SHARE * shareOf(window.from);
  const halfAngleRad = cone?.halfAngleRad ?? 0;
  return [
    point("trial", trial, closureOfShare({ halfAngleRad, share: trial })),
    at("start", window.from),
    at("aim", (window.from + window.to) / 2),
    at("end", window.to),
    at("finished", 1),
  ];
}
