import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { openReach } from "./openReach.ts";
import { NEAR_LIMIT } from "./judge.ts";
import { isPipe } from "./skin.ts";
import { leastRoom } from "./stopRoom.ts";

/** Where the stop for the small edge stands. [mm] */
export interface StopPlace {
  /** From the end of the roll face. */
  readonly mm: number;
  /** So much further in than the nearest that it reaches; the clear room grows by as much. */
  readonly furtherInMm: number;
}

/**
 * The stop stands as near to the end of the rolls as it reaches, or so much further in that the open piece has room before
 * the yoke, as far as the stop and the slant on the rolls allow. How far the piece reaches comes from a model, so room is
 * not enough till the limit of what is near is clear of it: reach / 0.8. Null for a pipe, which needs none.
 *
 * @see derived here
 */
export function stopPlace({
  item,
  roll,
}: {
  readonly item: FormingCase;
  readonly roll: PlateRoll | null;
}): StopPlace | null {
  if (isPipe(item)) return null;
  const [nearest, farthest] = roll?.coneAttachment?.range ?? [0, 0];
  const from = Math.max(0, nearest);
  const wantedMm = (openReach(item)?.pastMm ?? 0) / NEAR_LIMIT;
  const lacking = wantedMm - (leastRoom(roll)?.roomMm ?? Infinity);
  if (!roll || lacking <= 0) return { mm: from, furtherInMm: 0 };
  const most = Math.max(from, Math.min(farthest, roll.workingWidth - item.slantMm.longest));
  const at = Math.min(most, from + lacking);
  return { mm: at, furtherInMm: at - from };
}
