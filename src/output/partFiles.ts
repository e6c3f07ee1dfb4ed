import type { Report } from "../report/report.ts";
import { cutPatterns } from "./contour.ts";
import { printCsv } from "./csv.ts";
import { printDxf } from "./dxf.ts";
import { printSvg } from "./svg.ts";

/** One file that is taken away from a part. */
export interface PartFile {
  readonly name: string;
  /** What it is, for whoever chooses. */
  readonly what: string;
  readonly type: string;
  readonly print: () => string;
}

/** Every file of a part for the cutting table and the marking bench: one of each kind for every pattern that differs. */
export function partFiles(report: Report): PartFile[] {
  const patterns = cutPatterns(report);
  return patterns.flatMap(({ name, blank, count }): PartFile[] => {
    const which = patterns.length > 1 ? `piece ${blank.piece}, ` : "";
    const lot = `${which}${count} to cut`;
    const inches: PartFile[] =
      report.part.units === "in"
        ? [
            {
              name: `${name}-inches.dxf`,
              what: `DXF in inches, ${lot}`,
              type: "image/vnd.dxf",
              print: () => printDxf(report, blank, "in"),
            },
          ]
        : [];
    return [
      {
        name: `${name}.dxf`,
        what: `DXF in millimetres, ${lot}`,
        type: "image/vnd.dxf",
        print: () => printDxf(report, blank),
      },
      ...inches,
      {
        name: `${name}.svg`,
        what: `SVG at full size, ${lot}`,
        type: "image/svg+xml",
        print: () => printSvg(report, blank),
      },
      {
        name: `${name}.csv`,
        what: `marking table as CSV, ${which}lengths in ${report.part.units}`,
        type: "text/csv",
        print: () => printCsv(report, blank, report.part.units),
      },
    ];
  });
}
