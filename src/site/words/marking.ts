import { unitName } from "../../drawing/format.ts";
import { together } from "../../drawing/together.ts";
import { inchFraction } from "../../geometry/inches.ts";
import { NOUGHT } from "../../output/origin.ts";
import type { MarkingRow, Report } from "../../report/report.ts";
import { degrees, numbersIn } from "./numbers.ts";
import { END_NAMES } from "./shapes.ts";

/** No tape has finer parts of an inch. */
const FINEST = 64;

/** One column of the marking table. */
export interface MarkingColumn {
  /** Under which it is asked how it was worked out. */
  readonly key:
    "plan" | "bend" | "ax" | "ay" | "bx" | "by" | "true" | "inPlan" | "nextA" | "nextB" | "diagonal";
  /** Heading over several columns, or null. */
  readonly group: string | null;
  readonly name: string;
  readonly cell: (row: MarkingRow) => string;
  /** What a tape in inches reads there; null where the cell says it all. */
  readonly tape?: (row: MarkingRow) => string | null;
}

export interface Marking {
  readonly columns: readonly MarkingColumn[];
  /** What is the same at every line, told once instead of in columns: all lines of a right cone are alike. */
  readonly alike: ((onTape: boolean) => string) | null;
  /** The columns that `alike` stands for. */
  readonly told: readonly MarkingColumn[];
  /** The pieces that have a pattern of their own, and their rows; a piece cut from an earlier pattern needs none. */
  readonly pieces: readonly number[];
  readonly rows: readonly MarkingRow[];
  /** How many tables stand side by side: few columns leave room for several. */
  readonly tables: number;
}

/** What the marking table has to tell, each value once. */
export function markingOf(report: Report): Marking {
  const { part, forming } = report;
  const pieces = report.blanks.filter(({ sameAs }) => sameAs === null).map(({ piece }) => piece);
  const rows = report.hand.rows.filter(({ piece }) => pieces.includes(piece));
  const say = numbersIn(part.units);
  const ends = END_NAMES[part.shape];
  const column = (
    key: MarkingColumn["key"],
    [group, name]: readonly [string, string],
    mm: (row: MarkingRow) => number | undefined,
  ): Required<MarkingColumn> => {
    const told = (row: MarkingRow, words: (mm: number) => string | null) => {
      const value = mm(row);
      return value === undefined ? null : words(value);
    };
    return {
      key,
      group,
      name,
      cell: (row) => told(row, (value) => say.column(value)) ?? "",
      tape: (row) => told(row, (value) => say.onTape(value) ?? finely(value)),
    };
  };
  /** What is marked from an edge is a place on the tape, however near: where thirty-seconds would be far off, to a sixty-fourth. */
  const finely = (value: number): string | null => {
    const fraction = inchFraction(value, FINEST);
    return part.units === "mm" || /^\d+$/.test(fraction) ? null : fraction;
  };
  const points = [
    column("ax", [ends.a, "x"], ({ a }) => a[0]),
    column("ay", [ends.a, "y"], ({ a }) => a[1]),
    column("bx", [ends.b, "x"], ({ b }) => b[0]),
    column("by", [ends.b, "y"], ({ b }) => b[1]),
  ];
  const NEXT = "to the next line";
  const lengths = [
    column("true", ["line length", "true"], ({ trueMm }) => trueMm),
    column("inPlan", ["line length", "in plan"], ({ planMm }) => planMm),
    column("nextA", [NEXT, ends.a], ({ next }) => next?.flat.aMm),
    column("nextB", [NEXT, ends.b], ({ next }) => next?.flat.bMm),
    column("diagonal", [NEXT, "diagonal"], ({ next }) => next?.flat.diagonalMm),
  ];
  const angle: MarkingColumn = {
    key: "plan",
    group: null,
    name: "Plan angle",
    cell: ({ planDeg }) => degrees(planDeg, 1),
  };
  const bends: MarkingColumn[] =
    forming.route === "brake" ? [{ key: "bend", group: null, name: "Bend", cell: bendCell(report) }] : [];
  const first = rows[0];
  const values = first ? lengths.map(({ cell }) => cell(first)) : [];
  const same = lengths.every(({ cell }, i) => rows.every((row) => ["", values[i]].includes(cell(row))));
  if (!same || rows.length < 3)
    return {
      columns: [angle, ...bends, ...points, ...lengths],
      alike: null,
      told: [],
      pieces,
      rows,
      tables: 1,
    };
  const toldBy = (onTape: boolean): string => {
    const [trueLength, inPlan, alongA, alongB, diagonal] = lengths.map(({ cell, tape }) => {
      const [value, read] = first ? [cell(first), onTape ? tape(first) : null] : ["", null];
      return together(read === null ? value : `${value} (${read})`);
    });
    const b = Number(values[3]) === 0 ? "" : `, ${alongB} along the ${ends.b}`;
    return `Every line is ${trueLength} ${say.unit} long, ${inPlan} in plan. To the next line: chord ${alongA} along the ${ends.a}${b}, diagonal ${diagonal}.`;
  };
  return {
    columns: [angle, ...bends, ...points],
    told: lengths,
    pieces,
    rows,
    tables: pieces.length > 1 ? 1 : bends.length > 0 ? 2 : 3,
    alike: toldBy,
  };
}

/** What the plate turns at a line; in brackets along a seam edge, which no line inside the plate bends; nothing on a flat. */
function bendCell({ hand: { rows } }: Report): (row: MarkingRow) => string {
  const last = new Map(rows.map(({ piece, number }) => [piece, number]));
  return ({ piece, number, bendDeg }) => {
    const text = degrees(bendDeg, 1);
    if (Number.parseFloat(text) === 0) return "";
    return number === 1 || number === last.get(piece) ? `(${text})` : text;
  };
}

/**
 * What a reader of the marking table has to know beforehand, in sentences; as few words as a page has room for that is
 * printed from a browser, where nothing shrinks beside them, or with all that a tape reads and how the brake counts its lines.
 */
export function markingSentences(report: Report, { brief }: { readonly brief: boolean }): string[] {
  const { hand, part, forming } = report;
  const { columns, alike } = markingOf(report);
  const { gap = 0, lap = 0 } = part.seam ?? {};
  const sentences = [
    `${NOUGHT}, ${unitName(part.units)};`,
    `${hand.divisions} divisions of the whole round.`,
    gap > 0 || lap > 0
      ? `The first and last line of a piece, along its seam edges, stand before the ${gap > 0 ? "gap is taken off" : "lap is added"}: the cut corners are in its CSV file.`
      : "",
    columns.some(({ name }) => name === "Bend")
      ? "Bend: that of the line’s whole zone, half way to the lines on either side; in brackets what is left along a seam edge."
      : "",
    forming.route === "brake" && !brief
      ? "The brake’s bend lines lie between these lines and are numbered on their own."
      : "",
    alike?.(!brief) ?? "",
  ];
  return sentences.filter((sentence) => sentence !== "");
}
