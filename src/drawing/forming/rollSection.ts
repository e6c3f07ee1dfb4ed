import { add2, direction, left2, scale2, type Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { leader } from "../dimension/leader.ts";
import { lengthNumber, type Units, unitName } from "../format.ts";
import { textWidth } from "../lettering.ts";
import { type Box, circle, closed, type Drawing, line, path } from "../model.ts";
import type { Paper } from "../paper.ts";
import { NARROW_SCALES } from "../scale.ts";
import { fitSheet } from "../sheet.ts";
import { spread } from "../spread.ts";
import { bentPlate, concentric, turnOf } from "./bentPlate.ts";

/** A roll seen along its rolls: the top roll's centre at the origin, x towards the bending side, y up. */
export interface RollGeometry {
  readonly topRadiusMm: number;
  readonly bendingRadiusMm: number;
  /** Left out of the drawing where nobody has given it. */
  readonly pinchRadiusMm: number | null;
  /** A place of the bending roll's centre, how steeply it rises from there towards the top roll, and how far. */
  readonly originMm: readonly [number, number];
  readonly angleRad: number;
  readonly travelMm: number;
}

/** One end of the blank at one moment of rolling. Raises are counted along the slide from where the roll touches flat plate. */
export interface RollMoment {
  /** "Large end, first pass". */
  readonly title: string;
  /** From the slide's origin to where the roll touches the flat plate. [mm] */
  readonly flatUpMm: number;
  /** Inside radius of what has not gone through yet; null where it is flat. [mm] */
  readonly incomingMm: number | null;
  /** Inside radius that touches the roll at `bestMm`, and inside radius that the plate is to spring back to. [mm] */
  readonly touchingMm: number;
  readonly wantedMm: number;
  readonly lowMm: number;
  readonly bestMm: number;
  readonly highMm: number;
  /** Where the tilted roll stands at this end to start with; null where no tilt can be given. */
  readonly startMm: number | null;
}

export interface RollSections {
  readonly title: string;
  readonly description: string;
  readonly lines: readonly string[];
  readonly units: Units;
  /** The end of the rolls from which the plate is seen to move to the right; null where nobody knows. */
  readonly seenFrom: "drop end" | "fixed end" | null;
  readonly roll: RollGeometry;
  readonly thicknessMm: number;
  readonly moments: readonly RollMoment[];
}

/** Between sections, and the room for names above and figures beside each. [mm of paper] */
const [APART, ABOVE, BESIDE] = [5, 8, 27];
/** Below a section stands a roll's name, clear of the title of the next: in heights of a title's capitals. [-] */
const BELOW = 1.65;
/** The figures beside a section need so much height. [mm of paper] */
const COLUMN = 28;
/** The plate is drawn so far past the bending roll and before the pinch, in radii of the top roll. [-] */
const REACH = 1.5;
/** A mark of the slide, to either side of it. [mm of paper] */
const MARK = 1.6;

/** The bending roll's centre so far up its slide. [mm] */
export const centreAt = ({ originMm, angleRad }: RollGeometry, upMm: number): Vec2 => [
  originMm[0] - upMm * Math.cos(angleRad),
  originMm[1] + upMm * Math.sin(angleRad),
];

/** What a section takes up, without lettering. [mm] */
function roomOf(roll: RollGeometry, thicknessMm: number): Box {
  const { topRadiusMm: top, bendingRadiusMm: bending, pinchRadiusMm } = roll;
  const end = centreAt(roll, roll.travelMm);
  return {
    left: -REACH * top,
    right: Math.max(top, roll.originMm[0] + bending),
    bottom: Math.min(roll.originMm[1] - bending, -top - thicknessMm - 2 * (pinchRadiusMm ?? 0)),
    top: Math.max(top, end[1]),
  };
}

/** The rolls to scale with the plate between them: one section for each end and pass. */
export function rollSections(what: RollSections, { paper }: { paper: Paper }): Drawing {
  const { roll, thicknessMm, moments } = what;
  const room = roomOf(roll, thicknessMm);
  const columns = paper.name === "narrow" ? 1 : Math.min(2, moments.length);
  const rows = Math.ceil(moments.length / columns);
  const [wide, high] = [room.right - room.left, room.top - room.bottom];
  return fitSheet(
    {
      // The steps of ISO 5455 alone would leave much of the sheet empty; it allows those between as exceptions.
      paper: { ...paper, scales: NARROW_SCALES },
      core: { widthMm: columns * wide, heightMm: rows * high },
      text: { title: what.title, description: what.description, lines: what.lines },
    },
    (board) => {
      for (const [i, moment] of moments.entries()) {
        const at: Vec2 = [
          (i % columns) * (wide + board.mm(BESIDE + APART)),
          -Math.floor(i / columns) *
            (Math.max(high, board.mm(COLUMN)) + board.mm(ABOVE + BELOW * paper.capsMm.figure)),
        ];
        drawMoment(board, { what, moment, room, at });
      }
      // The first section names the rolls for all, where the figures leave room.
      if (moments[0]) nameRolls(board, what, moments[0]);
    },
  );
}

function drawMoment(
  board: Board,
  { what, moment, room, at }: { what: RollSections; moment: RollMoment; room: Box; at: Vec2 },
): void {
  const { roll, thicknessMm } = what;
  const { topRadiusMm: top, bendingRadiusMm: bending, pinchRadiusMm: pinch } = roll;
  const onSlide = (raise: number): Vec2 => add2(at, centreAt(roll, moment.flatUpMm + raise));
  const pinchLine: Vec2 = [at[0], at[1] - top];

  const touch = turnOf(
    { insideMm: moment.touchingMm, topMm: top },
    centreAt(roll, moment.flatUpMm + moment.bestMm),
  );
  const beyond = REACH * top;
  const plate = { pinchLine, thicknessMm, beforeMm: beyond, incomingMm: moment.incomingMm };
  const afterMm = touch * moment.touchingMm + 0.5 * beyond;
  board.draw(
    circle("outline", at, top),
    circle("outline", onSlide(moment.bestMm), bending),
    closed("outline", bentPlate({ ...plate, insideMm: moment.touchingMm, afterMm })),
    path("hidden", concentric({ ...plate, insideMm: moment.wantedMm, afterMm }, 0)),
  );
  const pinchAt: Vec2 = [at[0], at[1] - top - thicknessMm - (pinch ?? 0)];
  if (pinch !== null) board.draw(circle("outline", pinchAt, pinch));
  for (const [centre, radius] of [
    [at, top],
    ...(pinch === null ? [] : ([[pinchAt, pinch]] as const)),
  ] as const) {
    const arm = radius + board.mm(1.5);
    board.draw(
      line("centre", [centre[0] - arm, centre[1]], [centre[0] + arm, centre[1]]),
      line("centre", [centre[0], centre[1] - arm], [centre[0], centre[1] + arm]),
    );
  }
  const title = board.label(moment.title, [at[0] + room.left, at[1] + room.top + board.mm(ABOVE - 3.5)], {
    role: "name",
    anchor: "start",
  });
  board.put(moment.title, [{ strokes: [], labels: [title] }], Infinity);
  const free = concentric({ ...plate, insideMm: moment.wantedMm, afterMm }, 0).at(-1) as Vec2;
  drawSlide(board, { what, moment, onSlide, free, box: shifted(room, at) });
}

const shifted = ({ left, right, bottom, top }: Box, [x, y]: Vec2): Box => ({
  left: left + x,
  right: right + x,
  bottom: bottom + y,
  top: top + y,
});

/** Names and diameters of the rolls, in the section at the sheet's origin. */
function nameRolls(board: Board, { roll, thicknessMm, units }: RollSections, moment: RollMoment): void {
  const { topRadiusMm: top, bendingRadiusMm: bending, pinchRadiusMm: pinch } = roll;
  const named = (name: string, radius: number) => `${name} Ø${lengthNumber(2 * radius, units)}`;
  nameRoll(board, named("top", top), { centre: [0, 0], radius: top, besideDeg: AWAY_FROM_BEND });
  if (pinch !== null)
    nameRoll(board, named("pinch", pinch), {
      centre: [0, -top - thicknessMm - pinch],
      radius: pinch,
      besideDeg: AWAY_FROM_BEND,
    });
  nameRoll(board, named("bending", bending), {
    centre: centreAt(roll, moment.flatUpMm + moment.bestMm),
    radius: bending,
    besideDeg: BELOW_RIGHT,
  });
}

/** Where leaders come from: no leader crosses another roll. [degrees] */
const AWAY_FROM_BEND = [200, 160, 180, 230];
const BELOW_RIGHT = [-65, -80, -45, -90, -100, -25];

/** In small steps, for between the figures of one row of sections and the titles of the next there is little room. [mm of paper] */
const LEADERS = [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 16, 19, 26];

/** A roll's name and diameter within it, or led to from beside it. */
function nameRoll(
  board: Board,
  text: string,
  { centre, radius, besideDeg }: { centre: Vec2; radius: number; besideDeg: readonly number[] },
): void {
  const cap = board.paper.capsMm.small;
  const within = textWidth(text, cap) * board.unit < 1.8 * radius;
  const inside = [0.35, -0.35, 0.6, -0.6].map((share) => ({
    strokes: [],
    labels: [board.label(text, [centre[0], centre[1] + share * radius], { role: "name", size: "small" })],
  }));
  const beside = besideDeg.flatMap((deg) =>
    leader(board, {
      tip: add2(centre, scale2(direction((deg * Math.PI) / 180), radius)),
      text,
      directionsDeg: [deg],
      lengthsMm: LEADERS,
      role: "name",
    }).map((way) => ({ ...way, extra: 10 })),
  );
  board.put(text, [...(within ? inside : []), ...beside], Infinity);
}

/** The line that the bending roll's centre moves on, with marks at nought and at each setting, and their figures beside it. */
function drawSlide(
  board: Board,
  {
    what,
    moment,
    onSlide,
    free,
    box,
  }: {
    what: RollSections;
    moment: RollMoment;
    onSlide: (raise: number) => Vec2;
    /** The end of the arc that the plate springs back to. */
    free: Vec2;
    box: Box;
  },
): void {
  const { roll, units } = what;
  const along: Vec2 = [-Math.cos(roll.angleRad), Math.sin(roll.angleRad)];
  const across = scale2(left2(along), board.mm(MARK));
  const ends = [-moment.flatUpMm, roll.travelMm - moment.flatUpMm].map(onSlide) as [Vec2, Vec2];
  board.draw(line("centre", ...ends));
  const mark = (raise: number, kind: "thin" | "outline") => {
    const centre = onSlide(raise);
    board.draw(line(kind, add2(centre, across), add2(centre, scale2(across, -1))));
  };
  mark(-moment.flatUpMm, "thin");
  mark(roll.travelMm - moment.flatUpMm, "thin");
  const say = (mm: number) => lengthNumber(mm, units);
  const raises = [
    { raise: 0, text: "0 flat plate" },
    { raise: moment.lowMm, text: `low ${say(moment.lowMm)}` },
    { raise: moment.bestMm, text: `best ${say(moment.bestMm)}` },
    { raise: moment.highMm, text: `high ${say(moment.highMm)}` },
    ...(moment.startMm === null ? [] : [{ raise: moment.startMm, text: `tilted ${say(moment.startMm)}` }]),
  ];
  for (const { raise } of raises) mark(raise, raise === moment.startMm ? "outline" : "thin");
  const figures = [
    ...raises.map(({ raise, text }) => ({ from: onSlide(raise), text })),
    { from: free, text: `free R ${say(moment.wantedMm)}` },
  ].toSorted((a, b) => a.from[1] - b.from[1]);
  writeColumn(board, figures, box);
}

/** Figures one below the other beside a section, each led to its place. */
function writeColumn(board: Board, figures: readonly { from: Vec2; text: string }[], box: Box): void {
  const step = board.mm(1.75 * board.paper.capsMm.small);
  const heights = spread(
    figures.map(({ from }) => from[1]),
    figures.map(() => step),
  );
  // Within the section's own row, whatever it is led to.
  const floor = Math.min(box.bottom, box.top - board.mm(COLUMN));
  const over = Math.max(0, (heights.at(-1) as number) - box.top);
  const under = Math.max(0, floor - (heights[0] as number));
  const column = box.right + board.mm(2);
  for (const [i, { from, text }] of figures.entries()) {
    const y = (heights[i] as number) - over + (over > 0 ? 0 : under);
    const label = board.label(text, [column + board.mm(4), y], {
      role: "dimension",
      size: "small",
      anchor: "start",
    });
    board.put(
      text,
      [{ strokes: [path("dimension", [from, [column, y], [column + board.mm(3), y]])], labels: [label] }],
      Infinity,
    );
  }
}

/** At the foot of the sheet. */
export const sectionNote = ({ units, seenFrom }: Pick<RollSections, "units" | "seenFrom">): string =>
  `${seenFrom === null ? "The plate moves to the right" : `Seen from the ${seenFrom}, the plate moving to the right`}. Raises along the slide from the flat plate, in ${unitName(units)}: low as if the plate had sprung back already, high as if it were still fully bent, tilted where the straight roll, tilted for both ends, starts here: half the slant gets its own, both ends a little less. Dashed, and free R: what the plate springs back to, inside.`;
