import { steps } from "./steps.ts";

/** One size that ends come in: its diameter in the table's own units, and the number it goes by where that is another. */
export interface Size {
  readonly diameter: number;
  readonly number?: string;
}

/** Recommended diameters of round ducts, and the additional ones. [mm] @see sources.yaml#en-1506 */
export const DUCTS: readonly Size[] = [
  63, 80, 100, 125, 150, 160, 200, 250, 300, 315, 355, 400, 450, 500, 630, 800, 1000, 1250,
].map((diameter) => ({ diameter }));

/** Whole inches; no standard. [in] */
export const WHOLE_INCHES: readonly Size[] = [4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 30, 36, 42, 48].map(
  (diameter) => ({ diameter }),
);

/** Nominal sizes of steel pipe with their outside diameters. [in, mm] @see sources.yaml#asme-b36-10 */
const PIPES = [
  ["2", 2.375, 60.3],
  ["2-1/2", 2.875, 73],
  ["3", 3.5, 88.9],
  ["4", 4.5, 114.3],
  ["5", 5.563, 141.3],
  ["6", 6.625, 168.3],
  ["8", 8.625, 219.1],
  ["10", 10.75, 273.1],
  ["12", 12.75, 323.9],
  ["14", 14, 355.6],
  ["16", 16, 406.4],
  ["18", 18, 457.2],
  ["20", 20, 508],
  ["24", 24, 609.6],
] as const;
export const PIPES_IN: readonly Size[] = PIPES.map(([number, diameter]) => ({ number, diameter }));
export const PIPES_MM: readonly Size[] = PIPES.map(([number, , diameter]) => ({ number, diameter }));

/** Heights that a table chooses from: round numbers, each about a quarter more than the last. [mm] */
export const HEIGHTS_MM = [40, 50, 60, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250];
/** [in] */
export const HEIGHTS_IN = [...steps(2, 6, 1), 8, 10, 12, 15, 18, 20, 24, 30, 36, 42, 48];
