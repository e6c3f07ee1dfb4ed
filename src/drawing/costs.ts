import type { Vec2 } from "../geometry/vector.ts";
import { boxOf, boxOfTwo, grow, height, join, NO_BOX, width } from "./box.ts";
import { coarse } from "./coarse.ts";
import { labelCorners } from "./lettering.ts";
import type { Box, Label, Stroke, StrokeKind } from "./model.ts";
import { nearby } from "./nearby.ts";
import {
  meeting,
  type Rectangle,
  rectanglesOverlap,
  roomRound,
  segmentsCross,
  segmentsMeet,
} from "./overlap.ts";

/** One way to place something: its lines and lettering, all or nothing. */
export interface Placing {
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
  /** How much less it is liked than the others, in the measure of the costs below. */
  readonly extra?: number;
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
/** For each millimetre of paper by which the drawing grows: what sticks out makes all the rest smaller. */
const GROWTH = 0.2;
/** Clear room between one label and the next. [mm of paper] */
const CLEAR = 0.5;
/** Side of the squares by which what is near is found. [mm of paper] */
const CELL = 8;
/** Lines are tested for crossings to this. [mm of paper] */
export const COARSE = 0.15;

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

export interface LineCost {
  readonly sum: number;
  readonly reach: Box;
}

/**
 * What lies on a drawing board, and what it costs to put more there.
 *
 * @param unit millimetres of the part for one of paper
 */
export function createCosts(unit: number) {
  const taken = nearby<Lettering>(CELL * unit);
  const segments = nearby<Segment>(CELL * unit);
  /** Those that a dimension or leader line had better not cross. */
  const crossable = nearby<Segment>(CELL * unit);

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
   * @param extent of what is drawn
   * @param known lines of placings before: ways to place one figure share them. `most` never rises from one to the next
   */
  const cost = (
    placing: Placing,
    { extent, most, known }: { extent: Box; most: number; known: Map<Stroke, LineCost> },
  ): number => {
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

  return {
    cost,
    /** A line that is there from now on. */
    draw(stroke: Stroke): void {
      for (const one of segmentsOf(stroke)) {
        segments.add(one, one.box);
        if (stroke.kind === "dimension" || stroke.kind === "outline") crossable.add(one, one.box);
      }
    },
    /** Lettering that is there from now on. */
    write: (corners: Rectangle): void =>
      taken.add({ corners, meets: meeting(corners) }, grow(boxOf(corners), CLEAR * unit)),
    /** Would a line meet an outline, or, unless it may, a dimension or leader line? */
    meets: (from: Vec2, to: Vec2, { outlinesAlone = false } = {}): boolean =>
      crossable
        .at(boxOfTwo(from, to))
        .some(
          (one) => (!outlinesAlone || one.kind === "outline") && segmentsMeet(from, to, one.from, one.to),
        ),
  };
}
