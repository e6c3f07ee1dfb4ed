import { boxOf, grow, touch } from "../../drawing/box.ts";
import { clip } from "../../drawing/clip.ts";
import { labelCorners } from "../../drawing/lettering.ts";
import { circle, type Label, line, type Shape } from "../../drawing/model.ts";
import type { Units } from "../../geometry/units.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { checkBars } from "./checkBars.ts";
import type { Lettering, LineStyle, Pdf } from "./document.ts";
import { type Frame, onSheet } from "./pen.ts";
import { putPicture } from "./picture.ts";
import { type PointOnTemplate, pointPicture } from "./pointPicture.ts";
import type { Template } from "./template.ts";
import { fitted } from "./words.ts";
import { OVERLAP, type Tile, type Tiling } from "./tiles.ts";

/** The edge that is cut to. [mm] */
const WIDE = 0.35;
const MARK: LineStyle = { widthMm: 0.13, ink: 0.35 };
const CUT: LineStyle = { widthMm: 0.2, dashMm: [4, 1.5] };
const CROSS = { arm: 4, ring: 2 };
/** Match marks on a common line, as shares of its length. */
const PLACES = [0.2, 0.5, 0.8];
const SMALL: Lettering = { capMm: 1.8 };
/** The sheet's own name within the pattern: pale, for it is not to be marked. [mm of capitals] */
const NAME: Lettering = { capMm: 6, bold: true, ink: 0.72 };

export interface TileWords {
  /** Which part, piece and face. */
  readonly what: string;
  /** "4 of 12". */
  readonly place: string;
  readonly inches: boolean;
}

/** Points that are marked, with what is to be known of them; none where the whole is glued. */
export type PointsWanted = { readonly all: readonly PointOnTemplate[]; readonly units: Units } | undefined;

/** One sheet of the tiled pattern: its stretch of the template at full size, and what it takes to join it to its neighbours. */
export function tileSheet(
  pdf: Pdf,
  template: Template,
  { tiling, tile, words, points }: { tiling: Tiling; tile: Tile; words: TileWords; points: PointsWanted },
): void {
  const { layout, tiles } = tiling;
  const { field } = layout;
  pdf.sheet(layout.widthMm, layout.heightMm);
  const frame: Frame = {
    at: [tile.field.left, tile.field.bottom],
    on: [field.x, field.y + field.heightMm],
    unit: 1,
  };
  const beside = (rows: number, columns: number): Tile | undefined =>
    tiles.find(({ row, column }) => row === tile.row + rows && column === tile.column + columns);

  pdf.within([field.x, field.y], [field.widthMm, field.heightMm], () => {
    const own = points && pointPicture(points.all, template, { field: tile.field, units: points.units });
    const labels = [...template.labels.filter((one) => !isCutOff(one, tile, tiles)), ...(own?.labels ?? [])];
    const strokes = [...template.strokes, ...(own?.strokes ?? [])];
    nameWithin(pdf, { ...template, labels }, tile, frame);
    putPicture(pdf, { strokes, labels }, { frame, wideMm: WIDE, seen: tile.field });
  });
  const joins = [
    { other: beside(0, -1), side: "left" },
    { other: beside(-1, 0), side: "top" },
    { other: beside(0, 1), side: "right" },
    { other: beside(1, 0), side: "bottom" },
  ] as const;
  for (const { other, side } of joins) if (other) join(pdf, { tile, other, side, frame });
  foot(pdf, { tiling, tile, words, cuts: [joins[0], joins[1]].flatMap(({ other }) => other ?? []) });
}

/** Half of a line's number misleads: where it stands whole on another sheet it is left off this one. */
function isCutOff(label: Label, tile: Tile, tiles: readonly Tile[]): boolean {
  if (label.role !== "number") return false;
  const box = boxOf(labelCorners(label));
  const isWhole = ({ field }: Tile): boolean =>
    box.left >= field.left && box.right <= field.right && box.bottom >= field.bottom && box.top <= field.top;
  return !isWhole(tile) && tiles.some(isWhole);
}

type Side = "left" | "top" | "right" | "bottom";

