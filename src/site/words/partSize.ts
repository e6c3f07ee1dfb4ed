import type { Report } from "../../report/report.ts";
import { degrees, numbersIn, thickness, type Numbers } from "./numbers.ts";

/** A name, its value, and what stands beside it in lighter ink. */
export interface Fact {
  readonly name: string;
  readonly value: string;
  readonly beside?: string | undefined;
}

/** The part as its file gives it, in the file's own units; the gauge is what its thickness is called in its metal. */
export function sizeFacts({ part, shape, cone }: Report, gauge: string | null): Fact[] {
  const say = numbersIn(part.units);
  const round = (end: { diameter: number; measured?: string | undefined }): Pick<Fact, "value" | "beside"> =>
    end.diameter === 0
      ? { value: "to a point" }
      : { value: `Ø${say.length(end.diameter)}`, beside: end.measured };
  const offset = (to: readonly [number, number] | undefined): Fact => ({
    name: "Offset",
    value: offsetWords(to ?? [0, 0], say),
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
    { name: "Height", value: say.length(shape.heightMm), beside: heightBetween(part) },
  ];
  if (cone) {
    heights.push({ name: "Slant height", value: say.length(cone.slantMm), beside: "middle of the wall" });
    heights.push({ name: "Half angle", value: degrees(cone.halfAngleDeg) });
  }
  return [
    ...ends,
    ...heights,
    { name: "Thickness", ...thickness(part.thickness, part.units, gauge) },
    { name: "Plan angles", value: "0° right, 90° away, 270° nearest you" },
    { name: "Area of the skin", value: say.area(shape.areaMm2) },
    { name: "Contents", value: say.volume(shape.contentsMm3), beside: "inside, filled level" },
  ];
}

/** A cone to a point comes to it on the surface that its large end is measured on. */
function heightBetween(part: Report["part"]): string {
  if (part.shape === "square-to-round" || part.smallEnd.diameter > 0) return "between the end planes";
  const { measured } = part.largeEnd;
  return `from the large end’s plane to the tip of the ${measured === "middle" ? "middle surface" : `${measured} face`}`;
}

/** Where the upper end's centre stands from the lower one's, seen from above: "90 mm right, 60 mm towards you". */
function offsetWords([x, y]: readonly [number, number], say: Numbers): string {
  const ways = [
    { by: x, forth: "right", back: "left" },
    { by: y, forth: "away", back: "towards you" },
  ].filter(({ by }) => by !== 0);
  if (ways.length === 0) return "none";
  return ways.map(({ by, forth, back }) => `${say.length(Math.abs(by))} ${by > 0 ? forth : back}`).join(", ");
}
