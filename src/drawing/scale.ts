/** One drawing scale. `unit` is millimetres of the part for one of paper. */
export interface Scale {
  readonly unit: number;
  /** As it stands in a title block: "1:10", "2:1". */
  readonly text: string;
}

const scale = (unit: number): Scale => ({
  unit,
  text: unit >= 1 ? `1:${tidy(unit)}` : `${tidy(1 / unit)}:1`,
});
const tidy = (value: number): string => String(Number(value.toFixed(3)));

const DECADES = [0.01, 0.1, 1, 10, 100, 1000, 10_000];
const series = (steps: readonly number[]): readonly Scale[] =>
  DECADES.flatMap((decade) => steps.map((step) => scale(step * decade)));

/** ISO 5455: enlargements 50:1 … 2:1, full size, reductions 1:2, 1:5, 1:10, 1:20, 1:50 … */
export const ISO_SCALES = series([1, 2, 5]);

/** The same, and half-way steps of them, where the next standard scale would leave half of the room empty; ISO 5455 allows them as exceptions. */
export const SHEET_SCALES = series([1, 2, 2.5, 4, 5]);

/** Steps in between, for a screen too narrow for the next standard scale; ISO 5455 allows them as exceptions. */
export const NARROW_SCALES = series([
  1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.25, 2.5, 2.8, 3.2, 3.6, 4, 4.5, 5, 5.6, 6.4, 7, 8, 9,
]);

/** Full size alone, for a pattern that is laid on the plate. */
export const FULL_SIZE = [scale(1)];

/** The scales of a series at which something so wide and so high fits the room, the largest picture first. [mm] */
export function fittingScales(
  scales: readonly Scale[],
  { widthMm, heightMm, room }: { widthMm: number; heightMm: number; room: readonly [number, number] },
): readonly Scale[] {
  const least = Math.max(widthMm / room[0], heightMm / room[1]);
  const fitting = scales.filter((one) => one.unit >= least);
  // A series of one, or a part beyond any scale: the smallest picture there is.
  return fitting.length > 0 ? fitting : scales.slice(-1);
}
