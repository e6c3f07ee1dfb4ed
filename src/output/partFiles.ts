import { unitName } from "../drawing/format.ts";
import type { Blank, Report } from "../report/report.ts";
import { cutPatterns, type FileUnits } from "./contour.ts";
import { printCsv } from "./csv.ts";
import { printDxf } from "./dxf.ts";
import type { FileUse } from "./fileUse.ts";
import { printJson } from "./json.ts";
import { printSvg } from "./svg.ts";

/** One file that is taken away from a part or a job. */
export interface PartFile {
  readonly name: string;
  readonly use: FileUse;
  /** What it is, for whoever chooses. */
  readonly what: string;
  readonly type: string;
  /** What its lengths are in. */
  readonly units: FileUnits;
  /** Which piece of the part; null where it is about the whole, or there is one pattern alone. */
  readonly piece: number | null;
  /** How many are cut by it; null where nothing is. */
  readonly count: number | null;
  readonly print: () => string;
}

export interface FileOptions {
  /** DXF in inches too, whatever the part is drawn in. */
  readonly inches?: boolean;
}

export const DXF_TYPE = "image/vnd.dxf";
export const CSV_TYPE = "text/csv";

/** A DXF: in millimetres by its plain name, in inches by a name that says so. */
export const dxfName = (name: string, units: FileUnits): string =>
  `${name}${units === "in" ? "-inches" : ""}.dxf`;
export const dxfWords = (units: FileUnits): string => `DXF in ${unitName(units)}`;

/** Every file of a part for the cutting table and the marking bench: one of each kind for every pattern that differs. */
export function partFiles(report: Report, { inches = false }: FileOptions = {}): PartFile[] {
  const patterns = cutPatterns(report);
  const several = patterns.length > 1;
  return patterns.flatMap((pattern) => patternFiles(report, pattern, { several, inches }));
}

/** Everything that was worked out about a part, for programs. */
export const reportFile = (report: Report): PartFile => ({
  name: `${report.part.name}.json`,
  use: "programs",
  what: "the whole report as JSON, lengths in millimetres",
  type: "application/json",
  units: "mm",
  piece: null,
  count: null,
  print: () => `${printJson(report)}\n`,
});

function patternFiles(
  report: Report,
  { name, blank, count }: { readonly name: string; readonly blank: Blank; readonly count: number },
  { several, inches }: { several: boolean; inches: boolean },
): PartFile[] {
  const { units } = report.part;
  const piece = several ? blank.piece : null;
  const which = several ? `piece ${blank.piece}, ` : "";
  const lot = `${which}${count} to cut`;
  const dxf = (unit: FileUnits): PartFile => ({
    name: dxfName(name, unit),
    use: "cutting",
    what: `${dxfWords(unit)}, ${lot}`,
    type: DXF_TYPE,
    units: unit,
    piece,
    count,
    print: () => printDxf(report, blank, unit),
  });
  return [
    dxf("mm"),
    ...(inches || units === "in" ? [dxf("in")] : []),
    {
      name: `${name}.svg`,
      use: "drawing",
      what: `SVG at full size, ${lot}`,
      type: "image/svg+xml",
      units: "mm",
      piece,
      count,
      print: () => printSvg(report, blank),
    },
    {
      name: `${name}.csv`,
      use: "marking",
      what: `marking table as CSV, ${which}lengths in ${unitName(units)}`,
      type: CSV_TYPE,
      units,
      piece,
      count,
      print: () => printCsv(report, blank, units),
    },
  ];
}
