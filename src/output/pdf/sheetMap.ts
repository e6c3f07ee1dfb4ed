import { boxOf, height, join, meet, width } from "../../drawing/box.ts";
import { clip } from "../../drawing/clip.ts";
import { flatten } from "../../drawing/flatten.ts";
import { type Box, circle, type Shape, type StrokeKind } from "../../drawing/model.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Lettering, Pdf } from "./document.ts";
import { mapNumbers } from "./mapNumbers.ts";
import { type Frame, onSheet } from "./pen.ts";
import type { PointOnTemplate } from "./pointPicture.ts";
import type { Template } from "./template.ts";
import { ORIGIN_NAME } from "./templateOrigin.ts";
import type { Tiling } from "./tiles.ts";

interface Mapped {
  readonly template: Template;
  readonly tiling: Tiling;
  /** The points that are marked, where the sheets are only those that hold one. */
  readonly points: readonly PointOnTemplate[] | undefined;
  /** Upper left on the sheet, width and height. [mm of paper] */
  readonly from: Vec2;
  readonly room: Vec2;
}

/** The whole pattern, small, with the grid of the sheets over it; says where it ends. [mm of paper] */
export function sheetMap(pdf: Pdf, { template, tiling, points, from, room }: Mapped): number {
  const all = [...tiling.tiles, ...tiling.leftOut];
  const box = all.reduce<Box>((sum, { core }) => join(sum, core), all[0]?.core ?? boxOf([]));
  const unit = Math.max(width(box) / room[0], height(box) / room[1]);
  const frame: Frame = {
    at: [box.left, box.top],
    on: [from[0] + (room[0] - width(box) / unit) / 2, from[1]],
    unit,
  };
  const cell = ({ left, right, bottom, top }: Box): Shape => ({
    type: "path",
    closed: true,
    points: [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
  });
  pdf.draw(
    tiling.leftOut.map(({ core }) => cell(core)),
    frame,
    { widthMm: 0, fill: true, ink: 0.9 },
  );
  const shapes = (kind: StrokeKind) =>
    template.strokes.filter((one) => one.kind === kind).map(({ shape }) => shape);
  pdf.draw([...shapes("thin"), ...shapes("hidden")], frame, { widthMm: 0.08, ink: 0.5 });
  pdf.draw(gridLines(all), frame, { widthMm: 0.13, dashMm: [1.5, 1] });
  const cellMm = Math.min(...all.map(({ core }) => Math.min(width(core), height(core)))) / unit;
  const capMm = Math.min(3.5, Math.max(1.3, cellMm / 4));
  const middle = ({ left, right, bottom, top }: Box): Vec2 =>
    onSheet(frame, [(left + right) / 2, (bottom + top) / 2]);
  for (const { core } of tiling.leftOut) pdf.write("–", middle(core), { capMm, anchor: "middle", ink: 0.4 });
  pdf.draw(shapes("outline"), frame, { widthMm: 0.35, round: true });
  const edges = shapes("outline").map((one) => flatten(one).map((p) => onSheet(frame, p)));
  const taken: Box[] = tiling.tiles.map(({ core, name }) => {
    const places = cellPlaces(middle(core), [width(core) / unit, height(core) / unit]);
    const all = places.map((place) => ({ place, box: roomOf(pdf, name, place, capMm, true) }));
    const free = all.find(({ box: one }) => !edges.some((points) => isCrossed(one, points))) ?? all[0];
    if (!free) return boxOf([]);
    label(pdf, name, free.place, { capMm, anchor: "middle", bold: true });
    return free.box;
  });
  template.corners.forEach((p, i) => {
    const at = onSheet(frame, p);
    pdf.draw([{ type: "arc", centre: p, radius: 0.7 * unit, fromRad: 0, toRad: 2 * Math.PI }], frame, {
      widthMm: 0,
      fill: true,
    });
    const name = `P${i + 1}`;
    const own = cornerPlaces(pdf, name, at).map((place) => ({ place, box: roomOf(pdf, name, place, 1.8) }));
    const free = own.find(({ box: one }) => !taken.some((other) => meet(one, other))) ?? own[0];
    if (!free) return;
    taken.push(free.box);
    label(pdf, name, free.place, { capMm: 1.8 });
  });
  for (const { on, mark } of points ?? []) {
    const at = onSheet(frame, on);
    pdf.draw([circle("outline", on, 0.5 * unit).shape], frame, { widthMm: 0, fill: true });
    const free = cornerPlaces(pdf, mark, at)
      .map((place) => ({ place, box: roomOf(pdf, mark, place, 1.8) }))
      .find(({ box: one }) => !taken.some((other) => meet(one, other)));
    if (mark.startsWith("P") || !free) continue;
    taken.push(free.box);
    label(pdf, mark, free.place, { capMm: 1.8 });
  }
  if (template.origin) originOnMap(pdf, template.origin, { box, frame, taken });
  if (!points)
    for (const { text, places } of mapNumbers(template.marked)) {
      const free = places
        .map((p) => onSheet(frame, p))
        .map((place) => ({ place, box: roomOf(pdf, text, place, NUMBER.capMm, true) }))
        .find(({ box: one }) => !taken.some((other) => meet(one, other)));
      if (!free) continue;
      taken.push(free.box);
      label(pdf, text, free.place, { ...NUMBER, anchor: "middle" });
    }
  return from[1] + height(box) / unit;
}

/** Lettering of a line's number on the map. [mm of paper] */
const NUMBER = { capMm: 1.6 };
/** Half the arms of the cross at the marking table's nought, and from its middle to its name. [mm of paper] */
const NOUGHT = { armMm: 2, asideMm: 2.5 };

/** The cross where the marking table's x and y begin, where that lies among the sheets: of a turned pattern it may not. */
function originOnMap(
  pdf: Pdf,
  origin: Vec2,
  { box, frame, taken }: { box: Box; frame: Frame; taken: Box[] },
): void {
  const { left, right, bottom, top } = box;
  const [x, y] = origin;
  if (x < left || x > right || y < bottom || y > top) return;
  const at = onSheet(frame, origin);
  const arm = NOUGHT.armMm;
  pdf.line([at[0] - arm, at[1]], [at[0] + arm, at[1]], { widthMm: 0.2 });
  pdf.line([at[0], at[1] - arm], [at[0], at[1] + arm], { widthMm: 0.2 });
  const long = pdf.width(ORIGIN_NAME, NUMBER);
  const aside = NOUGHT.asideMm;
  const places: Vec2[] = [
    [at[0] + 1, at[1] - aside],
    [at[0] + 1, at[1] + aside],
    [at[0] - long - 1, at[1] - aside],
    [at[0] - long - 1, at[1] + aside],
  ];
  const free = places
    .map((place) => ({ place, box: roomOf(pdf, ORIGIN_NAME, place, NUMBER.capMm) }))
    .find(({ box: one }) => !taken.some((other) => meet(one, other)));
  if (!free) return;
  taken.push(free.box);
  label(pdf, ORIGIN_NAME, free.place, NUMBER);
}

/** Places for the name of a sheet within its cell of the grid: the middle first, then towards the sides and corners. [mm of paper] */
const cellPlaces = ([x, y]: Vec2, [wide, high]: Vec2): Vec2[] =>
  [0, 0.15, 0.3].flatMap((share) =>
    [
      [0, 0],
      [-1, 0],
      [1, 0],
      [0, -1],
      [0, 1],
      [-1, -1],
      [1, -1],
      [-1, 1],
      [1, 1],
    ].map(([dx = 0, dy = 0]): Vec2 => [x + dx * share * wide, y + dy * share * high]),
  );

/** Does an outline run through a box? */
const isCrossed = ({ left, right, bottom, top }: Box, points: readonly Vec2[]): boolean => {
  const outline: Vec2[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
  return points.some((to, i) => i > 0 && clip(points[i - 1] as Vec2, to, { outline }) !== undefined);
};

/** Places beside a corner for its name, the best first: within the sheet, and over nothing else that is written. */
function cornerPlaces(pdf: Pdf, name: string, [x, y]: Vec2): Vec2[] {
  const before = -pdf.width(name, { capMm: 1.8 });
  return [
    [3, -2],
    [before - 3, -2],
    [3, 3],
    [before - 3, 3],
    [before / 2, -4],
    [before / 2, 4.5],
    [8, 0],
    [before - 8, 0],
  ].map(([dx = 0, dy = 0]): Vec2 => [x + dx, y + dy]);
}

/** What lettering covers on the sheet, y down there. [mm of paper] */
function roomOf(pdf: Pdf, text: string, [x, y]: Vec2, capMm: number, inMiddle = false): Box {
  const long = pdf.width(text, { capMm, bold: inMiddle });
  const left = inMiddle ? x - long / 2 : x;
  return { left: left - 0.6, right: left + long + 0.6, bottom: y - capMm * 0.8, top: y + capMm * 0.8 };
}

/** The lines of the grid, each once: dashes on dashes would make a whole line. */
function gridLines(tiles: Tiling["tiles"]): Shape[] {
  const box = tiles.reduce<Box>((sum, { core }) => join(sum, core), tiles[0]?.core ?? boxOf([]));
  const { left, right, bottom, top } = box;
  const upright = new Set(tiles.flatMap(({ core }) => [core.left, core.right]));
  const lying = new Set(tiles.flatMap(({ core }) => [core.bottom, core.top]));
  const shape = (from: Vec2, to: Vec2): Shape => ({ type: "path", points: [from, to], closed: false });
  return [
    ...[...upright].map((x) => shape([x, bottom], [x, top])),
    ...[...lying].map((y) => shape([left, y], [right, y])),
  ];
}

/** Lettering on a ground of its own. */
function label(pdf: Pdf, text: string, at: Vec2, how: Lettering): void {
  const long = pdf.width(text, how);
  const left = how.anchor === "middle" ? at[0] - long / 2 : at[0];
  pdf.box([left - 0.4, at[1] - how.capMm * 0.75], [long + 0.8, how.capMm * 1.5], {
    widthMm: 0,
    fill: true,
    ink: 1,
  });
  pdf.write(text, at, how);
}
