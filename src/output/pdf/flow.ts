import type { Block } from "./block.ts";
import { SLACK_MM } from "./columnWidths.ts";
import type { Pdf } from "./document.ts";
import { type Area, paginated } from "./paginate.ts";
import { printable } from "./printable.ts";
import type { TilePaper } from "./tilePaper.ts";
import { fitted } from "./words.ts";

/** One cell of the title block at the foot of each page. */
export interface FootCell {
  readonly label: string;
  readonly value: string;
  /** Takes the room of two. */
  readonly wide?: boolean;
}

/** The frame from the paper's edges. [mm] */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const EVEN: Margins = { left: 9, right: 9, top: 9, bottom: 9 };
/** What is in the frame, from it. [mm] */
const PAD = 3;
/** From the frame down to the line of lettering below it. [mm] */
export const FOOT_BELOW_MM = 4.5;
/** A row of the title block, and how many cells stand in one. */
const CELL = { heightMm: 6.8, perRow: 8, padMm: 1.2 };
/** Lettering of a cell. [mm] */
const LABEL = { capMm: 1.75 };
const VALUE = { capMm: 2, bold: true };

/** What a page has for its blocks. [mm] */
export interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** How blocks are set on sheets. */
export interface Setting {
  readonly paper: TilePaper;
  readonly cells: readonly FootCell[];
  readonly margins?: Margins;
  /** Where the sheets of these blocks are counted below the frame: in the middle where the corner is somebody else's. */
  readonly counted?: "end" | "middle";
  /** Stands below the frame at the left of every sheet. */
  readonly below?: string | undefined;
  /** Do headings stand in the list of contents? */
  readonly bookmarks?: boolean;
}

/** What a page of this setting has for its blocks. */
export const roomOf = ({ paper, cells, margins = EVEN }: Setting): Room => ({
  widthMm: paper.widthMm - margins.left - margins.right - 2 * PAD,
  heightMm: paper.heightMm - margins.top - margins.bottom - rowsOf(cells).length * CELL.heightMm - 2 * PAD,
});

/** Blocks set on pages, to be drawn. */
export interface Flowed {
  readonly pages: number;
  /** Draws one of them, counted from 0, on the sheet at hand. */
  readonly draw: (page: number) => void;
}

/**
 * Blocks in their order, on as many framed pages as they take; nothing is drawn yet. A page begins where a block asks for
 * it (`null`), and a heading is not left alone at the foot of one.
 */
export function flowed(
  pdf: Pdf,
  blocks: readonly (Block | null)[],
  { paper, cells, margins = EVEN, counted = "end", bookmarks = true, below }: Setting,
): Flowed {
  const rows = rowsOf(cells);
  const room = roomOf({ paper, cells, margins });
  const area: Area = {
    x: margins.left + PAD,
    y: margins.top + PAD,
    widthMm: room.widthMm,
    bottom: margins.top + PAD + room.heightMm,
  };
  const pages = paginated(blocks, area);
  return {
    pages: pages.length,
    draw: (page) => {
      if (below !== undefined) {
        const at = [margins.left, paper.heightMm - margins.bottom + FOOT_BELOW_MM] as const;
        fitted(pdf, printable(below, pdf), at, { capMm: 1.6 }, area.widthMm / 2);
      }
      foot(pdf, { paper, rows, margins, counted, place: `${page + 1} of ${pages.length}` });
      for (const { block, y } of pages[page] ?? []) {
        if (bookmarks && block.bookmark !== undefined) pdf.bookmark(block.bookmark);
        block.draw(area.x, y, area.widthMm);
      }
    },
  };
}

/** The same, drawn at once on new sheets. */
export function flow(pdf: Pdf, blocks: readonly (Block | null)[], setting: Setting): void {
  const { pages, draw } = flowed(pdf, blocks, setting);
  for (let page = 0; page < pages; page++) {
    pdf.sheet(setting.paper.widthMm, setting.paper.heightMm);
    draw(page);
  }
}

/** Cells shared out into rows of the title block. */
function rowsOf(cells: readonly FootCell[]): FootCell[][] {
  const rows: FootCell[][] = [[]];
  let taken = 0;
  for (const one of cells) {
    const wide = one.wide ? 2 : 1;
    if (taken + wide > CELL.perRow) {
      rows.push([]);
      taken = 0;
    }
    rows.at(-1)?.push(one);
    taken += wide;
  }
  return rows.filter((row) => row.length > 0);
}

/**
 * Widths of the cells of a row: by their shares, but none narrower than its words while the others have room to spare. No
 * one cell asks for more than half of the row, however long a name somebody gave. [mm]
 */
function roomsOf(pdf: Pdf, row: readonly FootCell[], wide: number): number[] {
  const asked = row.map(({ label, value }) =>
    Math.min(
      wide / 2,
      Math.max(pdf.width(label, LABEL), pdf.width(printable(value, pdf), VALUE)) + 2 * CELL.padMm + SLACK_MM,
    ),
  );
  const shares = row.reduce((sum, one) => sum + (one.wide ? 2 : 1), 0);
  const even = row.map((one) => (wide * (one.wide ? 2 : 1)) / shares);
  const short = even.map((room, i) => Math.max(0, (asked[i] ?? 0) - room));
  const spare = even.map((room, i) => Math.max(0, room - (asked[i] ?? 0)));
  const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);
  const moved = Math.min(sum(short), sum(spare));
  if (moved === 0) return even;
  return even.map(
    (room, i) => room + (moved * (short[i] ?? 0)) / sum(short) - (moved * (spare[i] ?? 0)) / sum(spare),
  );
}

function foot(
  pdf: Pdf,
  {
    paper,
    rows,
    margins,
    counted,
    place,
  }: Required<Pick<Setting, "paper" | "margins" | "counted">> & {
    rows: readonly (readonly FootCell[])[];
    place: string;
  },
): void {
  const { left, top } = margins;
  const [wide, high] = [paper.widthMm - left - margins.right, paper.heightMm - top - margins.bottom];
  pdf.box([left, top], [wide, high], { widthMm: 0.5 });
  rows.forEach((row, i) => {
    const y = top + high - (rows.length - i) * CELL.heightMm;
    pdf.line([left, y], [left + wide, y], { widthMm: 0.25 });
    const rooms = roomsOf(pdf, row, wide);
    let x = left;
    row.forEach((one, k) => {
      const room = rooms[k] ?? 0;
      if (k > 0) pdf.line([x, y], [x, y + CELL.heightMm], { widthMm: 0.25 });
      fitted(pdf, one.label, [x + CELL.padMm, y + 1.9], LABEL, room - 2 * CELL.padMm);
      fitted(pdf, printable(one.value, pdf), [x + CELL.padMm, y + 4.7], VALUE, room - 2 * CELL.padMm);
      x += room;
    });
  });
  const below = top + high + FOOT_BELOW_MM;
  if (counted === "end") pdf.write(place, [left + wide, below], { capMm: 1.6, anchor: "end" });
  else pdf.write(`sheet ${place}`, [left + wide / 2, below], { capMm: 1.6, anchor: "middle" });
}
