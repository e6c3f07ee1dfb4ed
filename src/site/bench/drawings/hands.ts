import type { Drawing } from "../../../drawing/model.ts";
import { picked, stepped } from "../../../drawing/pick.ts";
import type { Vec2 } from "../../../geometry/vector.ts";
import { chosen } from "./chosen.svelte.ts";
import type { Tape } from "./tape.svelte.ts";
import type { Zoom } from "./zoom.svelte.ts";

/** A drawing that somebody has a hand or the keys at. */
interface InHand {
  readonly drawing: Drawing;
  readonly tape: Tape;
  readonly zoom: Zoom;
}

/** How near a touch must come, for a gloved finger and for a mouse. [px] */
const REACH = { touch: 26, mouse: 12 };
/** By so much of its width the drawing moves at a key. [-] */
const SHIFT = 0.25;
const WAYS: Readonly<Record<string, Vec2>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** A touch holds the tape, or chooses a line. @param touch its place, and what a pixel is there [mm] */
export function touched(
  { drawing, tape, zoom }: InHand,
  { at, mm, isMouse }: { readonly at: Vec2; readonly mm: number; readonly isMouse: boolean },
): void {
  if (tape.out) {
    tape.touch(at, REACH.touch * mm);
    return;
  }
  const reach = (isMouse ? REACH.mouse : REACH.touch) * mm;
  const found = picked(drawing, { at, reach, near: zoom.near }, chosen.element);
  if (found !== undefined) chosen.element = found ?? undefined;
}

/** Keys do on the drawing what fingers do. */
export function pressed({ drawing, tape, zoom }: InHand, key: string, shift: boolean): void {
  const way = WAYS[key];
  if (key === "Escape") {
    // One step back at a time: what was read, the tape, the line.
    if (tape.ends.length > 0 || tape.cursor) tape.clear();
    else if (tape.out) void tape.toggle();
    else chosen.element = undefined;
  } else if (way && shift) zoom.move(SHIFT * way[0], SHIFT * way[1]);
  else if (key === "+" || key === "=") zoom.nearer();
  else if (key === "-") zoom.farther();
  else if (key === "0") zoom.whole();
  else if (way && tape.out) tape.move(way);
  else if (key === "Enter" && tape.out) tape.take();
  else if (way) chosen.element = stepped(drawing, chosen.element, way[0] - way[1] > 0 ? 1 : -1);
}
