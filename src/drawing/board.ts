import type { Vec2 } from "../geometry/vector.ts";
import { boxOf, boxOfTwo, grow, height, join, NO_BOX, width } from "./box.ts";
import { coarse } from "./coarse.ts";
import { nearestFraction } from "../geometry/inches.ts";
import { flatten } from "./flatten.ts";
import { lengthNumber, type Units } from "./format.ts";
import { labelCorners, readable } from "./lettering.ts";
import type { Box, ElementLine, Label, LabelRole, LetterSize, Stroke, StrokeKind } from "./model.ts";
import { nearby } from "./nearby.ts";
import {
  meeting,
  type Rectangle,
  rectanglesOverlap,
  roomRound,
  segmentsCross,
  segmentsMeet,
} from "./overlap.ts";
import type { Paper } from "./paper.ts";

/** One way to place something: its lines and lettering, all or nothing. */
export interface Placing {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** How much less it is liked than the others, in the measure of the costs below. */
  readonly extra?: number;
}

/** Ways to place something, the best liked first; those that are worked out one by one end where one is good enough. */
export type Ways = Iterable<Placing>;

/** Ways that are worked out when they are asked for, and anew each time: mostly one of the first costs nothing. */
export const lazily = (ways: () => Iterator<Placing>): Ways => ({ [Symbol.iterator]: ways });

/** A figure, and the same figure another way, for the other side of the dimension line. */
export interface Figure {
  readonly main: string;
  readonly second?: string;
}

/** What it costs to write across a line: element lines bear it, an outline or a dimension line hardly. */
const ACROSS: Readonly<Record<StrokeKind, number>> = {
  outline: 40,
  arrow: 40,
  dimension: 15,
  hidden: 4,
  centre: 12,
  thin: 2,
};
/** A dimension or leader line through lettering that is already there. */
const THROUGH_TEXT = 60;
/** A dimension or leader line across another. */
const LEADERS_CROSS = 8;
/** A dimension or leader line across an outline. */
const ACROSS_OUTLINE = 4;
/** Each step down a list of placings, the best liked first. */
const LATER = 0.1;
/** Far more than sums of costs are rounded by, and far less than any two of them differ by. */
const ROUNDED = 0.001;
/** For each millimetre of paper by which the drawing grows: what sticks out makes all the rest smaller. */
const GROWTH = 0.2;
/** Rather leave it out than pay this. */
const TOO_DEAR = 60;
/** Clear room between one label and the next. [mm of paper] */
const CLEAR = 0.5;
/** Side of the squares by which what is near is found. [mm of paper] */
const CELL = 8;
/** Lines are tested for crossings to this. [mm of paper] */
const COARSE = 0.15;

interface Segment {
  readonly kind: StrokeKind;
  readonly from: Vec2;
  readonly to: Vec2;
  readonly box: Box;
}

interface Lettering {
  readonly corners: Rectangle;
  readonly meets: ReturnType<typeof meeting>;
}

interface LineCost {
  readonly sum: number;
  readonly reach: Box;
}

/**
 * A drawing board: lines and lettering are put down one after the other, the most wanted first. Lettering never covers
 * lettering; of the places offered the one that crosses least is taken, and what finds no place is left out and named.
 *
 * @param room width and height that all has to keep within: a board that has run over it is no good any more, and takes nothing
 *   more [mm of the part]
 * @param giveUp called as soon as that happens, by one who wants no more of the drawing then
 */
