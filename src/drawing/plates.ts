import { toSegment } from "../geometry/segment.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Board, Placing } from "./board.ts";
import { boxOf, height, width } from "./box.ts";
import { linearDimension } from "./dimension/linear.ts";
import { dimension, lengthNumber, MM_PER_INCH, unitName, type Units } from "./format.ts";
import { labelCorners } from "./lettering.ts";
import { type Box, closed, type Drawing } from "./model.ts";
import { meeting } from "./overlap.ts";
import type { Paper } from "./paper.ts";
import { fitSheet } from "./sheet.ts";
import { thin } from "./thin.ts";

/** A blank where it lies on the plate. */
interface BlankDrawn {
  readonly outline: readonly Vec2[];
  readonly number: number;
  readonly name: string;
}

export interface PlateDrawn {
  /** Which plate it is: material, thickness, number. */
  readonly title: string;
  readonly units: Units;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly blanks: readonly BlankDrawn[];
  /** The largest rectangle that is left. */
  readonly free: Box | null;
}

/** Outside the plate, to its dimension lines. [mm of paper] */
const OUTSIDE = [7, 9, 11];
/** Places within a blank that are looked at for its number: so many across and up. */
const LOOKED_AT = 16;
/** Of these the roomiest few are tried. */
const TRIED = 12;
/** Outlines are looked at as closely as this. [mm of paper] */
const COARSE = 0.3;

/** A plate with its blanks as they are cut, each with its number and, where it has room, its name; and what is left. */
export function plateDrawing(plate: PlateDrawn, { paper }: { paper: Paper }): Drawing {
  const { lengthMm, widthMm, units, blanks } = plate;
  const size = `${dimension(lengthMm, units)} × ${dimension(widthMm, units)}`;
  const names = [...new Set(blanks.map(({ number, name }) => `${number} ${name}`))];
  return fitSheet(
    {
      paper,
      core: { widthMm: lengthMm, heightMm: widthMm },
      text: {
        title: `Plate: ${plate.title}`,
        description: `A plate of ${size} in ${unitName(units)} with ${blanks.length} ${blanks.length === 1 ? "blank" : "blanks"}: ${names.join(", ")}.`,
        lines: [plate.title],
      },
    },
    (board) => drawPlate(board, plate),
  );
}

function drawPlate(board: Board, { lengthMm, widthMm, units, blanks, free }: PlateDrawn): void {
  const edge: readonly Vec2[] = [
    [0, 0],
    [lengthMm, 0],
    [lengthMm, widthMm],
    [0, widthMm],
  ];
  board.draw(closed("thin", edge), ...blanks.map(({ outline }) => closed("outline", outline)));
  if (free) board.draw(closed("hidden", cornersOf(free)));
  const [low, right, , left] = edge as [Vec2, Vec2, Vec2, Vec2];
  const across = { from: low, to: right, text: board.length(lengthMm, units) };
  board.put("length", linearDimension(board, { ...across, offsetsMm: OUTSIDE.map((mm) => -mm) }), Infinity);
  const up = { from: low, to: left, text: board.length(widthMm, units) };
  board.put("width", linearDimension(board, { ...up, offsetsMm: OUTSIDE }), Infinity);
  for (const blank of blanks) board.put(`number ${blank.number}`, namesWithin(board, blank), Infinity);
  if (free) board.put("free rectangle", freeSize(board, free, units));
}

const cornersOf = ({ left, right, bottom, top }: Box): Vec2[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** Number and name where the blank has room for both, else the number alone; the roomiest places first. */
function namesWithin(board: Board, { outline, number, name }: BlankDrawn): Placing[] {
  const sides = thin([...outline, outline[0] as Vec2], board.mm(COARSE));
  const places = roomiest(sides);
  const label = (text: string, at: Vec2, alongDeg: number) =>
    board.label(text, at, { role: "name", size: "small", alongDeg });
  const ways = [`${number} ${name}`, `${number}`].flatMap((text) =>
    places.flatMap((at) =>
      [0, 90, 45, -45].map((alongDeg) => ({ one: label(text, at, alongDeg), isName: text !== `${number}` })),
    ),
  );
  const within = ways.filter(({ one }) => {
    const meets = meeting(labelCorners(one));
    return !sides.some((p, i) => i > 0 && meets(sides[i - 1] as Vec2, p));
  });
  const [first] = places;
  const last = first ? [{ one: label(`${number}`, first, 0), isName: false }] : [];
  return [...within, ...last].map(({ one, isName }) => ({
    strokes: [],
    labels: [one],
    extra: isName ? 0 : NUMBER_ALONE,
  }));
}
/** What a number without its name is liked less, in the measure of the board. */
const NUMBER_ALONE = 20;

/** Places within a closed outline, those furthest from it first. */
function roomiest(sides: readonly Vec2[]): Vec2[] {
  const box = boxOf(sides);
  const places: { at: Vec2; room: number }[] = [];
  for (let i = 0; i < LOOKED_AT; i++)
    for (let j = 0; j < LOOKED_AT; j++) {
      const at: Vec2 = [
        box.left + ((i + 0.5) / LOOKED_AT) * width(box),
        box.bottom + ((j + 0.5) / LOOKED_AT) * height(box),
      ];
      let [isWithin, room] = [false, Infinity];
      for (let k = 1; k < sides.length; k++) {
        const [p, q] = [sides[k - 1] as Vec2, sides[k] as Vec2];
        if (p[1] > at[1] !== q[1] > at[1]) {
          const x = p[0] + ((at[1] - p[1]) / (q[1] - p[1])) * (q[0] - p[0]);
          if (x > at[0]) isWithin = !isWithin;
        }
        room = Math.min(room, toSegment(at, p, q));
      }
      if (isWithin) places.push({ at, room });
    }
  return places
    .toSorted((a, b) => b.room - a.room)
    .slice(0, TRIED)
    .map(({ at }) => at);
}

/** What is left, its sizes rounded down: to a millimetre, or a tenth of an inch. */
function freeSize(board: Board, free: Box, units: Units): Placing[] {
  const step = units === "mm" ? 1 : MM_PER_INCH / 10;
  const down = (mm: number) => lengthNumber(Math.floor(mm / step) * step, units);
  const size = `${down(width(free))} × ${down(height(free))}`;
  const at: Vec2 = [(free.left + free.right) / 2, (free.bottom + free.top) / 2];
  return [`left ${size}`, size].flatMap((text) =>
    [0, 90]
      .map((alongDeg) => board.label(text, at, { role: "note", size: "small", alongDeg }))
      .filter((label) => {
        const room = boxOf(labelCorners(label));
        return width(room) < width(free) && height(room) < height(free);
      })
      .map((label): Placing => ({ strokes: [], labels: [label] })),
  );
}
