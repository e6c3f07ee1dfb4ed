import type { FileUnits } from "./contour.ts";
import { CSV_TYPE, DXF_TYPE, dxfName, dxfWords, type FileOptions, type PartFile } from "./partFiles.ts";
import { printPlateCsv } from "./plateCsv.ts";
import { printPlateDxf } from "./plateDxf.ts";
import { VERDICTS } from "../report/verdictWords.ts";
import { notGoing } from "./notToCut.ts";
import type { PlateSheet } from "./plateSheet.ts";
import { printPlateSvg } from "./svg.ts";

/** As a part that is drawn in inches has them, whatever the shop counts in. */
const hasInches = ({ units, blanks }: PlateSheet, asked: boolean): boolean =>
  asked || units === "in" || blanks.some(({ report }) => report.part.units === "in");

/** Every file of one plate. */
export function plateFiles(sheet: PlateSheet, { inches = false }: FileOptions = {}): PartFile[] {
  const bad = notGoing(sheet.blanks.map(({ report }) => report));
  const stop = bad.length > 0 ? `; holds what ${VERDICTS.fail}: ${bad.join(", ")}` : "";
  const lot = `${sheet.title}, ${sheet.copies} to cut${stop}`;
  const dxf = (units: FileUnits): PartFile => ({
    name: dxfName(sheet.name, units),
    use: "cutting",
    what: `${dxfWords(units)}, ${lot}`,
    type: DXF_TYPE,
    units,
    piece: null,
    count: sheet.copies,
    print: () => printPlateDxf(sheet, units),
  });
  return [
    dxf("mm"),
    ...(hasInches(sheet, inches) ? [dxf("in")] : []),
    {
      name: `${sheet.name}.svg`,
      use: "drawing",
      what: `SVG at full size, ${lot}`,
      type: "image/svg+xml",
      units: "mm",
      piece: null,
      count: sheet.copies,
      print: () => printPlateSvg(sheet),
    },
  ];
}

/** Where every blank lies, for all plates of the job. */
const plateList = (
  sheets: readonly PlateSheet[],
  units: FileUnits,
  { inches = false }: FileOptions,
): PartFile => ({
  name: "plates.csv",
  use: "marking",
  what: "every blank of every plate with its place and turn, as CSV",
  type: CSV_TYPE,
  units,
  piece: null,
  count: null,
  print: () => printPlateCsv(sheets, { units, hasInches: (sheet) => hasInches(sheet, inches) }),
});

/** A file, and the plate that it is about: none for the list of all plates. */
interface FileOfPlate {
  readonly file: PartFile;
  readonly sheet: PlateSheet | null;
}

/** The list of all plates and every file of each; none where there is no plate. */
export const allPlateFiles = (
  sheets: readonly PlateSheet[],
  units: FileUnits,
  options: FileOptions = {},
): FileOfPlate[] =>
  sheets.length === 0
    ? []
    : [
        { file: plateList(sheets, units, options), sheet: null },
        ...sheets.flatMap((sheet) => plateFiles(sheet, options).map((file) => ({ file, sheet }))),
      ];
