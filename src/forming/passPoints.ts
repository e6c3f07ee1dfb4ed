import type { FormingCase } from "./case.ts";
import { closureOfShare, firstPass, shareOfClosure } from "./firstPass.ts";
import { meanHalfAngleRad } from "./skin.ts";
import { zonesOf } from "./zones.ts";

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
/** Rolled in zones a little less: each zone takes some of its neighbours' setting, and has a cap of its own. Derived here. [-] */
const ZONE_TRIAL_SHARE = 0.8;

/** Which of the two, by how many zones the skin is rolled in. [-] */
export const trialShare = (zones: number): number => (zones > 1 ? ZONE_TRIAL_SHARE : TRIAL_SHARE);

const LABELS = {
  trial: "first pass, first trial",
  start: "first pass, start of the window",
  aim: "first pass, middle of the window",
  end: "first pass, end of the window",
  finished: "second pass, closed",
} as const;

/**
 * The moments that the plan gives settings for: a first trial from below, both ends and the middle of the first pass's
 * window, and the finished bend. By closure for right cones and pipes, else by the bend of such a cone of the same rims and slant.
 *
 * @see derived here, from the window of the first pass
 */
export function passPoints(item: FormingCase): PassPoint[] {
  const halfAngleRad = meanHalfAngleRad(item);
  const window = firstPass(halfAngleRad);
  // The window never begins at the flat blank, so a closure in it always has a share.
  const shareOf = (closed: number) => shareOfClosure({ halfAngleRad, closed }) ?? 0;
  const point = (id: PassPoint["id"], share: number, closed: number): PassPoint => ({
    id,
    label: LABELS[id],
    closed: item.cone ? closed : null,
    share,
  });
  const at = (id: PassPoint["id"], closed: number) => point(id, shareOf(closed), closed);
  const trial = trialShare(zonesOf(item).length) * shareOf(window.from);
  return [
    point("trial", trial, closureOfShare({ halfAngleRad, share: trial })),
    at("start", window.from),
    at("aim", (window.from + window.to) / 2),
    at("end", window.to),
    at("finished", 1),
  ];
}
