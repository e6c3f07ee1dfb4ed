import { MM_PER_INCH } from "../../geometry/units.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Lettering, LineStyle, Pdf } from "./document.ts";

/** A rule laid on it tells whether the sheet was printed at full size. [mm] */
const BAR_MM = 100;
/** The same for a rule in inches. [in] */
const BAR_IN = 4;
const LINE: LineStyle = { widthMm: 0.2 };
const WORDS: Lettering = { capMm: 1.8 };

/** A ruled line from a place on, to the right or upwards: long ends, a short mark for each of its parts, all to one side. */
function bar(
  pdf: Pdf,
  from: Vec2,
  {
    upright,
    parts,
    partMm,
    side,
    words,
  }: { upright: boolean; parts: number; partMm: number; side: 1 | -1; words: string },
): void {
  const at = (along: number, aside: number): Vec2 =>
    upright ? [from[0] - side * aside, from[1] - along] : [from[0] + along, from[1] - side * aside];
  const long = parts * partMm;
  pdf.line(at(0, 0), at(long, 0), LINE);
  for (let i = 0; i <= parts; i++)
    pdf.line(at(i * partMm, 0), at(i * partMm, i === 0 || i === parts ? 2 : 1), LINE);
  pdf.write(words, at(long / 2, 2.5), { ...WORDS, anchor: "middle", rotationDeg: upright ? 90 : 0 });
}

/** 100 mm along both edges of a sheet, since a printer may stretch one way only; for parts in inches 4 inches along the same lines. */
export function checkBars(
  pdf: Pdf,
  { lying, upright, inches }: { lying: Vec2; upright: Vec2; inches: boolean },
): void {
  const mm = { parts: 10, partMm: BAR_MM / 10, side: 1, words: `check: ${BAR_MM} mm` } as const;
  const inch = { parts: BAR_IN, partMm: MM_PER_INCH, side: -1, words: `check: ${BAR_IN} in` } as const;
  for (const one of inches ? [mm, inch] : [mm]) {
    bar(pdf, lying, { upright: false, ...one });
    bar(pdf, upright, { upright: true, ...one });
  }
}
