import type { Moves } from "./d3Zoom.ts";

const STEP = 1.6;

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
    this.behaviour ??= import("./d3Zoom.ts").then(({ moves }) =>
      moves(place, {
        near: () => this.near,
        perPixel: () => this.size().widthMm / place.clientWidth,
        corner: () => [this.left, this.top],
        show: (near, left, top) => {
          this.near = near;
          this.left = left;
          this.top = top;
        },
      }),
    );
    return this.behaviour;
  }
}
