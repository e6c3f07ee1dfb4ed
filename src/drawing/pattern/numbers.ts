import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, dot2, left2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { textWidth } from "../lettering.ts";
import { path } from "../model.ts";
import type { Mark } from "./lines.ts";
import { lazily } from "../ways.ts";

/** From the edge to the number. [mm of paper] */
const CLEAR = 1.2;
/** A number may stand to one side of its line, clear of an extension line in its place. [mm of paper] */
const SIDEWAYS = 0.8;
/** A number is so much nearer to its own line's end than to any other. [-] */
const NEARER = 1.3;
/** At the end of a leader that is so only up to here: further from another line's end a number is not read as its. [mm of paper] */
const NOT_ITS = 7;
/** A leader begins at the outline: so far along it, it has left it. [mm of paper] */
const OFF = 0.3;
/** A number across anything but an element line is rather left out; in the board's measure. */
const DEAREST = 5;
/** What the first and the last number may cost where nothing else tells them. */
const DEAREST_END = 200;
/** A line that would have no number at all may have one on a leader across an extension line. */
const DEAREST_LEFT_OUT = 14;
const STEPS = [CLEAR, CLEAR + 2, CLEAR + 4];
/** How far to one side or the other of its line's end a number may stand, in steps. */
const ASIDE = [0, 1, -1, 2, -2];
/** A leader to a number that finds no room at its line: how far it runs, and how it is turned from outward. [mm of paper, degrees] */
const LEADER = { lengthsMm: [6, 9, 12, 16, 20, 25], turnsDeg: [0, 20, -20, 40, -40, 60, -60, 80, -80] };
/** Between others a number keeps its turn: its leader leans no further, and is no longer, or it would pass its neighbours'. [degrees, mm of paper] */
const IN_TURN = { deg: 40, mm: 12 };
/** The cosine of how far a leader is turned from a corner of the plate beside its line, at least. [-] */
const PAST_CORNER = 0.5;
/** A number among the lines of another piece is read as that one's: only where it would have to cross something instead. */
const OTHER_SIDE = 6;
/** A leader is liked less than a place at the line itself. */
const LEADER_EXTRA = 1;

/**
 * Numbers at the ends of the lines, outside the edge; every second, third … where they stand too close. The first and the
 * last tell which way the numbers run: they come first, and on a leader where there is no room beside their line.
 *
 * @param step only every so many lines are drawn, and a number stands at a line
 * @param elsewhere do other numbers of the drawing tell which way they run?
 * @param many do most lines stand without a number, and so near that it is enough to be nearest to its own?
 * @param corners of the plate near which a line ends: a number does not stand at one of them
 * @param forced rather write the first and the last across a line than leave them out
 * @returns which of the two stand
 */
export function numberEnds(
  board: Board,
  marks: readonly Mark[],
  {
    step = 1,
    elsewhere = false,
    forced = true,
    many = false,
    corners = [],
  }: {
    step?: number;
    elsewhere?: boolean;
    forced?: boolean;
    many?: boolean;
    corners?: readonly Vec2[];
  } = {},
): Told {
  const every = step * Math.ceil(stride(board, marks) / step);
  const last = marks.length - 1;
  // The last is always there, so the one before it gives way.
  const between = marks.filter((_, i) => i > 0 && i < last && i % every === 0 && i <= last - every);
  const near = [...marks, ...corners.map((at) => ({ at, isCorner: true }))];
  const [first, final] = [marks[0], last > 0 ? marks[last] : undefined];
  const isFirst =
    first !== undefined && number(board, { mark: first, marks: near, isEnd: true, elsewhere, forced, many });
  const isEnd = first?.closesRound !== true;
  const isLast =
    final === undefined || number(board, { mark: final, marks: near, isEnd, elsewhere, forced, many });
  const missing = between.filter(
    (mark) => !number(board, { mark, marks: near, isEnd: false, elsewhere, forced: false, many }),
  );
  // In a row that has every number a gap is miscounted: what finds no room at its line stands on a leader.
  if (every === step && !elsewhere) for (const mark of missing) onLeader(board, mark, near);
  return { first: isFirst, last: isLast };
}

