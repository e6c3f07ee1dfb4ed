import { add2, distance2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";
import type { Board, Placing } from "../board.ts";
import { boxOf, height, join, width } from "../box.ts";
import { arrowhead } from "../dimension/arrow.ts";
import { leader } from "../dimension/leader.ts";
import { closed, type Drawing, line } from "../model.ts";
import type { Paper } from "../paper.ts";
import { along, edgePaths, endsOf, isSeam, nameAlong } from "../pattern/edges.ts";
import { fitSheet } from "../sheet.ts";

/** How a blank lies on the rolls for one pass, seen from above. */
interface OnRolls {
  /** "First pass". */
  readonly title: string;
  readonly blank: Blank;
  /** The hand at which the small end lies, for whoever stands where the plate goes in. */
  readonly smallAt: "left" | "right";
  /** The seam edge that lies ahead. */
  readonly leads: 1 | 2;
}

export interface RollsFromAbove {
  readonly title: string;
  readonly passes: readonly OnRolls[];
  /** The hand at which the drop end is. */
  readonly dropEnd: "left" | "right";
  readonly rollFaceMm: number;
  /** From the end of the roll face to the small edge. */
  readonly stopMm: number;
  readonly topRadiusMm: number;
  /** From the pinch to where the bending roll touches the flat plate, where the leading edge lies. */
  readonly armMm: number;
  /** The leading seam edge from parallel to the rolls, its large end ahead. */
  readonly turnedRad: number;
  /** Why it is laid so, a sentence after the note; empty where it is laid as usual. */
  readonly why: string;
}

const NOTE =
  "Seen from above; you stand below, where the plate goes in. Inside up, the small edge on the stop (black) at the pinch; chain-dotted the bending roll. For the second pass the piece is drawn flat.";

/** At the foot of the sheet. */
export const aboveNote = ({ why }: Pick<RollsFromAbove, "why">): string => `${NOTE}${why}`;

/** Where a name has no room along its edge it is pointed from. */
const POINTED_DEG = [-90, -60, -120, -30, -150, 0, 180, 30, 150, 60, 120, 90];

/** What that costs more, in the board's measure. */
const POINTED = 60;

/** Between the passes; the stop and the arrow of the plate's way. [mm of paper] */
const [APART, ARROW] = [36, 12];
/** Narrower than this between its ends a blank is a strip, in which nobody could tell whose a name is. [mm of paper] */
const STRIP = 14;
const STOP = { wide: 1.4, long: 5 };

/** A seam edge of a blank: its corner at the large end, and at the small one, where the line next to it ends. */
function seamEnds(blank: Blank, seam: 1 | 2): readonly [Vec2, Vec2] {
  const points = edgePaths(blank).find(({ name }) => name === `seam ${seam}`)?.points;
  const line = seam === 1 ? blank.lines[0] : blank.lines.at(-1);
  const [p, q] = [points?.[0], points?.at(-1)];
  if (!p || !q || !line) throw new RangeError(`a blank without seam ${seam}, or without lines`);
  return distance2(p, line.to) < distance2(q, line.to) ? [q, p] : [p, q];
}

/** Where an outline crosses the pinch, which runs along y = 0, nearest to one end of the rolls; null where it does not. */
function crossing(outline: readonly Vec2[], hand: -1 | 1): number | null {
  const crossings = outline.flatMap(([x1, y1], i) => {
    const [x2, y2] = outline[(i + 1) % outline.length] ?? [x1, y1];
    return y1 > 0 === y2 > 0 ? [] : [x1 + ((x2 - x1) * y1) / (y1 - y2)];
  });
  return crossings.length === 0 ? null : hand * Math.max(...crossings.map((x) => hand * x));
}

/**
 * The same blank with its inside up, turned until the small end points to one hand and the leading edge lies along the rolls,
 * or as far askew as it is to lie; pushed along them until its small edge bears on the stop, at the pinch.
 */
function laid(
  { blank, smallAt, leads }: OnRolls,
  { rollFaceMm, stopMm, armMm, turnedRad }: RollsFromAbove,
): Blank {
  const mirrored = blank.faceUp === "outside";
  const up = ([x, y]: Vec2): Vec2 => (mirrored ? [-x, y] : [x, y]);
  const [large, small] = seamEnds(blank, leads).map(up) as [Vec2, Vec2];
  const hand = smallAt === "left" ? -1 : 1;
  const [cos, sin] = [Math.cos(turnedRad), hand * Math.sin(turnedRad)];
  const [along, across] = unit2(sub2(small, large));
  // So much turned the small end of the edge lies further back than the large one.
  const [c, s] = [along * cos - across * sin, across * cos + along * sin];
  const turn = ([x, y]: Vec2): Vec2 => [hand * (c * x + s * y), hand * (c * y - s * x)];
  const stopX = smallAt === "left" ? stopMm : rollFaceMm - stopMm;
  const ahead = sub2([stopX, armMm], turn(large));
  const bears = crossing(
    blank.outline.map((point) => add2(turn(up(point)), ahead)),
    hand,
  );
  // A blank that does not come back to the pinch bears with its corner.
  const move = add2(ahead, [stopX - (bears ?? add2(turn(small), ahead)[0]), 0]);
  const place = (p: readonly [number, number]): [number, number] => {
    const [x, y] = add2(turn(up(p)), move);
    return [x, y];
  };
  const outline = blank.outline.map(place);
  if (!mirrored) return { ...blank, outline };
  // Seen from the other face the outline runs the other way round.
  const count = outline.length;
  const edges = blank.edges.map((edge, i) => {
    const next = blank.edges[(i + 1) % blank.edges.length]?.start ?? 0;
    return { ...edge, start: count - 1 - (next % count) };
  });
  return { ...blank, outline: outline.toReversed(), edges: edges.toReversed() };
}

/**
 * The rolls seen from above with the blank on them, for each pass: which edge lies ahead, where the small end and the stop
 * are, and which way the plate goes. Whoever loads it stands below.
 */
export function onRolls(what: RollsFromAbove, { paper }: { paper: Paper }): Drawing {
  const { passes, rollFaceMm, topRadiusMm } = what;
  const rolls: Vec2[] = [
    [0, -topRadiusMm],
    [rollFaceMm, topRadiusMm],
  ];
  const all = passes.map((pass) => ({ pass, blank: laid(pass, what) }));
  const boxes = all.map(({ blank }) => join(boxOf(rolls), boxOf(blank.outline)));
  const stacked = paper.name === "narrow";
  const sum = (sizes: readonly number[]) => sizes.reduce((total, one) => total + one, 0);
  const [wide, high] = [boxes.map(width), boxes.map(height)];
  return fitSheet(
    {
      paper,
      core: stacked
        ? { widthMm: Math.max(...wide), heightMm: sum(high) }
        : { widthMm: sum(wide), heightMm: Math.max(...high) },
      text: {
        title: what.title,
        description: passes
          .map(
            ({ title, smallAt, leads }) =>
              `${title}: inside up, seam edge ${leads} ahead, small end at the ${smallAt} hand on the stop.`,
          )
          .join(" "),
        lines: [what.title, aboveNote(what)],
      },
    },
    (board) => {
      let moved = 0;
      for (const [i, { pass, blank }] of all.entries()) {
        const box = boxes[i] as ReturnType<typeof boxOf>;
        const at: Vec2 = stacked ? [0, moved - box.top] : [moved - box.left, 0];
        drawPass(board, what, { pass, blank, at });
        moved += stacked ? -(height(box) + board.mm(APART)) : width(box) + board.mm(APART);
      }
    },
  );
}

function drawPass(
  board: Board,
  { rollFaceMm, topRadiusMm, armMm, stopMm, dropEnd }: RollsFromAbove,
  { pass, blank, at }: { pass: OnRolls; blank: Blank; at: Vec2 },
): void {
  const move = ([x, y]: readonly [number, number]): [number, number] => [x + at[0], y + at[1]];
  const here: Blank = { ...blank, outline: blank.outline.map(move) };
  const rectangle = (x1: number, x2: number, y1: number, y2: number) =>
    (
      [
        [x1, y1],
        [x2, y1],
        [x2, y2],
        [x1, y2],
      ] as const
    ).map(move);
  board.draw(closed("outline", here.outline));
  board.draw(closed("thin", rectangle(0, rollFaceMm, -topRadiusMm, topRadiusMm)));
  board.draw(line("centre", move([0, armMm]), move([rollFaceMm, armMm])));
  const [side, x] = pass.smallAt === "left" ? [-1, stopMm] : [1, rollFaceMm - stopMm];
  const thick = side * board.mm(STOP.wide);
  const long = board.mm(STOP.long);
  board.draw(closed("arrow", rectangle(x, x + thick, -long / 2, long / 2)));
  const edges = edgePaths(here);
  const [a, b] = endsOf(edges);
  const strip = a && b && distance2(along(a.points, 0.5).at, along(b.points, 0.5).at) < board.mm(STRIP);
  // What leads comes first: the steps speak of it most.
  for (const edge of edges.toSorted((p, q) => Number(isSeam(q)) - Number(isSeam(p)))) {
    const text = edge.name === `seam ${pass.leads}` ? `${edge.name} ahead` : edge.name;
    const insideToo = isSeam(edge) || !strip;
    const clearMm = insideToo ? [1.6, 3, -1.6, -3, 5, -5, 8] : [-1.6, -3, -5, -8];
    const pointed = pointedAt(board, along(edge.points, 0.5).at, text);
    board.put(
      text,
      [...nameAlong(board, { ...edge, name: text }, { clearMm, insideToo }), ...pointed],
      Infinity,
    );
  }
  const name = (text: string, places: readonly Vec2[], anchor: "start" | "middle" | "end", tip?: Vec2) =>
    board.put(
      text,
      [
        ...places.map((place) => ({
          strokes: [],
          labels: [board.label(text, move(place), { role: "name", size: "small", anchor })],
        })),
        ...(tip ? pointedAt(board, move(tip), text) : []),
      ],
      Infinity,
    );
  const top = Math.max(topRadiusMm, armMm);
  const fixedAt = dropEnd === "left" ? "right" : "left";
  for (const [text, hand] of [
    ["drop end", dropEnd],
    ["fixed end", fixedAt],
  ] as const) {
    const beside = hand === "left" ? -board.mm(2) : rollFaceMm + board.mm(2);
    const rows = [0, armMm, top + board.mm(5), -topRadiusMm - board.mm(4)];
    name(
      text,
      rows.map((y): Vec2 => [beside, y]),
      hand === "left" ? "end" : "start",
      [hand === "left" ? 0 : rollFaceMm, 0],
    );
  }
  name(
    pass.title,
    [9, 13, 17].map((up): Vec2 => [rollFaceMm / 2, top + board.mm(up)]),
    "middle",
  );
  // The blank lies round its small end: before the other end of the rolls it is free.
  const free = pass.smallAt === "left" ? [0.85, 0.75, 0.95, 0.65, 0.5] : [0.15, 0.25, 0.05, 0.35, 0.5];
  board.put(
    "way of the plate",
    free.flatMap((share) =>
      [4, 10].map((down) => wayOf(board, move([share * rollFaceMm, -topRadiusMm - board.mm(down)]))),
    ),
    Infinity,
  );
}

const pointedAt = (board: Board, tip: Vec2, text: string): Placing[] =>
  leader(board, { tip, text, directionsDeg: POINTED_DEG, lengthsMm: [6, 10, 15, 21], role: "name" }).map(
    (way) => ({ ...way, extra: POINTED }),
  );

/** The way that the plate goes: up, away from whoever loads it. */
function wayOf(board: Board, tip: Vec2): Placing {
  const tail = sub2(tip, [0, board.mm(ARROW)]);
  return {
    strokes: [line("dimension", tail, sub2(tip, [0, board.mm(1)])), arrowhead(tip, [0, 1], board.unit)],
    labels: [board.label("plate goes", sub2(tail, [0, board.mm(3)]), { role: "note", size: "small" })],
  };
}
