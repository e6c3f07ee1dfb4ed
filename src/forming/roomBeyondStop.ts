import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, NEAR_LIMIT, state } from "./judge.ts";
import { openReach, reachBeyondStopMm } from "./openReach.ts";
import { stopPlace } from "./stopPlace.ts";
import { fixedEndRoomMm, leastRoom } from "./stopRoom.ts";

/**
 * Is there room beyond the stop, or does the piece strike the yoke? What is asked is the reach while the piece is most
 * open, for that is the farthest; if only that is more than there is, the height of the yoke decides. A point reaches
 * nowhere, a pipe has no stop. For the second pass the stop stands at the fixed end: where the room there is given, the
 * piece has to go into the lesser of both, as open as for the first pass, for it may be turned round before it is closed
 * further. The stop is set further in where that makes room. The reach comes from a model, so near the limit it goes with
 * care. [mm]
 */
export function roomBeyondStop({ item, roll, say }: RollAsked): Check | null {
  const open = openReach(item);
  if (!open || roll.coneAttachment?.fitted === false) return null;
  const closedMm = reachBeyondStopMm({
    diameterMm: item.rimsMm.small / Math.PI,
    leanRad: item.leanRad,
    pieces: item.pieces,
  });
  const words = {
    id: "room-beyond-stop",
    title: "Room beyond the stop",
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: `reach at the first trial ≤ clear room between stop and yoke${fixedEndRoomMm(roll) === undefined ? "" : " at both ends"}; closed it is small end diameter × sin(lean)`,
  };
  const reaches = `Open at the first trial (${say.percent(open.closed)} closed) the far side of the small end reaches ${say.length(open.pastMm)} past the stop, ${say.length(open.highMm)} over the pinch; closed, ${say.length(closedMm)}`;
  const drop = roll.coneAttachment?.clearRoom;
  const fixed = fixedEndRoomMm(roll);
  const least = leastRoom(roll);
  // Room at the fixed end alone refuses what strikes there; that it is enough says nothing of the drop end.
  if (!least || (drop === undefined && open.pastMm <= least.roomMm * (1 + AT_LIMIT_REL)))
    return state({
      ...words,
      value: open.pastMm,
      verdict: "caution",
      advice: `${reaches}: measure from the stop to the yoke${fixed === undefined ? "" : " at the drop end"}, which it must not strike.`,
    });
  const inMm = stopPlace({ item, roll })?.furtherInMm ?? 0;
  const limit = least.roomMm + inMm;
  const where = least.end === "fixed end" ? " at the fixed end" : "";
  const rooms = [
    ...(drop === undefined ? [] : [say.length(drop + inMm)]),
    ...(fixed === undefined ? [] : [`at the fixed end ${say.length(fixed + inMm)}`]),
  ].join(", ");
  const set =
    inMm > 0 ? ` with the stop set ${say.length(inMm)} further in than the nearest that it reaches` : "";
  // Further in is said only where nothing tells how far the stop goes.
  const ways = `${roll.coneAttachment?.range ? "" : "set the stop further in, "}make more pieces, or use the press brake`;
  return judge({
    ...words,
    value: open.pastMm,
    limit,
    beyond: closedMm > limit ? "fail" : "caution",
    nearShare: NEAR_LIMIT,
    advice: (verdict) => {
      if (verdict === "pass") return `${reaches}; there is room for ${rooms}${set}.`;
      if (open.pastMm <= limit * (1 + AT_LIMIT_REL))
        return `${reaches}; there is room for ${rooms}${set}, but only ${say.percent(Math.max(0, 1 - open.pastMm / limit))} of it stays free, and the reach is a model's: watch the first turn by hand jog (short taps).`;
      return verdict === "fail"
        ? `${reaches}, and it strikes the yoke${where} after ${say.length(limit)}${set}: ${ways}.`
        : `${reaches}; the yoke stands ${rooms} past it${set}: look whether it is that high before the plate goes in, and if so ${ways}.`;
    },
  });
}