/** Every so many lines a number can be counted from. */
const COUNTED_BY = [1, 2, 4, 6, 8, 12, 24, 48];

/** At which lines of many a number stands at both ends alike: as many as are clear of each other at the narrower. */
export function sharedStride(board: Board, ends: readonly (readonly Mark[])[], step: number): number {
  const least = Math.max(...ends.map((marks) => stride(board, marks)));
  return COUNTED_BY.find((every) => every >= least && every % step === 0) ?? least;
}

/** The first and the last number whatever they cost, where none stands yet that tells it. */
export function numberStill(board: Board, marks: readonly Mark[], told: Told): void {
  const [first, last] = [marks[0], marks.length > 1 ? marks.at(-1) : undefined];
  const still = [told.first ? undefined : first, told.last || first?.closesRound ? undefined : last];
  for (const mark of still)
    if (mark) number(board, { mark, marks, isEnd: true, elsewhere: false, forced: true, many: false });
}

/** Every line that is drawn has its number at one of its ends at least, on a leader where there is no room beside it. */
export function numberLeftOut(board: Board, ends: readonly (readonly Mark[])[], step: number): void {
  const numbered = (): ReadonlySet<number> =>
    new Set(board.labels.flatMap(({ role, elements = [] }) => (role === "number" ? elements : [])));
  let told = numbered();
  for (const marks of ends)
    for (const [i, mark] of marks.entries()) {
      const isDrawn = i % step === 0 || i === marks.length - 1;
      if (!isDrawn || mark.elements.every((one) => told.has(one))) continue;
      onLeader(board, mark, marks);
      told = numbered();
    }
}

/** A number on a leader, across an extension line where it has to be; never across the plate. */
function onLeader(board: Board, mark: Mark, marks: readonly Ending[]): void {
  const { out } = mark;
  if (!out) return;
  const name = `number ${mark.text}`;
  const inTurn = { mark, marks, out, most: IN_TURN };
  if (board.tried(leaders(board, inTurn), DEAREST)) return;
  board.put(name, leaders(board, { ...inTurn, across: true }), DEAREST_LEFT_OUT);
}

/** Where a line ends, or a corner of the plate is. */
type Ending = Pick<Mark, "at"> & { readonly isCorner?: boolean };

/** Do the first and the last number stand? */
interface Told {
  readonly first: boolean;
  readonly last: boolean;
}

interface Numbered {
  readonly mark: Mark;
  readonly marks: readonly Ending[];
  readonly isEnd: boolean;
  readonly elsewhere: boolean;
  readonly forced: boolean;
  readonly many: boolean;
}

/** Says whether the number stands. */
function number(board: Board, { mark, marks, isEnd, elsewhere, forced, many }: Numbered): boolean {
  const { out } = mark;
  if (!out) return false;
  const aside = asideOf(board, mark, out);
  const beside = lazily(function* () {
    for (const step of STEPS) {
      const at = placeOf(board, { mark, out, step });
      for (const times of ASIDE) {
        const place = add2(at, scale2(aside, times));
        // A number that has moved aside must still stand nearest to its own line.
        if (isOwn(place, { mark, marks, nearer: many ? 1 : NEARER }))
          yield {
            strokes: [],
            labels: [lettered(board, mark, place)],
            extra: isOnSide(place, mark) ? 0 : OTHER_SIDE,
          };
      }
    }
  });
  const name = `number ${mark.text}`;
  if (!isEnd || elsewhere) return board.put(name, beside, DEAREST);
  const ways = lazily(function* () {
    yield* beside;
    yield* leaders(board, { mark, marks, out });
  });
  // What tells which way all run stands early, while there is room.
  const dearest = DEAREST + (mark.side ? OTHER_SIDE : 0);
  return board.tried(ways, DEAREST) || board.put(name, ways, forced ? DEAREST_END : dearest);
}

/**
 * Does a number stand nearest to its own line, or to one that ends at the same point?
 * @param most further than this from another it is not read as that one's, whatever is nearest [mm]
 */
const isOwn = (
  at: Vec2,
  {
    mark,
    marks,
    most = Infinity,
    nearer = NEARER,
  }: { mark: Mark; marks: readonly Ending[]; most?: number; nearer?: number },
): boolean =>
  marks.every(
    (other) =>
      distance2(other.at, mark.at) < SAME_POINT_MM ||
      distance2(other.at, at) > Math.min(most, nearer * distance2(mark.at, at)),
  );

