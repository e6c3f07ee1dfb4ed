import { VERDICTS } from "../report/verdictWords.ts";
import { type FileUnits, perUnit } from "./contour.ts";
import { type Cell, csvText } from "./csvText.ts";
import type { BlankOnPlate, PlateSheet } from "./plateSheet.ts";

const DECIMALS: Readonly<Record<FileUnits, number>> = { mm: 2, in: 4 };

interface PlateListOptions {
  /** Those of the shop. */
  readonly units: FileUnits;
  /** Has a plate a DXF in inches beside that in millimetres? */
  readonly hasInches: (sheet: PlateSheet) => boolean;
}

/**
 * Every blank of every plate, one a row, with where it lies: its own corner of x = 0, y = 0 and its turn, below a heading that
 * says what the columns mean; once more in inches where the plate has a file in them. The file is that of the plate, without its ending.
 */
export function printPlateCsv(sheets: readonly PlateSheet[], { units, hasInches }: PlateListOptions): string {
  const inInches = units === "mm" && sheets.some(hasInches);
  const head: Cell[] = [
    "file",
    "plate",
    "plates alike",
    `length ${units}`,
    `width ${units}`,
    "number",
    "part",
    "title",
    "will it go",
    "piece",
    "turned deg",
    `x ${units}`,
    `y ${units}`,
    ...(inInches ? ["length in", "width in", "x in", "y in"] : []),
  ];
  const rows = sheets.flatMap((sheet) =>
    sheet.blanks.map((one): Cell[] => {
      const { report, blank, number, rotationDeg } = one;
      const own = lengths(sheet, one, units);
      const inches = inInches ? (hasInches(sheet) ? lengths(sheet, one, "in") : ["", "", "", ""]) : [];
      return [
        sheet.name,
        sheet.title,
        sheet.copies,
        ...own.slice(0, 2),
        number,
        report.part.name,
        report.part.title,
        VERDICTS[report.forming.verdict],
        blank.piece,
        Number(rotationDeg.toFixed(4)),
        ...own.slice(2),
        ...inches,
      ];
    }),
  );
  return csvText([...aboutRows(units, inInches), [], head, ...rows]);
}

/** Length and width of the plate, and where the blank's own corner lies on it. */
function lengths(
  { lengthMm, widthMm }: PlateSheet,
  { at: [x, y] }: BlankOnPlate,
  units: FileUnits,
): number[] {
  return [lengthMm, widthMm, x, y].map((mm) => Number((mm / perUnit(units)).toFixed(DECIMALS[units])) + 0);
}

/** What whoever sets the blanks by hand has to know. */
const aboutRows = (units: FileUnits, inInches: boolean): Cell[][] => [
  ["contents", "every blank of every plate, one a row"],
  [
    "units",
    `${units === "mm" ? "millimetres" : "inches"} and degrees${inInches ? "; inches too where the plate has a DXF file in inches" : ""}`,
  ],
  ["origin", "the lower left corner of the plate; x to the right along its length and y up along its width"],
  [
    "x and y",
    "where the origin of the blank's own files (x = 0 and y = 0 there) comes to lie after the turn; it may lie off the blank and off the plate",
  ],
  [
    "turned",
    "how far the blank is turned about its own origin from how its own files have it, counter-clockwise; it is turned first and then moved to x and y",
  ],
  [
    "number",
    "the number that the blank has in the picture of the plate; blanks of one form have one number on all plates of their material and thickness",
  ],
  ["piece", "which piece of the part; of pieces that are cut by one form the first"],
  ["plates alike", "how many plates are cut like this; their blanks stand here once"],
];
