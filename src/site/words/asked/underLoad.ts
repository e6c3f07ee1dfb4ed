import { type Elastic, loadedRadiusMm } from "../../../forming/springback.ts";
import { MPA_PER_KSI } from "../../../geometry/units.ts";
import { closely } from "../girth.ts";
import type { Numbers } from "../numbers.ts";

/** Figures that a share of lengths needs to come out. */
const FIGURES = 6;
export const figures = (value: number): string => String(Number(value.toPrecision(FIGURES)));

/** Stresses in the units of the drawing. */
export const stress = (mpa: number, say: Numbers): string =>
  figures(say.unit === "in" ? mpa / MPA_PER_KSI : mpa);

/**
 * The radius that a plate is bent to under load so that it springs back to the radius wanted, by the root that is keyed in
 * without a search.
 *
 * @param freeMm middle radius wanted when free [mm]
 */
export function underLoad(plate: Elastic, freeMm: number, say: Numbers): string[] {
  const { thicknessMm, yieldMPa, youngsMPa } = plate;
  const f = (youngsMPa * thicknessMm) / (yieldMPa * freeMm);
  const v = (youngsMPa * thicknessMm) / (yieldMPa * loadedRadiusMm(freeMm, plate));
  const [t, y, e] = [closely(say, thicknessMm), stress(yieldMPa, say), stress(youngsMPa, say)];
  const [told, sum] = [figures(v), figures(3 + f)];
  const unit = say.unit === "in" ? "ksi" : "MPa";
  return [
    `f: ${e} × ${t} / (${y} × ${closely(say, freeMm)}) = ${figures(f)} (stiffness × thickness / (yield × radius); a wide plate cannot narrow, which makes its stiffness E / (1 − Poisson’s ratio²) = ${e}\u00a0${unit} and its yield 2 × yield / √3 = ${y}\u00a0${unit})`,
    `v: ${sum} / 3 × (1 + 2 × cos(arccos(1 − 54 / ${sum}³) / 3)) = ${told} (with 3 + f = ${sum})`,
    `Radius under load: ${e} × ${t} / (${y} × ${told}) = ${closely(say, loadedRadiusMm(freeMm, plate))}\u00a0${say.unit}`,
  ];
}
