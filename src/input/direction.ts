import { readAngle } from "./angle.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";

/** Sides of a part in plan as one stands before it: front is towards you. [degrees counter-clockwise from the right] */
const SIDES: Readonly<Record<string, number>> = { right: 0, back: 90, left: 180, front: 270 };

/** Reads a direction in plan: right, back, left, front, or degrees. [degrees] */
export function readDirection(text: string): Reading<number> {
  const word = text.trim().toLowerCase();
  if (Object.hasOwn(SIDES, word)) return read(SIDES[word] ?? 0);
  const angle = readAngle(text);
  if (angle.kind === "read" || !/^[a-z\s-]*$/.test(word)) return angle;
  return unreadable(
    `${shown(text)} is not a direction`,
    "give degrees counter-clockwise from the right, as in 22.5, or one of right, back, left, front",
  );
}
