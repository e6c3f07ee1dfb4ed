import type { Material } from "../shapes/material.ts";
import type { FormingCase } from "./case.ts";

/** Plate as bending feels it. */
export interface Elastic {
  readonly thicknessMm: number;
  readonly yieldMPa: number;
  readonly youngsMPa: number;
}

const MPA_PER_GPA = 1000;
/** Above this share of full elasticity nothing of the section has yielded, and the plate springs back flat. [-] */
const ELASTIC = 0.5;
/** Plate is usually stronger than its grade says: the span of yields that a shop may meet, over the nominal. [-] */
const STRONGEST = 1.4;

/**
 * A plate much wider than thick cannot narrow as it bends, which stiffens and strengthens it: Y → 2Y/√3, E → E/(1 − ν²).
 *
 * @see wagoner-2006 for plane strain; from memory for the factors (von Mises, Hooke)
 */
export function widePlate(
  thicknessMm: number,
  { youngsGPa, poisson }: Pick<Material, "youngsGPa" | "poisson">,
  yieldMPa: number,
): Elastic {
  return {
    thicknessMm,
    yieldMPa: (2 * yieldMPa) / Math.sqrt(3),
    youngsMPa: (youngsGPa * MPA_PER_GPA) / (1 - poisson * poisson),
  };
}

/** The plate of a part as bending feels it: wide, by its certificate's yield or else its grade's. */
export function plateOf({ thicknessMm, material, certificateYieldMPa }: FormingCase): Elastic {
  return widePlate(thicknessMm, material, certificateYieldMPa ?? material.yieldMPa);
}

/** How elastic a bend is: x = R·Y/(E·t), R the middle radius under load. Half is all elastic. [-] */
function elasticShare(radiusMm: number, { thicknessMm, yieldMPa, youngsMPa }: Elastic): number {
  return (radiusMm * yieldMPa) / (youngsMPa * thicknessMm);
}

/**
 * Radius that a bend springs back to: R_loaded/R_free = 4x³ − 3x + 1, x = R_loaded·Y/(E·t).
 *
 * @param loadedMm middle radius under load [mm]; above 0
 * @returns middle radius when free [mm]; Infinity from x = ½ on, where the plate springs back flat
 * @see gardiner-1957-memory; the same as exact unloading of an elastic, perfectly plastic plate
 * @example freeRadiusMm(500, { thicknessMm: 10, yieldMPa: 355, youngsMPa: 210000 }) // → 667.695794
 */
export function freeRadiusMm(loadedMm: number, plate: Elastic): number {
  const x = elasticShare(loadedMm, plate);
  if (x >= ELASTIC) return Infinity;
  // 4x³ − 3x + 1 = (1 − 2x)² (1 + x), without the loss of digits near x = ½
  return loadedMm / ((1 - 2 * x) ** 2 * (1 + x));
}

/**
 * Radius to bend to under load so that it springs back to the radius wanted: x = 1/v, v the largest root of
 * v³ − (3 + f) v² + 4 = 0, f = E·t/(Y·R_free).
 *
 * With a = 3 + f the three roots are real, v = (a/3)(1 + 2 cos(θ/3)), cos θ = 1 − 54/a³; the half-angle form keeps the
 * digits where the bend is tight and θ small.
 *
 * @param freeMm middle radius wanted when free [mm]; above 0, Infinity for flat
 * @returns middle radius under load [mm]; of all radii that spring back flat the tightest
 * @see derived here, from gardiner-1957-memory
 * @example loadedRadiusMm(667.695793694, { thicknessMm: 10, yieldMPa: 355, youngsMPa: 210000 }) // → 500.000000
 */
export function loadedRadiusMm(freeMm: number, plate: Elastic): number {
  const f = 1 / elasticShare(freeMm, plate);
  const a = 3 + f;
  const third = (2 / 3) * Math.asin(Math.min(1, Math.sqrt(27 / a ** 3)));
  const v = (a / 3) * (1 + 2 * Math.cos(third));
  return (plate.youngsMPa * plate.thicknessMm) / (plate.yieldMPa * v);
}

/**
 * The plate as its grade says, and as strong as plate of that grade may well be: yield 1.0 and 1.4 times the nominal.
 *
 * @see common practice, no source
 */
export function yieldBand(plate: Elastic): readonly [Elastic, Elastic] {
  return [plate, { ...plate, yieldMPa: STRONGEST * plate.yieldMPa }];
}
