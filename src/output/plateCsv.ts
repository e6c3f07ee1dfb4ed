import { VERDICTS } from "../report/verdictWords.ts";
import { type FileUnits, perUnit } from "./contour.ts";
import { type Cell, csvText } from "./csvText.ts";
import type { PlateSheet } from "./plateSheet.ts";

const DECIMALS: Readonly<Record<FileUnits, number>> = { mm: 2, in: 4 };

/** Every blank of every plate, one a row, with where it lies: its own corner of x = 0, y = 0 and its turn. The file is that of the plate, without its ending. */
export function printPlateCsv(sheets: readonly PlateSheet[], units: FileUnits): string {
  const length = (mm: number) => Number((mm / perUnit(units)).toFixed(DECIMALS[units])) + 0;
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
  ];
  const rows = sheets.flatMap((sheet) =>
    sheet.blanks.map(({ report, blank, number, rotationDeg, at }): Cell[] => [
      sheet.name,
      sheet.title,
      sheet.copies,
      length(sheet.lengthMm),
      length(sheet.widthMm),
      number,
      report.part.name,
      report.part.title,
      VERDICTS[report.forming.verdict],
      blank.piece,
      Number(rotationDeg.toFixed(4)),
      length(at[0]),
      length(at[1]),
    ]),
  );
  return csvText([head, ...rows]);
}
