import type { Report } from "../../report/report.ts";
import { degrees, numbersIn, thickness } from "./numbers.ts";

/** A name, its value, and what stands beside it in lighter ink. */
export interface Fact {
  readonly name: string;
  readonly value: string;
  readonly beside?: string | undefined;
}

/** The part as its file gives it, in the file's own units. */
export function sizeFacts({ part, shape, cone }: Report): Fact[] {
  const say = numbersIn(part.units);
  const round = (end: { diameter: number; measured?: string | undefined }): Pick<Fact, "value" | "beside"> =>
    end.diameter === 0
      ? { value: "to a point" }
      : { value: `Ø${say.length(end.diameter)}`, beside: end.measured };
  const offset = (to: readonly [number, number] | undefined): Fact => ({
    name: "Offset",
    value:
      to && (to[0] !== 0 || to[1] !== 0) ? `${say.length(to[0])} right, ${say.length(to[1])} away` : "none",
  });

  const ends: Fact[] =
    part.shape === "square-to-round"
      ? [
          {
            name: "Rectangular end",
            value: `${say.bare(part.rectangularEnd.length)} × ${say.bare(part.rectangularEnd.width)} ${say.unit}`,
            beside: part.rectangularEnd.measured,
          },
          { name: "Round end", ...round(part.roundEnd) },
          offset(part.roundEnd.offset),
        ]
      : [
          { name: "Large end", ...round(part.largeEnd) },
          { name: "Small end", ...round(part.smallEnd) },
          ...(part.shape === "eccentric-cone" ? [offset(part.smallEnd.offset)] : []),
        ];
  const heights: Fact[] = [
    { name: "Height", value: say.length(shape.heightMm), beside: "between the end planes" },
  ];
  if (cone) {
    heights.push({ name: "Slant height", value: say.length(cone.slantMm), beside: "middle of the wall" });
    heights.push({ name: "Half angle", value: degrees(cone.halfAngleDeg) });
  }
  return [
    ...ends,
    ...heights,
    { name: "Thickness", ...thickness(part.thickness, part.units) },
    { name: "Area of the skin", value: say.area(shape.areaMm2) },
    { name: "Contents", value: say.volume(shape.contentsMm3), beside: "inside, filled level" },
  ];
}
