import type { Column, ReckonerTable } from "../../tables/table.ts";

/** A heading over one or more columns. */
interface Heading {
  readonly text: string;
  /** Columns below it. */
  readonly span: number;
  /** Without a heading of its own below: it reaches down to the table. */
  readonly alone: boolean;
  readonly unit?: string | undefined;
}

/** The upper row of headings: neighbours of one group share theirs. */
export function upperRow(columns: readonly Column[]): Heading[] {
  const row: Heading[] = [];
  for (const { group, head, unit } of columns) {
    const last = row.at(-1);
    if (group === undefined) row.push({ text: head, span: 1, alone: true, unit });
    else if (last && !last.alone && last.text === group)
      row[row.length - 1] = { ...last, span: last.span + 1 };
    else row.push({ text: group, span: 1, alone: false });
  }
  return row;
}

/** Does a group, or a column of its own, begin here? There a line parts the columns. */
export const begins = (columns: readonly Column[], i: number): boolean =>
  i > 0 && (columns[i]?.group === undefined || columns[i].group !== columns[i - 1]?.group);

const FIVE = 5;

/** Does a new block of rows begin with this row? A firmer line parts them. */
export const newBlock = ({ block, rows }: ReckonerTable, row: number): boolean =>
  row > 0 && (block === undefined ? row % FIVE === 0 : rows[row]?.[block] !== rows[row - 1]?.[block]);

/** What the row that is reckoned step by step is looked up by: "Half angle 20°; thickness 3 mm." */
export const workedEntries = ({ columns, rows, worked, entries }: ReckonerTable): string =>
  `${columns
    .slice(0, entries)
    .map(
      ({ head, group, unit }, i) =>
        `${group === undefined ? head : `${group}, ${head}`} ${rows[worked.row]?.[i] ?? ""}${unit === undefined ? "" : unit === "°" ? unit : ` ${unit}`}`,
    )
    .join("; ")}.`;
