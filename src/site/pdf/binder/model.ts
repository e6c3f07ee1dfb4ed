import type { Content } from "../../../input/loadContent.ts";
import type { Tables } from "../../../input/context.ts";
import type { Block } from "../../../output/pdf/block.ts";
import type { Pdf } from "../../../output/pdf/document.ts";
import { type FootCell, type Margins, roomOf } from "../../../output/pdf/flow.ts";
import type { TilePaper } from "../../../output/pdf/tilePaper.ts";
import type { Binder } from "../../binder/makeBinder.ts";
import { SAFETY_PLACE } from "../blocks.ts";

/** What a binder is made of and with. */
export interface Making {
  readonly pdf: Pdf;
  readonly paper: TilePaper;
  readonly content: Content;
  readonly tables: Tables;
  /** The job and its shop; left out where the binder is for reference alone. */
  readonly binder: Binder | undefined;
  /** Short names of the sources, by id. */
  readonly known: ReadonlyMap<string, string>;
  /** What the whole binder is called. */
  readonly title: string;
}

/** A sheet of the binder: one or more pages that belong together. */
export interface BinderSheet {
  /** In the contents and among the bookmarks. */
  readonly title: string;
  /** The name that links lead to. */
  readonly place: string;
  readonly cells: readonly FootCell[];
  /** Made when it is drawn, and let go of before the next one: a job may have a thousand. */
  readonly blocks: () => readonly (Block | null)[];
  /** A sheet that goes with it: a part's work sheet. */
  readonly with?: BinderSheet;
}

export interface BinderSection {
  readonly title: string;
  readonly sheets: readonly BinderSheet[];
}

/** The frame leaves a filing edge at the left, and below it room for the running foot, clear of what printers leave white. [mm] */
export const MARGINS: Margins = { left: 18, right: 9, top: 9, bottom: 13 };
/** Between the frame's sides. [mm] */
export const textWidthMm = (paper: TilePaper): number =>
  roomOf({ paper, cells: [], margins: MARGINS }).widthMm;

/** The title block of a sheet that is of no part: as on the site. */
export const sheetCells = ({ title: binder }: Making, title: string, kind: string): FootCell[] => [
  { label: "Title", value: title, wide: true },
  { label: "Kind", value: kind },
  { label: "Binder", value: binder, wide: true },
];

export const PLACES = {
  contents: "contents",
  safety: SAFETY_PLACE,
  part: (name: string): string => `part ${name}`,
} as const;
