import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { openReach } from "./openReach.ts";
import { isPipe } from "./skin.ts";
import { leastRoom } from "./stopRoom.ts";

/** Where the stop for the small edge stands. [mm] */
export interface StopPlace {
  /** From the end of the roll face. */
  readonly mm: number;
  /** So much further in than the nearest that it reaches; the clear room grows by as much. */
  readonly furtherInMm: number;
}

/** Places that are found on a tape: whole centimetres, or half inches. [mm] */
const STEP = { mm: 10, in: 12.7 } as const;

/**
 * The stop stands as near to the end of the rolls as it reaches, or so much further in that the open piece has room before
 * the yoke, as far as the stop and the slant on the rolls allow. Null for a pipe, which needs none.
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
  const lacking = (openReach(item)?.pastMm ?? 0) - (leastRoom(roll)?.roomMm ?? Infinity);
  if (!roll || lacking <= 0) return { mm: from, furtherInMm: 0 };
  const step = STEP[item.units ?? "mm"];
  const most = Math.max(from, Math.min(farthest, roll.workingWidth - item.slantMm.longest));
  const at = Math.min(most, from + step * Math.ceil(lacking / step));
  return { mm: at, furtherInMm: at - from };
}
