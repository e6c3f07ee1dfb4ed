import { bentAlongMm } from "../bentAlong.ts";
import type { FormingCase } from "../case.ts";
import { DERIVED } from "../judge.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import { depthOfRadius, straightedgeOf } from "../straightedge.ts";
import { alongZoneMm, MOST_ZONES, type RollZone, zonesOf } from "../zones.ts";
import { zoneName } from "../zoneWords.ts";
import { settable } from "../rollPlaces.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, type NoteBox, taped } from "./step.ts";
import { sharesOf, templateRadius } from "./touch.ts";

/** So much of a zone's edge a straightedge may take: beyond that it comes to rest on its neighbours. Derived here. [-] */
const OF_EDGE = 0.7;
/** So much longer than the inside radius it may be: beyond that the depth is nearly that of a half circle. Derived here. [-] */
const LONGEST_TO_RADIUS = 1.2;

export const TIGHT_OR_OPEN: NoteBox = { label: "template, tight or open", unit: "-" };

/** Inside radii at one end of one zone where the window of the first pass begins and ends. [mm] */
interface EndWindow {
  readonly end: "ends" | "large end" | "small end";
  readonly openMm: number;
  readonly tightMm: number;
}

function endWindows(item: FormingCase, zone: RollZone): EndWindow[] {
  const { from, to } = sharesOf(item);
  const at = (end: EndWindow["end"], middleMm: number): EndWindow => ({
    end,
    openMm: templateRadius(item, middleMm, from),
    tightMm: templateRadius(item, middleMm, to),
  });
  return isPipe(item)
    ? [at("ends", zone.largeRadiusMm)]
    : [at("large end", zone.largeRadiusMm), at("small end", zone.smallRadiusMm)];
}

/** Both limits of the window as inside radii, at both ends of every zone. [mm] */
export function windowFigures(item: FormingCase): Figure[] {
  const zones = zonesOf(item);
  return zones.flatMap((zone) => {
    const name = zoneName(zone, zones.length);
    return endWindows(item, zone).flatMap(({ end, openMm, tightMm }) => [
      taped(`${name}window, ${end}, open limit, inside radius`, openMm, DERIVED),
      taped(`${name}window, ${end}, tight limit, inside radius`, tightMm, DERIVED),
    ]);
  });
}

/** A line for the radius or the depth that was found at each end of each zone, its window before it. */
export function windowBoxes(asked: RollSheetAsked): NoteBox[] {
  const { item, roll, say } = asked;
  const zones = zonesOf(item);
  // So many settings no roll is set to: such a part goes by its templates alone.
  if (zones.length === 0 || zones.length > MOST_ZONES) return [TIGHT_OR_OPEN];
  const chordMm = roll && straightedgeOf({ item, roll });
  return zones.flatMap((zone, i) =>
    endWindows(item, zone).map((window) => {
      const depths = zones.length === 1 || chordMm === null ? null : depthsIn(asked, i, window, chordMm);
      return {
        label: `${zones.length === 1 ? "" : `zone ${i + 1} `}${window.end} R ${say.bare(window.openMm)} to ${say.bare(window.tightMm)}${depths === null ? "" : ` (${depths})`}`,
        unit: "mm",
      };
    }),
  );
}

/** The small end's window of a skin in one zone, as depths: "64.3 to 90.4"; null where no straightedge lies in it. */
export function smallEndDepths(asked: RollSheetAsked, chordMm: number): string | null {
  const [zone, ...others] = zonesOf(asked.item);
  const window = zone && endWindows(asked.item, zone).find(({ end }) => end === "small end");
  return window && others.length === 0 ? depthsIn(asked, 0, window, chordMm) : null;
}

/** Are there lines for the radii found, each with its window before it? */
export const isBoxed = (asked: RollSheetAsked): boolean => windowBoxes(asked)[0] !== TIGHT_OR_OPEN;

/** What is deep is read to a tenth of a millimetre at the best. */
const told = (mm: number, say: Say): string =>
  say.bare(mm >= 10 && say.units === "mm" ? settable(mm, say.units) : mm);

/** A window of one zone as depths under the straightedge; null where it does not lie in it. */
function depthsIn(
  { item, roll, say }: RollSheetAsked,
  i: number,
  { end, openMm, tightMm }: EndWindow,
  chordMm: number,
): string | null {
  const rimMm = end === "small end" ? item.rimsMm.small : item.rimsMm.large;
  const zone = zonesOf(item)[i];
  const bentMm = roll ? (bentAlongMm({ item, roll }, rimMm)[i] ?? 0) : 0;
  const edgeMm = zone ? OF_EDGE * alongZoneMm(zone, rimMm) : 0;
  if (chordMm > Math.min(tightMm * LONGEST_TO_RADIUS, edgeMm, bentMm)) return null;
  const [least, most] = [openMm, tightMm].map((insideMm) => told(depthOfRadius({ chordMm, insideMm }), say));
  return `${least} to ${most}`;
}
