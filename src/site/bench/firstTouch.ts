/** A touch on a drawing, and where it was on the page. */
interface Touch {
  readonly isMouse: boolean;
  /** From the upper left corner of the page. [px] */
  readonly at: readonly [number, number];
}

/** The last touch on a drawing as it was published, which no live one has taken up yet. */
let waiting: Touch | undefined;

const isOn = (box: DOMRect, [x, y]: readonly [number, number]): boolean =>
  x >= box.left && x <= box.right && y >= box.top && y <= box.bottom;

/** The first touch of a drawing has the live ones load: it is remembered for the one that comes to stand there. */
export function rememberTouch(place: Element): void {
  place.addEventListener("click", (event) => {
    if (!(event instanceof MouseEvent && event.target instanceof Element)) return;
    if (event.target.closest(".look") || !event.target.closest("svg.sheet-drawing")) return;
    const isMouse = event instanceof PointerEvent && event.pointerType === "mouse";
    waiting = { isMouse, at: [event.pageX, event.pageY] };
  });
}

/** The touch that waits for a drawing which stands here now: its place in the window [px], once. */
export function takeTouch(drawing: Element): Touch | undefined {
  if (!waiting) return undefined;
  const { isMouse, at } = waiting;
  const here = [at[0] - scrollX, at[1] - scrollY] as const;
  if (!isOn(drawing.getBoundingClientRect(), here)) return undefined;
  waiting = undefined;
  return { isMouse, at: here };
}
