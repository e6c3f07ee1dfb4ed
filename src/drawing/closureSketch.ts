import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Report } from "../report/report.ts";
import type { Board } from "./board.ts";
import { linearDimension } from "./dimension/linear.ts";
import { radiusDimension } from "./dimension/radius.ts";
import { dimension, plain, type Units, drawnUnit, unitName } from "./format.ts";
import { arc, closed, type Drawing, line } from "./model.ts";
import type { Paper } from "./paper.ts";
import { arcPoint } from "./pen.ts";
import { fitSheet } from "./sheet.ts";

type ClosureRow = Report["forming"]["closure"][number];

/** A row of the closure table that has its numbers, with what the sketch calls it. */
interface State {
  readonly title: string;
  readonly row: ClosureRow;
  readonly large: NonNullable<ClosureRow["large"]>;
}

/** Between the two sketches. [mm of paper] */
const BETWEEN = 16;
/** Points along a drawn wall. */
const WALL_STEPS = 96;

/** The start and the end of the window in which the first pass is stopped. */
function states({ forming }: Report): State[] {
  return ["start of the window", "end of the window"].flatMap((title) => {
    const row = forming.closure.find(({ mark }) => mark?.split(", ").includes(title));
    return row?.large ? [{ title, row, large: row.large }] : [];
  });
}

/**
 * The large end of a right cone, part-rolled, seen end on: at the start and at the end of the window of the first pass, with
 * the gap from inside corner to inside corner that the tape measures. Undefined where a part has no such window.
 */
export function closureSketch(report: Report, { paper }: { paper: Paper }): Drawing | undefined {
  const both = states(report);
  if (both.length === 0) return undefined;
  const { part } = report;
  const pieces = report.blanks.length;
  const stacked = paper.name === "narrow";
  const across = both.map(({ large }) => 2 * outerRadius(large));
  const total = across.reduce((sum, one) => sum + one, 0);
  const core = stacked
    ? { widthMm: Math.max(...across), heightMm: total }
    : { widthMm: total, heightMm: Math.max(...across) };
  return fitSheet(
    {
      paper,
      core,
      text: {
        title: `First pass of ${part.title}: how far to close it`,
        description: both
          .map(
            ({ title, row, large }) =>
              `At the ${title}, ${percent(row)} closed: gap at the large end ${dimension(large.insideGapMm, part.units)}, ` +
              `inside template radius ${dimension(large.insideLevelRadiusMm, part.units)}, in ${unitName(part.units)}.`,
          )
          .join(" "),
        lines: [
          part.title,
          `Large end after the first pass, seen end on${pieces > 1 ? ", one piece" : ""}; the small end thin. ` +
            `Measured inside, the piece released and supported. Sizes in ${drawnUnit(part.units)}.`,
        ],
      },
    },
    (board) => {
      let at: Vec2 = [0, 0];
      for (const [i, state] of both.entries()) {
        const radius = outerRadius(state.large);
        const [gap, before] = [board.mm(BETWEEN + (stacked ? 14 : 0)), both[i - 1]];
        if (before) {
          const step = outerRadius(before.large) + gap + radius;
          at = stacked ? [0, at[1] - step] : [at[0] + step, at[1] + radius - outerRadius(before.large)];
        }
        const away = stacked || both.length < 2 ? 0 : i === 0 ? -1 : 1;
        drawState(board, state, { at, pieces, units: part.units, away });
      }
    },
  );
}

/** The wall lies half inside, half outside its middle. [mm] */
const outerRadius = (end: State["large"]): number => 2 * end.levelRadiusMm - end.insideLevelRadiusMm;
const percent = (row: ClosureRow): string => `${plain(row.closed * 100, 1)} %`;

function drawState(
  board: Board,
  { title, row, large }: State,
  {
    at,
    pieces,
    units,
    away,
  }: {
    at: Vec2;
    pieces: number;
    units: Units;
    /** To the left or to the right, where nothing else stands; nought where there is nothing on either side. */
    away: -1 | 0 | 1;
  },
): void {
  // The gap is up, as on the roll; each piece sweeps its share of the turn.
  const across = Math.asin(Math.min(1, large.insideGapMm / 2 / large.insideLevelRadiusMm));
  // In the window one piece sweeps more than half a turn, one of several less.
  const half = pieces === 1 ? Math.PI - across : across;
  const [from, to] = [-Math.PI / 2 - half, -Math.PI / 2 + half];
  const wall = (radius: number): Vec2[] =>
    Array.from({ length: WALL_STEPS + 1 }, (_, i) =>
      arcPoint({ centre: at, radius }, from + ((to - from) * i) / WALL_STEPS),
    );
  const [outer, inner] = [outerRadius(large), large.insideLevelRadiusMm];
  board.draw(closed("outline", [...wall(outer), ...wall(inner).reverse()]));
  if (row.small) {
    const radius = row.small.insideLevelRadiusMm;
    board.draw(arc("thin", { centre: at, radius, fromRad: from, toRad: to }));
    for (const angle of [from, to])
      board.draw(
        line("thin", arcPoint({ centre: at, radius }, angle), arcPoint({ centre: at, radius: inner }, angle)),
      );
  }
  const arm = board.mm(3);
  const [x, y] = at;
  // Too short for a chain of dashes.
  board.draw(line("thin", [x - arm, y], [x + arm, y]), line("thin", [x, y - arm], [x, y + arm]));

  const gap = board.length(large.insideGapMm, units, "gap ");
  const top = Math.max(arcPoint({ centre: at, radius: outer }, to)[1], pieces === 1 ? y + outer : -Infinity);
  const corners = [
    arcPoint({ centre: at, radius: inner }, from),
    arcPoint({ centre: at, radius: inner }, to),
  ] as const;
  const clear = (top - corners[0][1]) / board.unit;
  const ways = linearDimension(board, {
    from: corners[0],
    to: corners[1],
    text: gap,
    offsetsMm: [clear + 8, clear + 12, 8, -8],
  });
  // A figure too long for its gap stands beside it, not between the two sketches, where it would be read as either's.
  const clearOfOther = [...ways].filter(({ labels }) =>
    labels.every((label) => (label.at[0] - x) * away >= -SAME_POINT_MM),
  );
  board.put(`gap at the ${title}`, clearOfOther.length > 0 ? clearOfOther : ways, Infinity);
  const cap = board.paper.capsMm.small;
  const foot = y - outer - board.mm(3 + cap);
  const lines = [`${percent(row)} closed`, title];
  for (const [i, text] of lines.entries()) {
    const label = board.label(text, [x, foot - board.mm(i * board.paper.capsMm.figure * 1.9)], {
      role: "name",
      size: i === 0 ? "figure" : "small",
    });
    board.put(text, [{ strokes: [], labels: [label] }], Infinity);
  }
  const tips = [-60, -120, -40, -140, -75, -105].map((deg) =>
    arcPoint({ centre: at, radius: inner }, (deg * Math.PI) / 180),
  );
  board.put(
    `radius at the ${title}`,
    radiusDimension(board, {
      start: at,
      tips,
      text: board.length(large.insideLevelRadiusMm, units, "R "),
      shares: [0.7, 0.6, 0.5],
      beyond: true,
    }),
    Infinity,
  );
}
