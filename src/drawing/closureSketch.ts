import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { add2, cross2, dot2, sub2, unit2, type Vec2 } from "../geometry/vector.ts";
import type { Report } from "../report/report.ts";
import type { Board } from "./board.ts";
import { linearDimension } from "./dimension/linear.ts";
import { radiusDimension } from "./dimension/radius.ts";
import { dimension, plain, type Units, drawnUnit, unitName } from "./format.ts";
import { closed, type Drawing, line, path } from "./model.ts";
import type { Paper } from "./paper.ts";
import { arcPoint } from "./pen.ts";
import { type ClosureRow, type Rolled, rolledRim } from "./rolledRim.ts";
import { fitSheet } from "./sheet.ts";

/** A row of the closure table that has its numbers, with what the sketch calls it. */
interface State {
  readonly title: string;
  readonly row: ClosureRow;
  readonly large: NonNullable<ClosureRow["large"]>;
}

/** Between the two sketches. [mm of paper] */
const BETWEEN = 16;

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
            `Measured inside, the piece released and supported.${ledWords(both, part.units)} Sizes in ${drawnUnit(part.units)}.`,
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
        drawState(board, state, { at, report, away });
      }
    },
  );
}

/** Turned so that the gap between these two lies level on top, as on the roll. */
function turnedUp([one, other]: readonly [Vec2, Vec2], at: Vec2): (points: readonly Vec2[]) => Vec2[] {
  const along = unit2(sub2(other, one));
  return (points) => points.map((point) => add2(at, [dot2(point, along), cross2(along, point)]));
}

/** The wall lies half inside, half outside its middle. [mm] */
const outerRadius = (end: State["large"]): number => 2 * end.levelRadiusMm - end.insideLevelRadiusMm;

/** What the gaps are told with. */
function ledWords(all: readonly State[], units: Units): string {
  const leadMm = Math.max(...all.map(({ row }) => row.leadMm));
  return leadMm > 0 ? ` One edge with its straight lead, ${dimension(leadMm, units)}.` : "";
}

const percent = (row: ClosureRow): string => `${plain(row.closed * 100, 1)} %`;

function drawState(
  board: Board,
  { title, row, large }: State,
  {
    at,
    report,
    away,
  }: {
    at: Vec2;
    report: Rolled;
    /** To the left or to the right, where nothing else stands; nought where there is nothing on either side. */
    away: -1 | 0 | 1;
  },
): void {
  const { units } = report.part;
  const [outer, inner] = [outerRadius(large), large.insideLevelRadiusMm];
  const rim = rolledRim(report, row, large);
  const across = rim(inner);
  const up = turnedUp([across[0] ?? at, across.at(-1) ?? at], at);
  const [outside, inside] = [up(rim(outer)), up(across)];
  board.draw(closed("outline", [...outside, ...inside.toReversed()]));
  const [one, other] = [inside[0] ?? at, inside.at(-1) ?? at];
  if (row.small) {
    const small = up(rolledRim(report, row, row.small)(row.small.insideLevelRadiusMm));
    board.draw(path("thin", small));
    board.draw(line("thin", small[0] ?? at, one), line("thin", small.at(-1) ?? at, other));
  }
  const arm = board.mm(3);
  const [x, y] = at;
  // Too short for a chain of dashes.
  board.draw(line("thin", [x - arm, y], [x + arm, y]), line("thin", [x, y - arm], [x, y + arm]));

  const gap = board.length(large.insideGapMm, units, "gap ");
  const top = Math.max(...outside.map(([, high]) => high));
  const clear = (top - one[1]) / board.unit;
  const ways = linearDimension(board, {
    from: one,
    to: other,
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