/** The common line with a neighbour: cut to on the sheet that comes later, laid against on the other; crosses at the same places on both. */
function join(
  pdf: Pdf,
  { tile, other, side, frame }: { tile: Tile; other: Tile; side: Side; frame: Frame },
): void {
  const upright = side === "left" || side === "right";
  const cuts = side === "left" || side === "top";
  const { field, core } = tile;
  const common = core[side];
  const [low, high] = upright ? [field.bottom, field.top] : [field.left, field.right];
  const at = (along: number): Vec2 => (upright ? [common, along] : [along, common]);
  const style = cuts ? CUT : MARK;
  pdf.draw([line("thin", at(low), at(high)).shape], frame, style);

  // Both sheets reckon their crosses from the same ends, or they would not meet.
  const [from, to] = upright ? [core.bottom, core.top] : [core.left, core.right];
  const [first, last] = upright
    ? [Math.max(from, other.core.bottom), Math.min(to, other.core.top)]
    : [Math.max(from, other.core.left), Math.min(to, other.core.right)];
  const crosses: Shape[] = PLACES.flatMap((share) => {
    const [x, y] = at(first + share * (last - first));
    return [
      line("thin", [x - CROSS.arm, y], [x + CROSS.arm, y]).shape,
      line("thin", [x, y - CROSS.arm], [x, y + CROSS.arm]).shape,
      circle("thin", [x, y], CROSS.ring).shape,
    ];
  });
  pdf.draw(crosses, frame, MARK);

  // In the strip that is cut off, or that the neighbour will cover.
  const beyond = (side === "left" || side === "bottom" ? -1 : 1) * (OVERLAP / 4);
  const middle = first + 0.35 * (last - first);
  const place: Vec2 = upright ? [common + beyond, middle] : [middle, common + beyond];
  const words = cuts ? `cut along the dashes, lay on ${other.name}` : `${other.name} is laid to this line`;
  pdf.write(words, onSheet(frame, place), { ...SMALL, anchor: "middle", rotationDeg: upright ? 90 : 0 });
}

/** The sheet's name in its own share, where no line runs. */
function nameWithin(pdf: Pdf, { edges, lines, labels }: Template, tile: Tile, frame: Frame): void {
  const long = pdf.width(tile.name, NAME);
  const { core } = tile;
  const step = 12;
  const clear = 4;
  const pieces = [...edges, ...lines].filter(([p, q]) => touch(boxOf([p, q]), core));
  const words = labels.map(({ at, capMm, text }) => grow(boxOf([at]), capMm * Math.max(1, text.length / 2)));
  for (let y = core.top - 8; y > core.bottom + 8; y -= step)
    for (let x = core.left + 8; x + long < core.right - 8; x += step) {
      const box = grow({ left: x, right: x + long, bottom: y - 3, top: y + 3 }, clear);
      const corners: Vec2[] = [
        [box.left, box.bottom],
        [box.right, box.bottom],
        [box.right, box.top],
        [box.left, box.top],
      ];
      if (words.some((one) => touch(one, box))) continue;
      if (pieces.some(([p, q]) => clip(p, q, { outline: corners }) !== undefined)) continue;
      pdf.write(tile.name, onSheet(frame, [x, y]), NAME);
      return;
    }
}

/** Check bars, and in words what the sheet is and what is done with it. */
function foot(
  pdf: Pdf,
  { tiling, tile, words, cuts }: { tiling: Tiling; tile: Tile; words: TileWords; cuts: readonly Tile[] },
): void {
  const { field, heightMm } = tiling.layout;
  const bottom = field.y + field.heightMm;
  checkBars(pdf, {
    lying: [field.x, bottom + 5.5],
    upright: [field.x - 4, bottom - 3],
    inches: words.inches,
  });
  const wide = field.widthMm;
  const name = pdf.width(tile.name, { capMm: 5, bold: true });
  pdf.write(tile.name, [field.x + wide, bottom + 5.5], { capMm: 5, bold: true, anchor: "end" });
  const rest = wide - 108 - name - 4;
  if (rest > 40)
    fitted(
      pdf,
      "Print at 100 %, not “fit to page”.",
      [field.x + 108, bottom + 5.5],
      { capMm: 2, bold: true },
      rest,
    );
  const join =
    cuts.length === 0
      ? "Nothing is cut off this sheet."
      : `Cut along the dashes, lay it on ${cuts.map(({ name: one }) => one).join(" and ")}, crosses on crosses.`;
  fitted(pdf, words.what, [field.x, bottom + 12], { capMm: 2, bold: true }, wide);
  fitted(
    pdf,
    `Sheet ${tile.name}, ${words.place}. ${join} Printed at 100 % both bars measure true; else do not use it.`,
    [field.x, Math.min(bottom + 16.5, heightMm - 8)],
    { capMm: 1.8 },
    wide,
  );
}
