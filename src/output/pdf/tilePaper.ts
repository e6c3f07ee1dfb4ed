/** A paper that a pattern is tiled on, upright. */
export interface TilePaper {
  /** As in the file's name. */
  readonly id: string;
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** ISO 216, and the American sizes of ANSI/ASME Y14.1 (Letter 8-1/2 × 11 in, Tabloid 11 × 17 in, D 22 × 34 in, E 34 × 44 in). */
export const TILE_PAPERS = [
  { id: "a4", name: "A4", widthMm: 210, heightMm: 297 },
  { id: "a3", name: "A3", widthMm: 297, heightMm: 420 },
  { id: "a1", name: "A1", widthMm: 594, heightMm: 841 },
  { id: "a0", name: "A0", widthMm: 841, heightMm: 1189 },
  { id: "letter", name: "US Letter", widthMm: 215.9, heightMm: 279.4 },
  { id: "tabloid", name: "US Tabloid", widthMm: 279.4, heightMm: 431.8 },
  { id: "ansi-d", name: "ANSI D", widthMm: 558.8, heightMm: 863.6 },
  { id: "ansi-e", name: "ANSI E", widthMm: 863.6, heightMm: 1117.6 },
] as const satisfies readonly TilePaper[];

export type TilePaperId = (typeof TILE_PAPERS)[number]["id"];

export const tilePaper = (id: TilePaperId): TilePaper => {
  const paper = TILE_PAPERS.find((one) => one.id === id);
  if (!paper) throw new RangeError(`paper: ${id}`);
  return paper;
};

/** What an office printer holds: inches go with American sizes. */
export const usualPaper = (units: "mm" | "in"): TilePaperId => (units === "mm" ? "a4" : "letter");

/** The paper for what is read, not laid out: a plotter's sheet would be wasted on it. */
export const readingPaper = (paper: TilePaper): TilePaper => {
  if (paper.heightMm < 500) return paper;
  return tilePaper(paper.id.startsWith("a") && !paper.id.startsWith("ansi") ? "a4" : "letter");
};

/** Printers leave an edge of the paper white; this much is nowhere printed on. [mm] */
const EDGE = 8;
/** For the upright check bar, and for the lying one with the words at the foot. [mm] */
const [SIDE, FOOT] = [7, 19];

/** A sheet as it lies, and the field on it that holds the pattern: from its top left. [mm] */
export interface TileLayout {
  readonly paper: TilePaper;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly field: {
    readonly x: number;
    readonly y: number;
    readonly widthMm: number;
    readonly heightMm: number;
  };
}

export function tileLayout(paper: TilePaper, lying: boolean): TileLayout {
  const [widthMm, heightMm] = lying ? [paper.heightMm, paper.widthMm] : [paper.widthMm, paper.heightMm];
  return {
    paper,
    widthMm,
    heightMm,
    field: {
      x: EDGE + SIDE,
      y: EDGE,
      widthMm: widthMm - 2 * EDGE - SIDE,
      heightMm: heightMm - 2 * EDGE - FOOT,
    },
  };
}