/** Does a number stand where the lines of its own piece are, or carry on its line? */
const isOnSide = (at: Vec2, { at: end, side }: Mark): boolean =>
  !side || dot2(sub2(at, end), side) > -SAME_POINT_MM;

const lettered = (board: Board, mark: Mark, at: Vec2) => ({
  ...board.label(mark.text, at, { role: "number", size: "small", of: mark.at }),
  elements: mark.elements,
});

/** The number at the end of a line of its own, which begins where the element ends and crosses no other, unless it may. */
function* leaders(
  board: Board,
  {
    mark,
    marks,
    out,
    across = false,
    most = { deg: Infinity, mm: Infinity },
  }: {
    mark: Mark;
    marks: readonly Ending[];
    out: Vec2;
    across?: boolean;
    most?: { deg: number; mm: number };
  },
): Generator<Placing> {
  for (const length of LEADER.lengthsMm)
    for (const deg of LEADER.turnsDeg) {
      if (length > most.mm || Math.abs(deg) > most.deg) continue;
      const turn = (deg * Math.PI) / 180;
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const dir: Vec2 = [c * out[0] - s * out[1], s * out[0] + c * out[1]];
      if (isOverCorner({ at: mark.at, dir, long: board.mm(length) }, marks)) continue;
      const tip = add2(mark.at, scale2(dir, board.mm(length)));
      const at = add2(tip, scale2(dir, board.mm(roomAlong(board, mark, dir) + 0.6)));
      if (!isOwn(at, { mark, marks, most: board.mm(NOT_ITS) })) continue;
      if (board.meets(add2(mark.at, scale2(dir, board.mm(OFF))), at, { outlinesAlone: across })) continue;
      yield {
        strokes: [path("dimension", [mark.at, tip])],
        labels: [lettered(board, mark, at)],
        extra: LEADER_EXTRA + (isOnSide(at, mark) ? 0 : OTHER_SIDE),
      };
    }
}

/** Does a leader run past a corner of the plate that is within its reach? */
const isOverCorner = (
  { at, dir, long }: { at: Vec2; dir: Vec2; long: number },
  marks: readonly Ending[],
): boolean =>
  marks.some(({ at: corner, isCorner = false }) => {
    const away = distance2(corner, at);
    return (
      isCorner && away > SAME_POINT_MM && away < long && dot2(dir, sub2(corner, at)) > PAST_CORNER * away
    );
  });

/** Half the room that a number takes in a direction. [mm of paper] */
function roomAlong(board: Board, { text }: Mark, [x, y]: Vec2): number {
  const cap = board.paper.capsMm.small;
  return (Math.abs(x) * textWidth(text, cap) + Math.abs(y) * cap * 1.3) / 2;
}

/** Aside so far that the number is clear of its own line carried on. */
function asideOf(board: Board, mark: Mark, out: Vec2): Vec2 {
  const across = left2(out);
  return scale2(across, board.mm(roomAlong(board, mark, across) + SIDEWAYS));
}

/** Middle of the number, so far out that its box just clears the edge in this direction. */
function placeOf(board: Board, { mark, out, step }: { mark: Mark; out: Vec2; step: number }): Vec2 {
  return add2(mark.at, scale2(out, board.mm(roomAlong(board, mark, out) + step)));
}

/** The least step at which neighbouring numbers do not crowd each other. */
function stride(board: Board, marks: readonly Mark[]): number {
  const cap = board.paper.capsMm.small;
  const needed = board.mm(Math.max(...marks.map((mark) => textWidth(mark.text, cap)), 0) + 1);
  const places = marks.map((mark) => placeOf(board, { mark, out: mark.out ?? [0, 0], step: CLEAR }));
  for (let every = 1; every < marks.length; every++) {
    const shown = places.filter((_, i) => i % every === 0);
    if (shown.every((p, i) => i === 0 || distance2(p, shown[i - 1] as Vec2) >= needed * 0.9)) return every;
  }
  return Math.max(1, marks.length - 1);
}
