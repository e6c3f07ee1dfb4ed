import type { Figure } from "../../forming/sheet/step.ts";
import { zoneOfLabel } from "../../forming/zoneWords.ts";

/** One figure in every zone; null in a zone that has none. */
interface ZoneRow {
  readonly label: string;
  readonly unit: string;
  readonly values: readonly (number | null)[];
}

/** The figures of a step: those of the whole part, and those of its zones side by side. */
interface StepFigures {
  readonly whole: readonly Figure[];
  /** Plan angles of each zone, in their order. */
  readonly zones: readonly string[];
  readonly rows: readonly ZoneRow[];
  /** What the figures of the zones rest on, each once. */
  readonly bases: readonly string[];
}

/** Sort a step's figures into those of the whole part and a table of its zones. */
export function zoneFigures(figures: readonly Figure[]): StepFigures {
  const read = figures.map((figure) => ({ figure, named: zoneOfLabel(figure.label) }));
  const zoned = read.flatMap(({ figure, named }) => (named ? [{ ...figure, ...named }] : []));
  const zones = [...new Set(zoned.map(({ zone }) => zone))];
  const rows = [...new Set(zoned.map(({ label }) => label))].map((label): ZoneRow => {
    const own = zoned.filter((one) => one.label === label);
    return {
      label,
      unit: own[0]?.unit ?? "-",
      values: zones.map((zone) => own.find((one) => one.zone === zone)?.value ?? null),
    };
  });
  return {
    whole: read.flatMap(({ figure, named }) => (named ? [] : [figure])),
    zones,
    rows,
    bases: [...new Set(zoned.map(({ basis }) => basis))],
  };
}
