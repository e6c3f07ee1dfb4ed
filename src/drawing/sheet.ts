import { type Board, createBoard } from "./board.ts";
import { height, width } from "./box.ts";
import { type Projection, projectionSign, SIGN_WIDTH } from "./projectionSign.ts";
import { wrapText } from "./lettering.ts";
import type { Box, Drawing, LetterSize } from "./model.ts";
import type { Paper } from "./paper.ts";
import { fittingScales, type Scale } from "./scale.ts";

/** Between the drawing and the edge of its sheet. [mm of paper] */
const MARGIN = 2;
/** Between the drawing and the lines at its foot. [mm of paper] */
const ABOVE_FOOT = 6;
/** From one line of lettering to the next, over the height of its capitals. [-] */
const LEADING = 1.9;

interface SheetText {
  readonly title: string;
  readonly description: string;
  /** At the foot: what is drawn, then remarks. The scale is added. */
  readonly lines: readonly string[];
  /** What is said all the same where the foot states the scale alone: which piece, which face. */
  readonly brief?: string;
}

export interface SheetOptions {
  readonly paper: Paper;
  /** Size of what is drawn, without dimensions and lettering. [mm of the part] */
  readonly core: { readonly widthMm: number; readonly heightMm: number };
  readonly text: SheetText;
  /** A picture is not to scale and says so. */
  readonly toScale?: boolean;
  /** A plot is drawn in millimetres of paper and is read off its axes: its foot states no scale. */
  readonly plot?: boolean;
  /** Show the sign of the projection at the foot. */
  readonly projection?: Projection;
  /**
   * A drawing of nearly the same, on the same paper. It is drawn at that scale, and what lies where it lay before is not looked
   * for elsewhere, as long as all that goes: quick, and good enough for the moment between two keys.
   */
  readonly before?: Drawing | undefined;
}

/** Scales beyond this many times the first are not tried: lettering alone takes the room then. [-] */
const FURTHEST = 8;

/** What a plot says in place of its scale. */
const BY_AXES = "by its axes";

/** Draw at the largest scale at which everything, lettering included, fits the paper; then the lines at the foot. */
export function fitSheet(options: SheetOptions, draw: (board: Board) => void): Drawing {
  const { paper, core, text } = options;
  const room = [paper.widthMm - 2 * MARGIN, paper.heightMm] as const;
  const scales = scalesFor(options, room);
  // A board that runs over its paper is given up at once; one that does is looked at only where none keeps within it.
  const found =
    best(scales, { paper, room, draw, strict: true, before: options.before }) ??
    best(scales, { paper, room, draw });
  if (!found) throw new RangeError(`no scale for ${core.widthMm} × ${core.heightMm} mm`);
  const { board, scale } = found;
  board.open();
  const toScale = options.toScale ?? true;
  const stated = options.plot ? BY_AXES : toScale ? scale.text : "not to scale";
  return finish(board, {
    paper,
    text,
    stated,
    content: board.extent(),
    ...(options.projection && { sign: options.projection }),
  });
}

/** The scales that are tried, the largest first: from that of a drawing before on, where there is one. */
function scalesFor({ paper, core, before }: SheetOptions, room: readonly [number, number]): readonly Scale[] {
  const scales = fittingScales(paper.scales, { ...core, room });
  const from = scales.findIndex(({ unit }) => unit === before?.unit);
  return from > 0 ? scales.slice(from) : scales;
}

interface Found {
  readonly board: Board;
  readonly scale: Scale;
  /** By how much it is too large. [mm of paper] */
  readonly over: number;
}

/** Thrown out of a drawing that has run over its paper, where nothing more is wanted of it. */
const RUN_OVER = new RangeError("a drawing has run over its paper");
const giveUp = (): never => {
  throw RUN_OVER;
};

/** Draws as far as it keeps within its paper. */
function drawWithin(board: Board, draw: (board: Board) => void): void {
  try {
    draw(board);
  } catch (error) {
    if (error !== RUN_OVER) throw error;
  }
}

/** The drawing at the largest scale at which it keeps within its paper; else, unless that is asked for, the one that runs over least. */
function best(
  scales: readonly Scale[],
  {
    paper,
    room,
    draw,
    strict = false,
    before,
  }: {
    paper: Paper;
    room: readonly [number, number];
    draw: (board: Board) => void;
    strict?: boolean;
    before?: Drawing | undefined;
  },
): Found | undefined {
  let found: Found | undefined;
  for (const scale of scales) {
    if (scale.unit > FURTHEST * (scales[0] as Scale).unit && (found || strict)) break;
    const limit = [room[0] * scale.unit, room[1] * scale.unit] as const;
    const puts = before?.unit === scale.unit ? before.puts : undefined;
    const board = createBoard(paper, scale.unit, strict ? { room: limit, giveUp, before: puts } : {});
    drawWithin(board, draw);
    if (strict && board.isOver()) continue;
    const content = board.extent();
    const over =
      Math.max(0, width(content) / scale.unit - room[0]) +
      Math.max(0, height(content) / scale.unit - room[1]);
    if (over < (found?.over ?? Infinity)) found = { board, scale, over };
    if (over === 0 || strict) break;
  }
  return found;
}

function finish(
  board: Board,
  what: { paper: Paper; text: SheetText; stated: string; content: Box; sign?: Projection },
): Drawing {
  const { mm } = board;
  const { paper, text, stated, content, sign } = what;
  const sheetWidth = Math.max(
    Number.isFinite(paper.widthMm) ? mm(paper.widthMm) : 0,
    width(content) + mm(2 * MARGIN),
  );
  const left = (content.left + content.right - sheetWidth) / 2;
  let y = content.bottom - mm(ABOVE_FOOT);
  if (sign)
    board.draw(
      ...projectionSign([left + sheetWidth - mm(MARGIN + SIGN_WIDTH / 2), y - mm(2)], board.unit, sign),
    );
  const write = (one: string, size: LetterSize, role: "title" | "note"): void => {
    const cap = paper.capsMm[size];
    const taken = 2 * MARGIN + (sign ? SIGN_WIDTH : 0);
    for (const part of wrapText(one, mm(cap), sheetWidth - mm(taken))) {
      const label = board.label(part, [left + mm(MARGIN), y], { role, size, anchor: "start" });
      board.put(part, [{ strokes: [], labels: [label] }]);
      y -= mm(cap * LEADING);
    }
  };
  const [name = "", ...rest] = paper.foot === "scale" ? [] : text.lines;
  const briefly = paper.foot === "scale" && text.brief !== undefined ? `${text.brief}. ` : "";
  if (name !== "") write(name, "figure", "title");
  for (const one of rest) write(one, "small", "note");
  if (text.lines.length > 0 && stated !== BY_AXES)
    write(`${briefly}Scale ${stated}${scaleHolds(paper, stated)}`, "small", "note");
  const foot = Math.min(content.bottom, board.extent().bottom) - mm(MARGIN);
  return {
    title: text.title,
    description: text.description,
    strokes: board.strokes,
    labels: board.labels,
    lines: board.lines,
    extent: { left, right: left + sheetWidth, top: content.top + mm(MARGIN), bottom: foot },
    unit: board.unit,
    scale: stated,
    paperWidthMm: sheetWidth / board.unit,
    dropped: board.dropped,
    puts: board.puts,
  };
}

/** A scale holds at one width only. */
const scaleHolds = (paper: Paper, stated: string): string =>
  stated.includes(":") && Number.isFinite(paper.widthMm) ? `, picture ${paper.widthMm} mm wide` : "";
