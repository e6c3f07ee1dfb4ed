import type { PlateDrawn } from "../../drawing/plates.ts";
import type { Units } from "../../drawing/format.ts";
import { placer } from "../../geometry/placed.ts";
import { plateFiles } from "../../output/plateFiles.ts";
import { notGoing } from "../../output/notToCut.ts";
import { blankName } from "../../output/plateSheet.ts";
import { VERDICTS } from "../../report/verdictWords.ts";
import { numbersIn, percent } from "../words/numbers.ts";
import type { JobPlate, PlateGroup } from "../../job/plates.ts";
import { totalUse, useOf } from "../../job/plateUse.ts";
import { blanksInWords, freeInWords, plateCounts, sizeOf } from "./plateWords.ts";

/** How the blanks of a job lie: spacings and margins, each once, with who says so. */
export function laidWords(groups: readonly PlateGroup[], units: Units): string {
  const say = numbersIn(units);
  const apart = ({ cutting: { spacingMm, edgeMm, basis } }: PlateGroup): string =>
    `${say.length(spacingMm)} from each other (${basis.spacing}) and ${say.length(edgeMm)} from the edges of the plate (${basis.edge})`;
  const spacings = [...new Set(groups.map(apart))];
  const [first] = groups;
  const kept =
    spacings.length === 1 || !first
      ? (spacings[0] ?? "")
      : `as far from each other as the plate is thick, ${say.length(Math.min(...groups.map(({ cutting }) => cutting.spacingMm)))} at least (${first.cutting.basis.spacing}), and ${say.length(first.cutting.edgeMm)} from the edges of the plate (${first.cutting.basis.edge})`;
  const grain = groups.some(({ plates, stock }) => plates.length > 0 && stock.some((one) => one.grain));
  return `The blanks are laid by their true shapes, ${kept}${
    grain
      ? "; on plate with a grain they lie as drawn or turned by half, so that element lines run across its length."
      : ", at whatever angle takes the least plate."
  }`;
}

/** What the columns of the table of plates mean. */
export const PLATE_USE_WORDS =
  "By area: no laying can do with fewer plates. By rectangles: what the smallest rectangles round the same blanks need. Used up to the last blank: the strip beyond it on the emptiest plate stays whole. A search laid them, so a better laying may exist (derived here).";

/** What to look at before a plate is cut. */
export const PLATE_CARE =
  "Outlines wide: blanks, each with its number and part. Dashed: the largest rectangle left. Check the plate’s own size, squareness and edges before it is cut; see that each blank lies on the plate with the face up that its pattern says. Small pieces and strips tip and fall when they are cut free.";

/** The table of plates to take from the rack, as words. */
export const PLATE_USE_HEADS = [
  "Plate",
  "Take from the rack",
  "Blanks laid",
  "Used",
  "Used up to the last blank",
  "Plates at least, by area",
  "Plates by rectangles",
  "Used by rectangles",
] as const;

export function plateUseRows(groups: readonly PlateGroup[]): {
  readonly rows: readonly (readonly string[])[];
  readonly all: readonly string[];
} {
  const all = totalUse(groups);
  const rows = groups.map((group) => {
    const { laid } = group;
    const none = laid.plates.length === 0;
    const taken = plateCounts(group).map(({ stock, count }) => `${count} of ${sizeOf(group, stock)}`);
    const figures = [
      percent(laid.utilisation),
      percent(laid.usedShare),
      String(laid.bounds.areaPlates),
      String(laid.bounds.rectanglePlates),
      percent(laid.bounds.rectangleUtilisation),
    ];
    return [
      group.name,
      none ? "none that takes a blank" : taken.join(", "),
      `${useOf(group).laid} of ${group.blanks}`,
      ...figures.map((figure) => (none ? "–" : figure)),
    ];
  });
  const plates = all.plates === 1 ? "1 plate" : `${all.plates} plates`;
  const sums = ["", "", String(all.byArea), String(all.byRectangles), ""];
  return { rows, all: ["All", plates, `${all.laid} of ${all.blanks}`, ...sums] };
}

/** A plate with its blanks and what is left of it, to be drawn. */
export function plateDrawn({ units }: PlateGroup, { sheet, free }: JobPlate): PlateDrawn {
  return {
    title: sheet.title,
    units,
    lengthMm: sheet.lengthMm,
    widthMm: sheet.widthMm,
    blanks: sheet.blanks.map((one) => ({
      outline: one.blank.outline.map(placer(one)),
      number: one.number,
      name: blankName(one),
    })),
    free: free && {
      left: free.at[0],
      bottom: free.at[1],
      right: free.at[0] + free.xMm,
      top: free.at[1] + free.yMm,
    },
  };
}

/** What keeps a plate from being cut; undefined where all that lies on it goes. */
export function plateStop({ sheet }: JobPlate): string | undefined {
  const bad = notGoing(sheet.blanks.map(({ report }) => report));
  return bad.length === 0
    ? undefined
    : `Do not cut yet: holds what ${VERDICTS.fail} (${bad.join(", ")}). Settle that first.`;
}

/** How many plates are cut like this, and from which file. */
export function plateOrder(plate: JobPlate): string {
  const { sheet } = plate;
  const files = plateFiles(sheet).filter(({ use }) => use === "cutting");
  const first = plateStop(plate) === undefined ? "Cut" : "Once that is settled cut";
  return `${first} ${sheet.copies}${sheet.copies > 1 ? ", all alike" : ""}. File: ${files.map(({ name }) => name).join(" or ")}`;
}

/** A plate in a sentence: its size, how much of it is used, what lies on it and what is left. */
export const plateSentence = (group: PlateGroup, plate: JobPlate): string =>
  `${sizeOf(group, plate.stock)}${plate.stock.grain ? ", grain along its length" : ""}, ${percent(plate.utilisation)} used: ${blanksInWords(plate)}. Largest rectangle left: ${freeInWords(group, plate)}.`;
