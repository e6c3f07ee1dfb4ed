import type { FileUnits } from "./contour.ts";
import type { PartFile } from "./partFiles.ts";
import { printPlateCsv } from "./plateCsv.ts";
import { printPlateDxf } from "./plateDxf.ts";
import type { PlateSheet } from "./plateSheet.ts";
import { printPlateSvg } from "./svg.ts";

/** Every file of one plate. */
export function plateFiles(sheet: PlateSheet): PartFile[] {
  const lot = `${sheet.title}, ${sheet.copies} to cut`;
  const dxf = (units: FileUnits, ending: string, words: string): PartFile => ({
    name: `${sheet.name}${ending}.dxf`,
    what: `DXF in ${words}, ${lot}`,
    type: "image/vnd.dxf",
    print: () => printPlateDxf(sheet, units),
  });
  return [
    dxf("mm", "", "millimetres"),
    ...(sheet.units === "in" ? [dxf("in", "-inches", "inches")] : []),
    {
      name: `${sheet.name}.svg`,
      what: `SVG at full size, ${lot}`,
      type: "image/svg+xml",
      print: () => printPlateSvg(sheet),
    },
  ];
}

/** Where every blank lies, for all plates of the job. */
export const plateList = (sheets: readonly PlateSheet[], units: FileUnits): PartFile => ({
  name: "plates.csv",
  what: "every blank of every plate with its place and turn, as CSV",
  type: "text/csv",
  print: () => printPlateCsv(sheets, units),
});
