import type { PlateRoll } from "./machine.ts";

/** Clear room beyond the stop, at one end of the rolls. [mm] */
export interface StopRoom {
  readonly end: "drop end" | "fixed end";
  readonly roomMm: number;
}

/** Is the job turned round, and the stop moved to the fixed end, for a second pass? Where nobody knows, it is planned so. */
export const isTurnedRound = (arrangement: PlateRoll["arrangement"]): boolean =>
  arrangement === undefined || arrangement === "initial-pinch";

/** Clear room at the fixed end; undefined where nobody has given it, and where no stop is wanted there. [mm] */
export const fixedEndRoomMm = (roll: PlateRoll | null): number | undefined =>
  isTurnedRound(roll?.arrangement) ? roll?.coneAttachment?.clearRoomFixedEnd : undefined;

/** The least of what is given, which the reach has to go into at whichever end; the drop end's where both are alike. */
export function leastRoom(roll: PlateRoll | null): StopRoom | null {
  const drop = roll?.coneAttachment?.clearRoom;
  const fixed = fixedEndRoomMm(roll);
  if (fixed !== undefined && (drop === undefined || fixed < drop)) return { end: "fixed end", roomMm: fixed };
  return drop === undefined ? null : { end: "drop end", roomMm: drop };
}
