import type { BendZone } from "./bendZone.ts";

const MOST_SPACES = 720;
/** Spaces from which the first guess is made: enough to feel where a stretch is bent most. */
const FIRST_GUESS = 8;

/** Where the borders of equal spaces lie, both ends of the stretch among them: normal angles. [rad] */
function borders(zone: BendZone, spaces: number): number[] {
  const step = (zone.toRad - zone.fromRad) / spaces;
  return Array.from({ length: spaces + 1 }, (_, i) => (i === spaces ? zone.toRad : zone.fromRad + i * step));
}

/** Turning of the half spaces of a stretch, two for each space. [rad] */
function halfTurns(zone: BendZone, spaces: number): number[] {
  const at = borders(zone, 2 * spaces).map((theta) => zone.turnedRad(theta));
  return at.slice(1).map((turned, i) => turned - (at[i] as number));
}

/** Greatest height of a facet under the curve at the wide end, for so many equal spaces. [mm] */
function facetMm(zone: BendZone, spaces: number): number {
  const step = (zone.toRad - zone.fromRad) / spaces;
  let [most, before] = [0, zone.turnedRad(zone.fromRad)];
  for (let i = 1; i <= spaces; i++) {
    const turned = zone.turnedRad(i === spaces ? zone.toRad : zone.fromRad + i * step);
    const height = 1 - Math.cos((turned - before) / 2);
    most = Math.max(most, zone.wideRadiusMm(zone.fromRad + (i - 0.5) * step) * height);
    before = turned;
  }
  return most;
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
function spacesIn(zone: BendZone, count: number, facet: number): Spaces {
  return {
    halves: halfTurns(zone, count),
    facet,
    places: borders(zone, count).map((theta) => zone.place(theta)),
  };
}

/** Every die of every brake asks the same of a stretch. */
interface Known {
  readonly permittedMm: number;
  /** Fewest spaces whose facets keep within the permitted error. */
  readonly fewest: number;
  readonly facetOf: (spaces: number) => number;
  /** By the number of spaces. */
  readonly within: Map<number, Spaces>;
}
const found = new WeakMap<BendZone, Known>();

/**
 * Fewest spaces whose facets keep within the permitted error. A facet's height goes by the square of its space, which
 * guesses the number nearly; from there it is found by trying.
 */
function fewest(facetOf: Known["facetOf"], permittedMm: number): number {
  const guess = (count: number) =>
    Math.min(MOST_SPACES, Math.max(1, Math.round(count * Math.sqrt(facetOf(count) / permittedMm))));
  const isEnough = (count: number) => facetOf(count) <= permittedMm;
  let count = guess(guess(FIRST_GUESS));
  while (count < MOST_SPACES && !isEnough(count)) count++;
  while (count > 1 && isEnough(count - 1)) count--;
  return count;
}

function lookAt(zone: BendZone, permittedMm: number): Known {
  const facets = new Map<number, number>();
  const facetOf = (spaces: number) => {
    const facet = facets.get(spaces) ?? facetMm(zone, spaces);
    facets.set(spaces, facet);
    return facet;
  };
  return { permittedMm, fewest: fewest(facetOf, permittedMm), facetOf, within: new Map() };
}

/**
 * A curved stretch in the fewest equal spaces of the normal angle whose facets keep within the permitted error, but in no
 * more than there is room for.
 */
export function spacesFor(zone: BendZone, permittedMm: number, most: number): Spaces {
  const before = found.get(zone);
  const known = before?.permittedMm === permittedMm ? before : lookAt(zone, permittedMm);
  found.set(zone, known);
  const count = Math.min(known.fewest, most);
  const spaces = known.within.get(count) ?? spacesIn(zone, count, known.facetOf(count));
  known.within.set(count, spaces);
  return spaces;
}
