import type { BendZone } from "./bendZone.ts";

const MOST_SPACES = 720;

/** Turning of the half spaces of a stretch, two for each space. [rad] */
function halfTurns(zone: BendZone, spaces: number): number[] {
  const step = (zone.toRad - zone.fromRad) / (2 * spaces);
  return Array.from({ length: 2 * spaces }, (_, i) => {
    const to = i === 2 * spaces - 1 ? zone.toRad : zone.fromRad + (i + 1) * step;
    return zone.turnRad(zone.fromRad + i * step, to);
  });
}

/** Turning of a space by the rate half-way: near enough to search by, and far quicker than adding it up. [rad] */
function nearTurns(zone: BendZone, spaces: number): number[] {
  const step = (zone.toRad - zone.fromRad) / spaces;
  return Array.from({ length: spaces }, (_, i) => zone.turnRate(zone.fromRad + (i + 0.5) * step) * step);
}

const pairs = (halves: readonly number[]): number[] =>
  Array.from({ length: halves.length / 2 }, (_, i) => (halves[2 * i] ?? 0) + (halves[2 * i + 1] ?? 0));

/** Greatest height of a facet under the curve at the wide end, for equal spaces that turn so much each. [mm] */
function facetMm(zone: BendZone, turns: readonly number[]): number {
  const step = (zone.toRad - zone.fromRad) / turns.length;
  return Math.max(
    ...turns.map((turn, i) => zone.wideRadiusMm(zone.fromRad + (i + 0.5) * step) * (1 - Math.cos(turn / 2))),
  );
}

/** A stretch in equal spaces. */
interface Spaces {
  /** Turning of the half spaces, two for each space. [rad] */
  readonly halves: readonly number[];
  /** Greatest height of a facet. [mm] */
  readonly facet: number;
  /** Where the lines between them lie, both borders among them. */
  readonly places: readonly ReturnType<BendZone["place"]>[];
}

/** A stretch in so many spaces. */
function spacesIn(zone: BendZone, count: number, halves = halfTurns(zone, count)): Spaces {
  const step = (zone.toRad - zone.fromRad) / count;
  return {
    halves,
    facet: facetMm(zone, pairs(halves)),
    places: Array.from({ length: count + 1 }, (_, i) =>
      zone.place(i === count ? zone.toRad : zone.fromRad + i * step),
    ),
  };
}

/** Fewest spaces whose facets keep within the permitted error: nearly, by doubling and halving, and then exactly. */
function fewest(zone: BendZone, permittedMm: number): Spaces {
  const isNear = (count: number) => facetMm(zone, nearTurns(zone, count)) <= permittedMm;
  // Parts take a handful: feel the way up rather than down from the most there could be.
  let [few, enough] = [0, 1];
  while (enough < MOST_SPACES && !isNear(enough)) [few, enough] = [enough, Math.min(MOST_SPACES, 2 * enough)];
  while (enough - few > 1) {
    const middle = Math.floor((few + enough) / 2);
    if (isNear(middle)) enough = middle;
    else few = middle;
  }
  for (; ; enough++) {
    const halves = halfTurns(zone, enough);
    if (enough >= MOST_SPACES || facetMm(zone, pairs(halves)) <= permittedMm)
      return spacesIn(zone, enough, halves);
  }
}

/** Every die of every brake asks the same of a stretch, and its turning is dear to add up: by the permitted error, and by the most spaces. */
interface Known {
  readonly permittedMm: number;
  readonly fewest: Spaces;
  readonly within: Map<number, Spaces>;
}
const found = new WeakMap<BendZone, Known>();

/**
 * A curved stretch in the fewest equal spaces of the normal angle whose facets keep within the permitted error, but in no
 * more than there is room for.
 */
export function spacesFor(zone: BendZone, permittedMm: number, most: number): Spaces {
  let known = found.get(zone);
  if (known?.permittedMm !== permittedMm) {
    known = { permittedMm, fewest: fewest(zone, permittedMm), within: new Map() };
    found.set(zone, known);
  }
  if (known.fewest.halves.length / 2 <= most) return known.fewest;
  const spaces = known.within.get(most) ?? spacesIn(zone, most);
  known.within.set(most, spaces);
  return spaces;
}
