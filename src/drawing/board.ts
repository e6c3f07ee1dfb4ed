import type { Vec2 } from "../geometry/vector.ts";
import { boxOf, height, join, NO_BOX, width } from "./box.ts";
import { createCosts, type LineCost, type Placing } from "./costs.ts";
import { nearestFraction } from "../geometry/inches.ts";
import { flatten } from "./flatten.ts";
import { lengthNumber, type Units } from "./format.ts";
import { labelCorners, readable } from "./lettering.ts";
import type { Box, ElementLine, Label, LabelRole, LetterSize, PutDown, Stroke } from "./model.ts";
import type { Paper } from "./paper.ts";
import { placed, type Ways } from "./ways.ts";

export type { Placing } from "./costs.ts";

/** A figure, and the same figure another way, for the other side of the dimension line. */
export interface Figure {
  readonly main: string;
  readonly second?: string;
}

/** Each step down a list of placings, the best liked first. */
const LATER = 0.1;
/** Far more than sums of costs are rounded by, and far less than any two of them differ by. */
const ROUNDED = 0.001;
/** Rather leave it out than pay this. */
const TOO_DEAR = 60;
/**
 * Where it lay before, a thing may cost this much more than it did: another size moves what is round it a little, and a figure
 * may come to stand across one more element line. It never adds up: what it cost at first counts from drawing to drawing.
 */
const AS_BEFORE = 2.5;

type Put = NonNullable<PutDown>;
type Chosen = Put & { readonly placing: Placing };

/**
 * A drawing board: lines and lettering are put down one after the other, the most wanted first. Lettering never covers
 * lettering; of the places offered the one that crosses least is taken, and what finds no place is left out and named.
 *
 * @param room width and height that all has to keep within: a board that has run over it is no good any more, and takes nothing
 *   more [mm of the part]
 * @param giveUp called as soon as that happens, by one who wants no more of the drawing then
 * @param before what a drawing of nearly the same put where, one thing after the other: what still goes there is put there
 *   without a look at any other place, and what had none has none: that takes the longest look, and the whole drawing follows
 */
export function createBoard(
  paper: Paper,
  unit: number,
  {
    room,
    giveUp,
    before,
  }: {
    room?: readonly [number, number];
    giveUp?: () => never;
    before?: readonly PutDown[] | undefined;
  } = {},
) {
  const strokes: Stroke[] = [];
  const labels: Label[] = [];
  const lines: ElementLine[] = [];
  const puts: PutDown[] = [];
  const costs = createCosts(unit);
  const dropped: string[] = [];
  let extent = NO_BOX;

  let limit = room;
  const isOver = (): boolean =>
    limit !== undefined && (width(extent) > limit[0] || height(extent) > limit[1]);

  const draw = (stroke: Stroke): void => {
    if (isOver()) return;
    strokes.push(stroke);
    costs.draw(stroke);
    extent = join(extent, boxOf(flatten(stroke.shape)));
    if (isOver()) giveUp?.();
  };

  const write = (label: Label): void => {
    const corners = labelCorners(label);
    labels.push(label);
    costs.write(corners);
    extent = join(extent, boxOf(corners));
    if (isOver()) giveUp?.();
  };

  /** The cheapest of some placings; undefined where each is too dear. */
  const cheapest = (ways: Ways, dearest: number): Chosen | undefined => {
    let best: Chosen | undefined;
    let way = 0;
    const known = new Map<Stroke, LineCost>();
    for (const one of ways) {
      const placing = placed(one);
      // What cannot be the cheapest, where it stands in the list, need not be looked at to its end.
      const most = (best?.price ?? dearest) - way * LATER + ROUNDED;
      const price = costs.cost(placing, { extent, most, known }) + way * LATER;
      if (price < (best?.price ?? Infinity)) best = { placing, way, price };
      way += 1;
      if (best && best.price <= way * LATER) break;
    }
    return best && best.price < dearest ? best : undefined;
  };

  /** The placing that was taken before, where it is about as good as it was. */
  const asBefore = (ways: Ways, dearest: number, { way, price: was }: Put): Chosen | undefined => {
    let at = 0;
    for (const one of ways) {
      if (at++ < way) continue;
      const placing = placed(one);
      const most = was + AS_BEFORE - way * LATER;
      const price = costs.cost(placing, { extent, most, known: new Map() }) + way * LATER;
      const isAsGood = price <= was + AS_BEFORE && price < dearest;
      return isAsGood ? { placing, way, price: Math.min(price, was) } : undefined;
    }
    return undefined;
  };

  const tried = (ways: Ways, dearest: number): boolean => {
    if (isOver()) return false;
    const was = before?.[puts.length];
    const chosen =
      was === null ? undefined : ((was && asBefore(ways, dearest, was)) ?? cheapest(ways, dearest));
    puts.push(chosen ? { way: chosen.way, price: chosen.price } : null);
    if (!chosen) return false;
    chosen.placing.strokes.forEach(draw);
    chosen.placing.labels.forEach(write);
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
    puts,
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
    meets: costs.meets,
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