export function createBoard(
  paper: Paper,
  unit: number,
  room?: readonly [number, number],
  giveUp?: () => never,
) {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const lines: ElementLine[] = [];
  const taken = nearby<Lettering>(CELL * unit);
  const segments = nearby<Segment>(CELL * unit);
  /** Those that a dimension or leader line had better not cross. */
  const crossable = nearby<Segment>(CELL * unit);
  const dropped: string[] = [];
  let extent = NO_BOX;

  let limit = room;
  const isOver = (): boolean =>
    limit !== undefined && (width(extent) > limit[0] || height(extent) > limit[1]);

  /** One line is looked at for each place of its figure: it is taken apart once. */
  const apart = new Map<Stroke, readonly Segment[]>();
  const segmentsOf = (stroke: Stroke): readonly Segment[] => {
    const known = apart.get(stroke);
    if (known) return known;
    const points = coarse(stroke.shape, COARSE * unit);
    const segments: Segment[] = [];
    for (let i = 1; i < points.length; i++) {
      const [from, to] = [points[i - 1] as Vec2, points[i] as Vec2];
      segments.push({ kind: stroke.kind, from, to, box: boxOfTwo(from, to) });
    }
    apart.set(stroke, segments);
    return segments;
  };

  const draw = (stroke: Stroke): void => {
    if (isOver()) return;
    strokes.push(stroke);
    for (const one of segmentsOf(stroke)) {
      segments.add(one, one.box);
      if (stroke.kind === "dimension" || stroke.kind === "outline") crossable.add(one, one.box);
    }
    extent = join(extent, boxOf(flatten(stroke.shape)));
    if (isOver()) giveUp?.();
  };

  const write = (label: Label): void => {
    const corners = labelCorners(label);
    labels.push(label);
    taken.add({ corners, meets: meeting(corners) }, grow(boxOf(corners), CLEAR * unit));
    extent = join(extent, boxOf(corners));
    if (isOver()) giveUp?.();
  };

  /** What a line costs by itself and how far it reaches, or a part of that where it already comes to more than `most`. */
  const lineCost = (stroke: Stroke, most: number): LineCost => {
    let sum = 0;
    let reach = NO_BOX;
    for (const { from, to, box } of segmentsOf(stroke)) {
      reach = join(reach, box);
      for (const other of taken.at(box)) if (other.meets(from, to)) sum += THROUGH_TEXT;
      if (stroke.kind !== "arrow")
        for (const other of crossable.at(box))
          if (segmentsCross(from, to, other.from, other.to))
            sum += other.kind === "outline" ? ACROSS_OUTLINE : LEADERS_CROSS;
      if (sum > most) break;
    }
    return { sum, reach };
  };

  /** What it costs to write in some place, or Infinity where it would cover lettering or comes to more than `most`. */
  const labelCost = (corners: Rectangle, box: Box, most: number): number => {
    const others = taken.at(box);
    if (others.length > 0) {
      const room = roomRound(corners, CLEAR * unit);
      for (const other of others) if (rectanglesOverlap(other.corners, room)) return Infinity;
    }
    const lines = segments.at(box);
    if (lines.length === 0) return 0;
    const meets = meeting(corners);
    let sum = 0;
    for (const { kind, from, to } of lines) {
      if (meets(from, to)) sum += ACROSS[kind];
      if (sum > most) return Infinity;
    }
    return sum;
  };

  /**
   * Cost of a placing, or Infinity where it would cover lettering or cannot come below `most` any more.
   *
   * @param known lines of placings before: ways to place one figure share them. `most` never rises from one to the next
   */
  const cost = (placing: Placing, most: number, known: Map<Stroke, LineCost>): number => {
    const extra = placing.extra ?? 0;
    // Lines that were looked at before tell at once where no figure on them is worth looking at.
    let least = extra;
    for (const stroke of placing.strokes) least += known.get(stroke)?.sum ?? 0;
    if (least > most) return Infinity;
    let sum = extra;
    let reach = extent;
    for (const label of placing.labels) {
      const corners = labelCorners(label);
      const box = boxOf(corners);
      reach = join(reach, box);
      sum += labelCost(corners, box, most - sum);
      if (sum > most) return Infinity;
    }
    for (const stroke of placing.strokes) {
      let line = known.get(stroke);
      if (!line) {
        line = lineCost(stroke, most);
        known.set(stroke, line);
      }
      sum += line.sum;
      if (sum > most) return Infinity;
      reach = join(reach, line.reach);
    }
    const grown = width(reach) - width(extent) + height(reach) - height(extent);
    return sum + (Number.isFinite(grown) ? (GROWTH * grown) / unit : 0);
  };

  const tried = (ways: Ways, dearest: number): boolean => {
    if (isOver()) return false;
    let best: { placing: Placing; price: number } | undefined;
    let later = 0;
    const known = new Map<Stroke, LineCost>();
    for (const placing of ways) {
      // What cannot be the cheapest, where it stands in the list, need not be looked at to its end.
      const most = (best?.price ?? dearest) - later * LATER + ROUNDED;
      const price = cost(placing, most, known) + later * LATER;
      if (price < (best?.price ?? Infinity)) best = { placing, price };
      later += 1;
      if (best && best.price <= later * LATER) break;
    }
    if (!best || best.price >= dearest) return false;
    best.placing.strokes.forEach(draw);
    best.placing.labels.forEach(write);
    return true;
  };

  return {
    paper,
    unit,
    /** Millimetres of paper in millimetres of the part. */
    mm: (onPaper: number): number => onPaper * unit,
    strokes,
    labels,
    lines,
    dropped,
    /** A length as it stands beside a dimension line; inches with their fraction below, where the sheet has room for it. */
    length: (mm: number, units: Units, before = ""): Figure => {
      const main = before + lengthNumber(mm, units);
      if (units === "mm" || paper.name === "narrow") return { main };
      const second = nearestFraction(mm);
      return second === null || second === lengthNumber(mm, units)
        ? { main }
        : { main, second: `(${second})` };
    },
    extent: (): Box => extent,
    isOver,
    /** Would a line meet an outline, or, unless it may, a dimension or leader line? */
    meets: (from: Vec2, to: Vec2, { outlinesAlone = false } = {}): boolean =>
      crossable
        .at(boxOfTwo(from, to))
        .some(
          (one) => (!outlinesAlone || one.kind === "outline") && segmentsMeet(from, to, one.from, one.to),
        ),
    /** From now on it takes whatever is put down: lines at the foot stand below the room. */
    open: (): void => void (limit = undefined),
    draw: (...more: readonly Stroke[]): void => more.forEach(draw),
    /** Where element lines lie, to be shown when they are asked for. */
    locate: (...more: readonly ElementLine[]): void => void lines.push(...more),
    /** Lettering at this board's sizes. */
    label(
      text: string,
      at: Vec2,
      options: {
        role: LabelRole;
        size?: LetterSize;
        anchor?: Label["anchor"];
        alongDeg?: number;
        of?: Vec2;
      },
    ): Label {
      const size = options.size ?? "figure";
      return {
        role: options.role,
        text,
        at,
        anchor: options.anchor ?? "middle",
        size,
        capMm: paper.capsMm[size] * unit,
        rotationDeg: readable(options.alongDeg ?? 0),
        ...(options.of && { of: options.of }),
      };
    },
    /** Put down the cheapest of some placings, earlier ones preferred; says whether there was room. */
    put(name: string, ways: Ways, dearest = TOO_DEAR): boolean {
      const isPut = tried(ways, dearest);
      if (!isPut) dropped.push(name);
      return isPut;
    },
    /** The same for something that may be put otherwise, or need not be there. */
    tried,
  };
}
export type Board = ReturnType<typeof createBoard>;
