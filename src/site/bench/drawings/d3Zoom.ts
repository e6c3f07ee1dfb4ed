import { type D3ZoomEvent, select, zoom, type ZoomBehavior, zoomIdentity } from "d3";
import type { Vec2 } from "../../../geometry/vector.ts";

/** How much nearer at most. */
const NEAREST = 16;

/** One notch of a wheel comes nearer by the root of two; two fingers on a pad send many small turns, and each counts in full. */
const MOST_A_TURN = 0.5;
/** How much a turn of the wheel does in pixels, lines or pages, with the key held; in doublings. */
const PER_TURN: Readonly<Record<number, number>> = { 0: 0.02, 1: 0.5, 2: 10 };

/** By how many doublings a turn of the wheel looks nearer. */
export const wheelSteps = ({ deltaY, deltaMode }: Pick<WheelEvent, "deltaY" | "deltaMode">): number =>
  Math.max(-MOST_A_TURN, Math.min(MOST_A_TURN, -deltaY * (PER_TURN[deltaMode] ?? 0)));

/** What can be done to a drawing that is looked at nearer. */
export interface Moves {
  readonly by: (k: number) => void;
  readonly whole: () => void;
  readonly move: (across: number, up: number) => void;
  readonly again: () => void;
}

/** Which part of a sheet is looked at: read anew at every step, because the sheet may have become another. */
interface Seen {
  readonly near: () => number;
  /** Of the whole sheet. [mm] */
  readonly perPixel: () => number;
  /** Left and top. [mm] */
  readonly corner: () => Vec2;
  readonly show: (near: number, left: number, top: number) => void;
}

/** Has a drawing follow fingers, the wheel and the buttons beside it. */
export function moves(place: HTMLElement, seen: Seen): Moves {
  const whole = (): [Vec2, Vec2] => [
    [0, 0],
    [place.clientWidth, place.clientHeight],
  ];
  const behaviour: ZoomBehavior<HTMLElement, unknown> = zoom<HTMLElement, unknown>()
    .scaleExtent([1, NEAREST])
    .extent(whole as () => [[number, number], [number, number]])
    .translateExtent(whole() as [[number, number], [number, number]])
    // The page scrolls under one finger and the plain wheel; two fingers or ctrl and wheel are meant for the drawing.
    .filter((event: Event) => {
      if (event instanceof WheelEvent) return event.ctrlKey || event.metaKey;
      if ("touches" in event) return (event.touches as TouchList).length > 1 || seen.near() > 1;
      return seen.near() > 1 && (event as MouseEvent).button === 0;
    })
    .wheelDelta(wheelSteps)
    .on("zoom", ({ transform: { k, x, y } }: D3ZoomEvent<HTMLElement, unknown>) => {
      const perPixel = seen.perPixel();
      seen.show(k, (-x / k) * perPixel, (-y / k) * perPixel);
    });
  const on = select(place);
  on.call(behaviour);
  on.on("dblclick.zoom", null);
  return {
    by: (k) => behaviour.scaleBy(on, k),
    whole: () => behaviour.transform(on, zoomIdentity),
    move: (across, up) =>
      behaviour.translateBy(
        on,
        (-across * place.clientWidth) / seen.near(),
        (up * place.clientWidth) / seen.near(),
      ),
    again: () => {
      const near = seen.near();
      const pixels = near / seen.perPixel();
      const [left, top] = seen.corner();
      behaviour.transform(on, zoomIdentity.translate(-left * pixels, -top * pixels).scale(near));
    },
  };
}
