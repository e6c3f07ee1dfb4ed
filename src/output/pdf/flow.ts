import type { Block } from "./block.ts";
import type { Pdf } from "./document.ts";
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

/** The frame from the paper's edge, and what is in it from the frame. [mm] */
const [FRAME, PAD] = [9, 3];
const GAP = 1.7;
/** A row of the title block, and how many cells stand in one. */
const CELL = { heightMm: 6.8, perRow: 8 };

/** A page's place for its blocks. */
interface Area {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly bottom: number;
}

/**
 * Blocks in their order, on as many framed pages as they take. A page begins where a block asks for it (`null`), and a
 * heading is not left alone at the foot of one.
 */
export function flow(
  pdf: Pdf,
  blocks: readonly (Block | null)[],
  { paper, cells }: { paper: TilePaper; cells: readonly FootCell[] },
): void {
  const rows = rowsOf(cells);
  const area: Area = {
    x: FRAME + PAD,
    y: FRAME + PAD,
    widthMm: paper.widthMm - 2 * (FRAME + PAD),
    bottom: paper.heightMm - FRAME - rows.length * CELL.heightMm - PAD,
  };
  const pages = paginate(blocks, area);
  pages.forEach((page, i) => {
    pdf.sheet(paper.widthMm, paper.heightMm);
    foot(pdf, { paper, rows, place: `${i + 1} of ${pages.length}` });
    for (const { block, y } of page) {
      if (block.bookmark !== undefined) pdf.bookmark(block.bookmark);
      block.draw(area.x, y, area.widthMm);
    }
  });
}

interface Laid {
  readonly block: Block;
  readonly y: number;
}

function paginate(blocks: readonly (Block | null)[], area: Area): Laid[][] {
  const pages: Laid[][] = [[]];
  const { widthMm, bottom } = area;
  let y = area.y;
  const turn = (): void => {
    pages.push([]);
    y = area.y;
  };
  const lay = (block: Block): void => {
    pages.at(-1)?.push({ block, y });
    y += block.height(widthMm) + GAP;
  };
  const queue = [...blocks];
  for (let block = queue.shift(); block !== undefined; block = queue.shift()) {
    if (block === null) {
      if ((pages.at(-1)?.length ?? 0) > 0) turn();
      continue;
    }
    const next = queue[0];
    const needed =
      block.height(widthMm) + (block.withNext && next ? GAP + leastOf(next, widthMm, bottom - area.y) : 0);
    if (y + needed <= bottom || (pages.at(-1)?.length === 0 && !block.split)) {
      lay(block);
      continue;
    }
    const parts = block.split?.(widthMm, bottom - y);
    if (parts) {
      lay(parts[0]);
      queue.unshift(parts[1]);
      turn();
    } else if (pages.at(-1)?.length === 0) lay(block);
    else {
      turn();
      queue.unshift(block);
    }
  }
  return pages.filter((page) => page.length > 0);
}

/** Height of the first part of a block that may stand under a heading. */
function leastOf(block: Block, widthMm: number, roomMm: number): number {
  const whole = block.height(widthMm);
  if (!block.split) return Math.min(whole, roomMm);
  return Math.min(whole, 25);
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

function foot(
  pdf: Pdf,
  { paper, rows, place }: { paper: TilePaper; rows: readonly (readonly FootCell[])[]; place: string },
): void {
  const [wide, high] = [paper.widthMm - 2 * FRAME, paper.heightMm - 2 * FRAME];
  pdf.box([FRAME, FRAME], [wide, high], { widthMm: 0.5 });
  rows.forEach((row, i) => {
    const y = FRAME + high - (rows.length - i) * CELL.heightMm;
    pdf.line([FRAME, y], [FRAME + wide, y], { widthMm: 0.25 });
    const shares = row.reduce((sum, one) => sum + (one.wide ? 2 : 1), 0);
    let x = FRAME;
    row.forEach((one, k) => {
      const room = (wide * (one.wide ? 2 : 1)) / shares;
      if (k > 0) pdf.line([x, y], [x, y + CELL.heightMm], { widthMm: 0.25 });
      pdf.write(one.label, [x + 1.2, y + 1.8], { capMm: 1.4 });
      fitted(pdf, printable(one.value, pdf.holds), [x + 1.2, y + 4.7], { capMm: 2, bold: true }, room - 2.4);
      x += room;
    });
  });
  pdf.write(place, [paper.widthMm - FRAME, paper.heightMm - FRAME / 2], { capMm: 1.6, anchor: "end" });
}
