import type { D3ZoomEvent, ZoomBehavior } from "d3";

/** How much nearer at most. */
const NEAREST = 16;
const STEP = 1.6;

interface Moves {
  readonly by: (k: number) => void;
  readonly whole: () => void;
  readonly move: (across: number, up: number) => void;
  readonly again: () => void;
}

/** Said once on a page, to whoever turns a wheel over a drawing and expects it to come nearer. */
let isWheelTold = false;
/** How long that is read. [ms] */
const READ_MS = 6000;

/** Which part of a sheet is looked at; the library that follows the fingers comes when a drawing is first touched. */
export class Zoom {
  near = $state(1);
  /** Is it to be said now that the wheel wants a key? */
  isTelling = $state(false);
  private left = $state(0);
  private top = $state(0);
  private readonly size: () => { readonly widthMm: number; readonly heightMm: number };
  private place: HTMLElement | undefined;
  private behaviour: Promise<Moves> | undefined;

  constructor(size: () => { readonly widthMm: number; readonly heightMm: number }) {
    this.size = size;
  }

  get view(): { readonly box: string; readonly near: number } | undefined {
    if (this.near === 1) return undefined;
    const { widthMm, heightMm } = this.size();
    const [wide, high] = [widthMm / this.near, heightMm / this.near];
    // The sheet may have become smaller since.
    const [left, top] = [Math.min(this.left, widthMm - wide), Math.min(this.top, heightMm - high)];
    return {
      box: `${left} ${top} ${wide} ${high}`,
      near: this.near,
    };
  }

  readonly watch = (place: HTMLElement): (() => void) => {
    this.place = place;
    const wake = () => void this.wake();
    const events = ["pointerenter", "pointerdown", "focusin"] as const;
    for (const event of events) place.addEventListener(event, wake, { once: true });
    place.addEventListener("wheel", this.tell, { passive: true });
    // Another width of the same part of the sheet: a telephone that is turned.
    const widths = new ResizeObserver(() => void this.behaviour?.then(({ again }) => again()));
    widths.observe(place);
    return () => {
      widths.disconnect();
      for (const event of events) place.removeEventListener(event, wake);
      place.removeEventListener("wheel", this.tell);
      this.place = undefined;
      this.behaviour = undefined;
    };
  };

  nearer = () => void this.wake()?.then(({ by }) => by(STEP));
  farther = () => void this.wake()?.then(({ by }) => by(1 / STEP));
  whole = () => void this.wake()?.then(({ whole }) => whole());
  /** What is looked at moves by a share of its width, for those who have no pointer. */
  move = (across: number, up: number) => void this.wake()?.then(({ move }) => move(across, up));

  private readonly tell = (event: WheelEvent): void => {
    const isMeant = event.ctrlKey || event.metaKey;
    if (isMeant) this.isTelling = false;
    if (isMeant || isWheelTold) return;
    isWheelTold = true;
    this.isTelling = true;
    setTimeout(() => (this.isTelling = false), READ_MS);
  };

  private wake() {
    const { place } = this;
    if (!place) return undefined;
    this.behaviour ??= import("./d3Zoom.ts").then(({ select, zoom, zoomIdentity }) => {
      const behaviour: ZoomBehavior<HTMLElement, unknown> = zoom<HTMLElement, unknown>()
        .scaleExtent([1, NEAREST])
        .extent(() => [
          [0, 0],
          [place.clientWidth, place.clientHeight],
        ])
        .translateExtent([
          [0, 0],
          [place.clientWidth, place.clientHeight],
        ])
        // The page scrolls under one finger and the plain wheel; two fingers or ctrl and wheel are meant for the drawing.
        .filter((event: Event) => {
          if (event instanceof WheelEvent) return event.ctrlKey || event.metaKey;
          if ("touches" in event) return (event.touches as TouchList).length > 1 || this.near > 1;
          return this.near > 1 && (event as MouseEvent).button === 0;
        })
        .on("zoom", ({ transform }: D3ZoomEvent<HTMLElement, unknown>) => {
          const perPixel = this.size().widthMm / place.clientWidth;
          this.near = transform.k;
          this.left = (-transform.x / transform.k) * perPixel;
          this.top = (-transform.y / transform.k) * perPixel;
        });
      const on = select(place);
      on.call(behaviour);
      on.on("dblclick.zoom", null);
      return {
        by: (k: number) => behaviour.scaleBy(on, k),
        whole: () => behaviour.transform(on, zoomIdentity),
        move: (across: number, up: number) =>
          behaviour.translateBy(
            on,
            (-across * place.clientWidth) / this.near,
            (up * place.clientWidth) / this.near,
          ),
        again: () => {
          const pixels = (this.near * place.clientWidth) / this.size().widthMm;
          const [x, y] = [-this.left * pixels, -this.top * pixels];
          behaviour.transform(on, zoomIdentity.translate(x, y).scale(this.near));
        },
      };
    });
    return this.behaviour;
  }
}
