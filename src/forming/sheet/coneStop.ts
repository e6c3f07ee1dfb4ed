import { AT_LIMIT_REL } from "../../geometry/tolerance.ts";
import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { openReach, reachBeyondStopMm } from "../openReach.ts";
import { isPipe } from "../skin.ts";
import { stopPlace } from "../stopPlace.ts";
import { fixedEndRoomMm, isTurnedRound, leastRoom, type StopRoom } from "../stopRoom.ts";
import type { RollSheetAsked } from "./asked.ts";
import { flatFurther } from "./keptParallel.ts";
import { mm, type PlanStep, taped } from "./step.ts";

/** The least clear room where the stop is set, if the far side comes further past it than that while the piece is still open. */
function tightRoom(asked: RollSheetAsked): StopRoom | null {
  const least = leastRoom(asked.roll);
  const open = openReach(asked.item);
  if (!least || !open) return null;
  const roomMm = least.roomMm + (stopPlace(asked)?.furtherInMm ?? 0);
  return open.pastMm > roomMm * (1 + AT_LIMIT_REL) ? { ...least, roomMm } : null;
}

const YOKE = "The piece must not strike the yoke: watch the first turn by hand jog (short taps).";

function yoke(asked: RollSheetAsked): string {
  const open = openReach(asked.item);
  const tight = tightRoom(asked);
  if (!open || !tight) return YOKE;
  const where = tight.end === "fixed end" ? " at the fixed end" : "";
  return `${YOKE} While open it reaches further than there is room; the clear room${where} is ${asked.say.length(tight.roomMm)}: look first whether the yoke is as high as that far side (${asked.say.length(open.highMm)}). If it is, do not roll it so: make more pieces, or take the press brake.`;
}

/** What the second pass wants at the other end of the rolls; nothing where the job is not turned round. */
function otherEnd({ item, roll, say }: RollSheetAsked): string {
  if (!isTurnedRound(roll?.arrangement)) return "";
  const given = fixedEndRoomMm(roll);
  const room = given === undefined ? undefined : given + (stopPlace({ item, roll })?.furtherInMm ?? 0);
  return room === undefined
    ? " The second pass needs a stop at the other end of the rolls too: look before you begin. Where there is none, ask the machine's manual."
    : ` The second pass needs the stop at the fixed end of the rolls, where the clear room is ${say.length(room)}.`;
}

/** The stop that the small edge slides on, and what it has to leave clear; nothing for a pipe. */
export function coneStop(asked: RollSheetAsked): PlanStep | null {
  const { item, roll, say } = asked;
  if (isPipe(item)) return null;
  const reach = reachBeyondStopMm({
    diameterMm: item.rimsMm.small / Math.PI,
    leanRad: item.leanRad,
    pieces: item.pieces,
  });
  const open = openReach(asked.item);
  const place = stopPlace({ item, roll });
  const given = roll?.coneAttachment?.range ? (place?.mm ?? null) : null;
  const inMm = place?.furtherInMm ?? 0;
  const where =
    given === null
      ? "Set the stop for the small edge as close to the drop end as the closing of the yoke allows"
      : `Set the stop for the small edge ${say.tape(given)} from the drop end of the roll face: ${inMm > 0 ? `${say.length(inMm)} further in than its nearest place, for room while open` : "its nearest place"}`;
  const nearest = roll?.coneAttachment?.clearRoom;
  const clear = nearest === undefined ? undefined : nearest + inMm;
  const flat = flatFurther(asked, { openMm: Math.max(reach, open?.pastMm ?? 0), roomMm: clear });
  const room = clear === undefined ? "" : ` From stop to yoke there are ${say.length(clear)}.`;
  const other = otherEnd(asked);
  const derived = (label: string, value: number) => mm(label, value, DERIVED);
  return {
    id: "stop",
    phase: "set-up",
    title: "Set the cone stop",
    text: `${where}. Grease it. The far side of the small end reaches ${say.length(reach)} past it when closed.${open ? ` While open, ${isTurnedRound(roll?.arrangement) ? "at the first trial" : `bent about ${say.percent(open.closed)} of the way round`}, it reaches ${say.length(open.pastMm)} past it (${say.length(open.highMm)} above ${isTurnedRound(roll?.arrangement) ? "the pinch" : "the plate between the rolls"}).` : ""}${flat.text}${room}${other}`,
    figures: [
      ...(given === null ? [] : [taped("stop from the drop end of the roll face", given, DERIVED)]),
      derived("reach past the stop when closed", reach),
      ...(open
        ? [
            derived("reach past the stop while open", open.pastMm),
            derived("height of that place over the pinch", open.highMm),
          ]
        : []),
      ...flat.figures,
    ],
    cautions: [yoke(asked)],
    toNote: [{ label: "stop from drop end", unit: "mm", ...(given === null ? {} : { planned: given }) }],
    basis: COMMON_PRACTICE,
  };
}
