import { TURN } from "../geometry/angle.ts";
import { NO_LENGTH_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Shape } from "./model.ts";

/** The strokes every output understands. True millimetres, y up; angles counter-clockwise. [mm, rad] */
export interface Pen {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  /** A whole turn is a full circle; `to` less than `from` runs clockwise. The pen stands at the arc's start. */
  arc(cx: number, cy: number, radius: number, from: number, to: number): void;
  closePath(): void;
}

/** Draw one shape with any pen. */
export function trace(shape: Shape, pen: Pen): void {
  switch (shape.type) {
    case "path": {
      for (const [i, [x, y]] of shape.points.entries()) {
        if (i === 0) pen.moveTo(x, y);
        else pen.lineTo(x, y);
      }
      if (shape.closed) pen.closePath();
      return;
    }
    case "arc": {
      const [x, y] = arcPoint(shape, shape.fromRad);
      pen.moveTo(x, y);
      pen.arc(shape.centre[0], shape.centre[1], shape.radius, shape.fromRad, shape.toRad);
      if (Math.abs(shape.toRad - shape.fromRad) >= TURN - NO_LENGTH_MM) pen.closePath();
      return;
    }
    default:
      shape satisfies never;
  }
}

/** The point of an arc's circle in a direction. [mm] */
export function arcPoint(arc: { centre: Vec2; radius: number }, angleRad: number): Vec2 {
  return [arc.centre[0] + arc.radius * Math.cos(angleRad), arc.centre[1] + arc.radius * Math.sin(angleRad)];
}
