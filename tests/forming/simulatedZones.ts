import fc from "fast-check";
import type { FormingCase } from "../../src/forming/case.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import type { RollPlaces } from "../../src/forming/rollPlaces.ts";
import { flatContact, sectionOf } from "../../src/forming/rollSetting.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { type RollZone, zonesOf } from "../../src/forming/zones.ts";
import { even } from "../even.ts";
import { aluminium, coneCase, coneless, s235, s355 } from "./cases.ts";
import { realCurve, type Unlike } from "./simulatedRoll.ts";
import { ROLL, simulatedRoll, UNLIKE, unlikeOf } from "./anyRoll.ts";

const STEPS = 72;
const TURN = 2 * Math.PI;

/**
 * The case of an eccentric cone between two circles, by closed form: the wall leans by tan β = (R − r − e cos θ)/H at the
 * normal angle θ, and an element's own radius at a rim ρ is ρ cos β/(cos² β + β′²).
 */
export function eccentricCase(
  sizes: { large: number; small: number; offset: number; height: number; thickness: number; seam?: number },
  more: Partial<FormingCase> = {},
): FormingCase {
  const { large, small, offset, height, thickness, seam = 0 } = sizes;
  const curvature = Array.from({ length: STEPS }, (_, i) => {
    const planDeg = (seam + (360 * i) / STEPS) % 360;
    const theta = (planDeg * TURN) / 360;
    const slope = (large - small - offset * Math.cos(theta)) / height;
    const cosSquared = 1 / (1 + slope ** 2);
    const turn = ((offset * Math.sin(theta)) / height) * cosSquared;
    const factor = Math.sqrt(cosSquared) / (cosSquared + turn ** 2);
    // The element from the point of one circle to that of the other of the same normal.
    const across = [(large - small) * Math.cos(theta) - offset, (large - small) * Math.sin(theta)] as const;
    return {
      planDeg,
      largeRadiusMm: large * factor,
      smallRadiusMm: small * factor,
      slantMm: Math.hypot(height, ...across),
    };
  });
  const item = coneCase(
    { largeRadiusMm: large, smallRadiusMm: small, heightMm: height, thicknessMm: thickness },
    more,
  );
  const slants = curvature.map(({ slantMm }) => slantMm);
  return {
    ...coneless(item),
    shape: "eccentric-cone",
    slantMm: { longest: Math.max(...slants), shortest: Math.min(...slants) },
    curvature,
  };
}

/** What a real blank does beside what one line of a real roll does. */
interface UnlikeBlank extends Unlike {
  /** The small end is not gripped: raise that is lost there, none at the large end. [mm] */
  readonly smallGiveMm: number;
  /** So much of what the ends would come out apart by is left, each bent by its own raise alone. [-] */
  readonly apart: number;
  /** A change from zone to zone takes this share of the arm of travel. [-] */
  readonly change: number;
  /** Each zone's plate bends a little more or less than the rest: the share by which, zone for zone. [-] */
  readonly scatter: readonly number[];
}

export interface ZoneJob {
  readonly machine: PlateRoll;
  readonly item: FormingCase;
  readonly unlike: UnlikeBlank;
}

const MOST_ZONES = 8;

/** Any sound initial-pinch roll and an eccentric cone or leaning pipe that it can bend in zones. */
export const zoneJobs: fc.Arbitrary<ZoneJob> = fc
  .record({
    ...ROLL,
    small: even(1.9, 4),
    grow: fc.oneof(fc.constant(0), even(0, 0.2), even(0.2, 1.2)),
    lean: fc.oneof(even(0, 0.3), even(0.3, 0.7)),
    steep: even(0.8, 3),
    seam: fc.constantFrom(0, 45, 90, 180, 270),
    material: fc.constantFrom(s235, s355, aluminium),
    ...UNLIKE,
    smallGive: even(0, 0.03),
    apart: even(0, 0.3),
    change: even(0.6, 1.6),
    scatter: fc.array(even(-0.02, 0.02), { minLength: MOST_ZONES, maxLength: MOST_ZONES }),
  })
  .map((one) => {
    const thickness = one.thick * one.top;
    const machine = simulatedRoll(one);
    // In shares of the small radius first, so that the tightest element can be made as wide as this roll bends.
    const shape = (small: number) => {
      const large = small * (1 + one.grow);
      const height = one.steep * small;
      return eccentricCase(
        { large, small, offset: one.lean * height, height, thickness, seam: one.seam },
        { material: one.material },
      );
    };
    const tightest = Math.min(...shape(1).curvature!.map(({ smallRadiusMm }) => smallRadiusMm));
    const item = shape((one.small * one.top) / tightest);
    const { apart, change, scatter } = one;
    const smallGiveMm = one.smallGive * one.top;
    return { machine, item, unlike: { ...unlikeOf(one), smallGiveMm, apart, change, scatter } };
  });

