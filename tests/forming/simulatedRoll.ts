import { flatContact, type RollSection } from "../../src/forming/rollSetting.ts";
import type { Elastic } from "../../src/forming/springback.ts";

/** How a real machine and plate differ from what our model takes for granted. */
export interface Unlike {
  /** The pinch gives, so that the plate leaves it downhill. [rad] */
  readonly dropRad: number;
  /** Where bending really is greatest: off the pinch line by this share of the arm. [-] */
  readonly armShare: number;
  /** The frame yields by this much under the plate's full plastic moment. [mm] */
  readonly frameMm: number;
  /** Yield of this plate over what the model reckons with. [-] */
  readonly stronger: number;
  /** The plate hardens: its moment grows by this share of itself at the tightest bends met here. [-] */
  readonly hardening: number;
}

const PANELS = 8;
const HALVINGS = 32;

/** Moment of an elastic, plastic section that hardens a little, per mm of width, at a curvature. [N] */
function moment(curvature: number, plate: Elastic, hardening: number): number {
  const { thicknessMm: t, yieldMPa, youngsMPa } = plate;
  const core = yieldMPa / (youngsMPa * curvature); // half height of the part that is still elastic
  const half = t / 2;
  if (core >= half) return (youngsMPa * curvature * t ** 3) / 12;
  return yieldMPa * (half ** 2 - core ** 2 / 3) * (1 + hardening * (1 - core / half));
}

/**
 * Raise that a real roll needs for a curvature under load at the pinch, and the curvature that is left when free.
 * The plate runs from the pinch to the bending roll with a moment that falls to nought there; having been bent to the
 * full at the pinch it unloads elastically on its way, so its curvature falls in a straight line from loaded to free.
 * Integrated along the plate with its slope, until it touches the roll on its slide.
 */
function realBend(
  section: RollSection,
  plate: Elastic,
  unlike: Unlike,
  loaded: number,
): { readonly raiseMm: number; readonly free: number } {
  const real = { ...plate, yieldMPa: plate.yieldMPa * unlike.stronger };
  const { thicknessMm: t, youngsMPa } = plate;
  const m = moment(loaded, real, unlike.hardening);
  const free = Math.max(0, loaded - (12 * m) / (youngsMPa * t ** 3));

  const { acrossMm, upMm } = flatContact(section, t);
  const [cos, sin] = [Math.cos(section.angleRad), Math.sin(section.angleRad)];
  const start = [unlike.armShare * acrossMm, -section.topRadiusMm - t / 2] as const;
  const slope = (s: number, length: number) =>
    -unlike.dropRad + free * s + (loaded - free) * (s - (s * s) / (2 * length));
  /** Centre of the roll under the end of a plate of this length, along and off its slide from the flat contact. */
  const at = (length: number) => {
    let [x, y] = start;
    for (let i = 0; i <= PANELS; i++) {
      const weight = ((i === 0 || i === PANELS ? 1 : i % 2 === 1 ? 4 : 2) * length) / (3 * PANELS);
      const angle = slope((i * length) / PANELS, length);
      x += weight * Math.cos(angle);
      y += weight * Math.sin(angle);
    }
    const angle = slope(length, length);
    const down = t / 2 + section.bendingRadiusMm;
    const centre = [x + down * Math.sin(angle), y - down * Math.cos(angle)] as const;
    const from = [
      centre[0] - (section.originMm[0] - upMm * cos),
      centre[1] - (section.originMm[1] + upMm * sin),
    ] as const;
    return { along: -from[0] * cos + from[1] * sin, off: from[0] * sin + from[1] * cos };
  };
  let [short, long] = [0, 2 * acrossMm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (short + long) / 2;
    if (at(middle).off < 0) short = middle;
    else long = middle;
  }
  const full = (real.yieldMPa * t * t) / 4;
  return { raiseMm: at(long).along + (unlike.frameMm * m) / full, free };
}

/** Curvature left by a raise: the way back, by halving. [1/mm] */
export function realFree(section: RollSection, plate: Elastic, unlike: Unlike, raiseMm: number): number {
  let [gentle, tight] = [0, 1 / (section.topRadiusMm + plate.thicknessMm / 2)];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (gentle + tight) / 2;
    if (realBend(section, plate, unlike, middle).raiseMm < raiseMm) gentle = middle;
    else tight = middle;
  }
  return realBend(section, plate, unlike, gentle).free;
}

const KNOTS = 40;

/**
 * The same as a table, for rolls that are asked thousands of times: curvature left by a raise, drawn through bends from
 * gentle to the top roll's own. [1/mm]
 */
export function realCurve(section: RollSection, plate: Elastic, unlike: Unlike): (raiseMm: number) => number {
  const tight = 1 / (section.topRadiusMm + plate.thicknessMm / 2);
  const knots = Array.from({ length: KNOTS }, (_, i) =>
    realBend(section, plate, unlike, (tight * (i + 1)) / KNOTS),
  );
  return (raiseMm) => {
    const after = knots.findIndex((one) => one.raiseMm >= raiseMm);
    const [low, high] = [knots[after - 1], knots[after]];
    if (!high) return after < 0 ? knots.at(-1)!.free : 0;
    if (!low) return high.free * Math.max(0, raiseMm / high.raiseMm);
    return low.free + ((high.free - low.free) * (raiseMm - low.raiseMm)) / (high.raiseMm - low.raiseMm);
  };
}
