import { plain } from "../../../drawing/format.ts";
import type { FormingCase } from "../../../forming/case.ts";
import type { PlateRoll } from "../../../forming/machine.ts";
import { openReach, reachBeyondStopMm } from "../../../forming/openReach.ts";
import { passPoints } from "../../../forming/passPoints.ts";
import { meanHalfAngleRad } from "../../../forming/skin.ts";
import { stopPlace } from "../../../forming/stopPlace.ts";
import { leastRoom } from "../../../forming/stopRoom.ts";
import { degrees } from "../../../geometry/angle.ts";
import { closely } from "../girth.ts";
import type { Numbers } from "../numbers.ts";
import type { Sums } from "./checks.ts";

/** A share of the turn that diameters, angles and leans are divided by. */
const SHARE_PLACES = 5;
const angle = (rad: number): string => `${plain(degrees(rad), 3)}°`;

const HOW =
  " Reach: half the small end’s diameter × (1 − cos of the turn that a piece sweeps, at most 180°) × sin of the lean. While the piece is still open the same skin is a wider cone that leans more: diameter / closed, sin of the lean / closed, turn × closed. The clear room is that of the shop file.";

/** How far the far side of the small end comes past the stop, from the drawing’s own diameter and lean on: open, and closed. */
export function reachSums(item: FormingCase, roll: PlateRoll | undefined, say: Numbers): Sums {
  const open = openReach(item);
  const trial = passPoints(item).find(({ id }) => id === "trial");
  if (!open || !trial) return {};
  const { acrossMm, sweepRad, leanRad, leanSine } = open.from;
  const length = (mm: number) => `${closely(say, mm)}\u00a0${say.unit}`;
  const [small, lean] = [item.rimsMm.small / Math.PI, angle(item.leanRad)];
  const closed = plain(open.closed, SHARE_PLACES);
  // The model's own half angle: that of a cone, else the lean of the steepest side.
  const half = angle(trial.closed === null ? item.leanRad : meanHalfAngleRad(item));
  const turn = (share: string): string => (item.pieces === 1 ? share : `${share} / ${item.pieces}`);
  const swept = Math.min(180, 360 / item.pieces);
  const shutMm = reachBeyondStopMm({ diameterMm: small, leanRad: item.leanRad, pieces: item.pieces });
  const least = roll && leastRoom(roll);
  const inMm = roll ? (stopPlace({ item, roll })?.furtherInMm ?? 0) : 0;
  return {
    asked: `${closely(say, acrossMm)} / 2 × (1 − cos(${angle(sweepRad)})) × sin(${angle(leanRad)})`,
    allowed: least && inMm > 0 ? `${closely(say, least.roomMm)} + ${closely(say, inMm)}` : undefined,
    how: HOW,
    more: [
      ...(roll?.coneAttachment?.range
        ? [
            `Stop, from the drop end: ${closely(say, Math.max(0, roll.coneAttachment.range[0]))} + ${closely(say, inMm)} = ${length(stopPlace({ item, roll })?.mm ?? 0)}, its nearest and how much further in it is set`,
          ]
        : []),
      `Closed at the first trial, a share of the turn: √(sin(${half})² + (${plain(trial.share, SHARE_PLACES)} × cos(${half}))²) = ${closed}, the factor being the first trial’s share of the final bend`,
      `Small end while open: ${closely(say, small)} / ${closed} = ${length(acrossMm)}`,
      `Turn while open: ${sweepRad === Math.PI ? "half a turn or more counts as 180°" : `${turn(`360° × ${closed}`)} = ${angle(sweepRad)}`}`,
      `Lean while open: sin(${lean}) / ${closed} = ${plain(leanSine, SHARE_PLACES)}, the sine of ${angle(leanRad)}`,
      `Over the pinch while open: ${closely(say, open.pastMm)} / tan(${angle(leanRad)}) = ${length(open.highMm)}`,
      `Closed: ${closely(say, small)} / 2 × (1 − cos(${swept}°)) × sin(${lean}) = ${length(shutMm)}`,
    ],
  };
}
