import type { Ends } from "./seam.ts";
import type { Station } from "./station.ts";
import { SAME_ANGLE } from "./tolerance.ts";
import { add2, sub2, unit2, type Vec2 } from "./vector.ts";

export interface Placing {
  readonly net: Ends;
  readonly cut: Ends;
}

/** Direction of the element in the middle of the blank, on the sheet; at a flat between its two borders. */
function middleDirection(stations: readonly Station[], net: Ends, middle: number): Vec2 {
  let sum: Vec2 = [0, 0];
  net.a.forEach((foot, i) => {
    const station = stations[i];
    if (station && Math.abs(station.theta - middle) <= SAME_ANGLE)
      sum = add2(sum, unit2(sub2(net.b[i] as Vec2, foot)));
  });
  return unit2(sum);
}

/**
 * Turns a pattern so that the element in its middle stands upright, mirrors it where it is wanted outside face up,
 * and moves it so that the blank as cut touches both axes.
 */
export function onSheet(laid: {
  readonly stations: readonly Station[];
  readonly net: Ends;
  readonly cut: Ends;
  readonly middle: number;
  readonly mirror: boolean;
}): Placing {
  const { net, cut, mirror } = laid;
  const [x, y] = middleDirection(laid.stations, net, laid.middle);
  const hand = mirror ? -1 : 1;
  const turnedX = (p: Vec2): number => hand * (p[0] * y - p[1] * x);
  const turnedY = (p: Vec2): number => p[0] * x + p[1] * y;
  let left = Infinity;
  let low = Infinity;
  for (const path of [cut.a, cut.b])
    for (const p of path) {
      left = Math.min(left, turnedX(p));
      low = Math.min(low, turnedY(p));
    }
  const placed = (path: readonly Vec2[]): Vec2[] => path.map((p) => [turnedX(p) - left, turnedY(p) - low]);
  return { net: { a: placed(net.a), b: placed(net.b) }, cut: { a: placed(cut.a), b: placed(cut.b) } };
}