/** A roll's arm is cut into so many steps of travel. */
const CELLS = 10;
/** A template or a straightedge rests on this share of the arm to either side of where it is held. [-] */
const HELD = 0.25;

/**
 * Curvature laid down along one edge as the roll is set anew from zone to zone. The bending roll stands an arm beyond the
 * pinch, so the raise shows in all that lies between: ∫ κ(y − x)(a − x) dx = u(y) a²/2, u the curvature of the setting
 * held for good. Solved step by step, the change drawn out over a stretch of travel about the zone's mark.
 *
 * @returns mean over a template's width at the middle of every zone
 */
function alongEdge(
  steady: readonly number[],
  lengths: readonly number[],
  armMm: number,
  change: number,
): number[] {
  const step = armMm / CELLS;
  const marks = lengths.reduce<number[]>((all, one) => [...all, all.at(-1)! + one], [0]);
  const target = (y: number): number => {
    const half = (change * armMm) / 2;
    return steady.slice(1).reduce((now, next, i) => {
      const share = Math.min(1, Math.max(0, (y - marks[i + 1]! + half) / (2 * half)));
      return now + share * (next - steady[i]!);
    }, steady[0]!);
  };
  const weights = Array.from({ length: CELLS }, (_, i) => (2 * (CELLS - i - 0.5)) / CELLS ** 2);
  const laid: number[] = Array<number>(CELLS).fill(steady[0]!);
  for (let y = step / 2; y < marks.at(-1)!; y += step) {
    const rest = weights.slice(1).reduce((sum, weight, i) => sum + weight * laid[laid.length - 1 - i]!, 0);
    // Between two cells the newest counts with its neighbour, or the sum would swing.
    laid.push(Math.max(0, (target(y) - rest) / weights[0]!));
  }
  return lengths.map((length, i) => {
    const middle = marks[i]! + length / 2;
    const reach = Math.min(HELD * armMm, length / 2);
    const cells = laid
      .slice(CELLS)
      .filter((_, j) => Math.abs((j + 0.5) * step - middle) <= Math.max(reach, step));
    return cells.reduce((sum, one) => sum + one, 0) / cells.length;
  });
}

/** One zone after a pass: share of the finished bend at three places, and what templates show. */
export interface CameOut {
  readonly shares: { readonly large: number; readonly middle: number; readonly small: number };
  readonly inside: { readonly large: number; readonly small: number };
}

/** One first pass with these settings, zone for zone. */
export function rolled({ machine, item, unlike }: ZoneJob): (places: readonly RollPlaces[]) => CameOut[] {
  const section = sectionOf(machine)!;
  const plate = plateOf(item);
  const free = realCurve(section, plate, unlike);
  const zones = zonesOf(item);
  const { acrossMm } = flatContact(section, plate.thicknessMm);
  const { large: largeRim, small: smallRim } = item.rimsMm;
  const share = (zone: RollZone) => (zone.toDeg - zone.fromDeg) / 360;
  return (places) => {
    const edge = (at: number) =>
      alongEdge(
        places.map(
          ({ largeMm, smallMm }, i) =>
            free(largeMm + at * (smallMm - largeMm - unlike.smallGiveMm)) *
            (1 + unlike.scatter[i % MOST_ZONES]!),
        ),
        zones.map((zone) => share(zone) * (largeRim + at * (smallRim - largeRim))),
        acrossMm,
        unlike.change,
      );
    const own = [edge(0), edge(0.5), edge(1)] as const;
    const half = plate.thicknessMm / 2;
    return zones.map(({ largeRadiusMm, smallRadiusMm }, i) => {
      const levels = [largeRadiusMm, (largeRadiusMm + smallRadiusMm) / 2, smallRadiusMm] as const;
      const alone = own.map((one, place) => one[i]! * levels[place]!);
      // Straight elements hold the bend to one share from end to end, all but a little: the mean over the slant, by Simpson.
      const mean = (alone[0]! + 4 * alone[1]! + alone[2]!) / 6;
      const [large, middle, small] = alone.map((one) => mean + unlike.apart * (one - mean));
      const inside = (radiusMm: number, of: number) => radiusMm / of - half;
      return {
        shares: { large: large!, middle: middle!, small: small! },
        inside: { large: inside(largeRadiusMm, large!), small: inside(smallRadiusMm, small!) },
      };
    });
  };
}
