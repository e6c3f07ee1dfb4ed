import type { Drawing } from "../../../drawing/model.ts";
import type * as Snap from "../../../drawing/snap.ts";
import { distance2, type Vec2 } from "../../../geometry/vector.ts";

/** A tape held to two points of a drawing, by touch or by keys; what it can be held to is found out when it is first taken. */
export class Tape {
  out = $state(false);
  /** None, one or both of its ends. [mm] */
  ends: readonly Vec2[] = $state.raw([]);
  /** Was the last touch too far from every point? */
  missed = $state(false);
  /** Where the keys stand. [mm] */
  cursor: Vec2 | undefined = $state.raw(undefined);
  private readonly drawing: () => Drawing;
  private snap: typeof Snap | undefined = $state.raw(undefined);
  private readonly points = $derived.by(() => this.snap?.snapPoints(this.drawing()));

  constructor(drawing: () => Drawing) {
    this.drawing = drawing;
  }

  /** Between its ends, straight and by the directions of the sheet. [mm] */
  get read(): { readonly apart: number; readonly across: number; readonly up: number } | undefined {
    const [p, q] = this.ends;
    if (!p || !q) return undefined;
    return { apart: distance2(p, q), across: Math.abs(q[0] - p[0]), up: q[1] - p[1] };
  }

  readonly clear = (): void => {
    this.ends = [];
    this.cursor = undefined;
    this.missed = false;
  };
  /** It is out at once: what is touched before its points are known waits for them. */
  readonly toggle = (): Promise<void> => {
    this.out = !this.out;
    this.clear();
    return this.known();
  };
  private async known(): Promise<void> {
    this.snap ??= await import("../../../drawing/snap.ts");
  }
  move(way: Vec2): void {
    if (this.snap && this.points) this.cursor = this.snap.nextPoint(this.points, this.cursor, way);
    else void this.known().then(() => this.move(way));
  }
  /** Hold an end to where the keys stand. */
  take(): void {
    if (this.cursor) this.hold(this.cursor);
  }
  /** Hold an end to the point that was touched. */
  touch(at: Vec2, reach: number): void {
    if (!this.snap || !this.points) {
      void this.known().then(() => this.touch(at, reach));
      return;
    }
    const found = this.snap.snapped(this.points, at, reach);
    if (found) this.hold(found);
    else this.missed = true;
  }
  private hold(point: Vec2): void {
    this.ends = this.ends.length === 1 ? [...this.ends, point] : [point];
    this.cursor = point;
    this.missed = false;
  }
}
