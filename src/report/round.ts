import type { Station } from "../geometry/station.ts";
import { unrolling, type Unrolling } from "../geometry/unroll.ts";
import { distance3 } from "../geometry/vector.ts";
import type { LaidBlank } from "./blanks.ts";
import type { LaidOut } from "./layOut.ts";

/** One piece of a part, ready to be turned and unrolled before somebody's eyes. */
export interface RoundPiece {
  readonly strip: Unrolling;
  readonly stations: readonly Station[];
  /** Of each numbered line of the layout by hand the station that it stands at. */
  readonly lines: readonly number[];
}

/** Of the many stations of a blank about so many, evenly; numbered lines and both limits of every flat stay. */
export function thinnedStations({ flat, elements }: LaidBlank, about: number): Station[] {
  const { stations } = flat.development;
  const numbered = new Set(elements.map(({ index }) => index));
  const step = Math.max(1, Math.floor(stations.length / about));
  return stations.filter((one, i) => {
    const [before, after] = [stations[i - 1], stations[i + 1]];
    const flatBeside = [before, after].some(
      (other) => other?.theta === one.theta && distance3(other.a, one.a) + distance3(other.b, one.b) > 0,
    );
    return i % step === 0 || numbered.has(i) || i === stations.length - 1 || flatBeside;
  });
}

/** Facets round a whole part that are enough to look round. */
const FACETS = 72;

/** Every piece of a part. */
export function roundOf({ laid }: LaidOut): RoundPiece[] {
  return laid.map((one) => {
    const stations = thinnedStations(one, Math.ceil(FACETS / laid.length));
    const { stations: all } = one.flat.development;
    const lines = one.elements.map(({ index }) => stations.indexOf(all[index] as Station));
    return { strip: unrolling(stations), stations, lines };
  });
}
