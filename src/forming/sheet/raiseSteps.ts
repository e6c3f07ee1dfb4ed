import { MM_PER_INCH } from "../../geometry/units.ts";
import { type RollPlaces, setting } from "../rollPlaces.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import type { PassPoint } from "../passPoints.ts";
import { endTowards } from "./rollEnds.ts";

/** The most that is raised at once. [mm] (common practice, no source) */
const STEP = { mm: 5, in: (3 / 16) * MM_PER_INCH } as const;
const most = ({ units }: Say): string => (units === "mm" ? "5 mm" : "3/16 in");

/** The same raise put on over another length of plate leaves another gap. */
const ALIKE = " Do the same with every blank.";
const noted = ({ item }: RollSheetAsked): string => (item.pieces * item.quantity > 1 ? ALIKE : "");

/**
 * How soon the whole raise is to be on. What is bent first comes over the bending roll once the plate has gone as far as
 * that stands from the pinch; until then the roll lifts the straight lead alone. What passes the pinch before the raise is
 * whole stays more open. How fast a roll may be raised is the manual's.
 *
 * @see derived here
 */
function soon(asked: RollSheetAsked): string {
  const { settings, say } = asked;
  const arm = settings?.flat.acrossMm;
  if (arm === undefined) return ` Have it all on as soon as the machine's manual lets you.${noted(asked)}`;
  return ` Chalk ${isPipe(asked.item) ? "the plate" : "the large edge"} at the pinch: all of it on before the chalk has gone ${say.tape(arm)}, if the manual lets you, or a longer end stays open.${noted(asked)}`;
}

/** Raises that are all but none are not told in steps. [mm] */
const NONE = 0.05;

/** So many like steps at both bearings, those of the second pass in the order of the sentence before them, so that both arrive together: "15 like steps, about 4.8 mm at the drop end and …"; null where one step is enough, or nobody knows. */
function likeSteps(
  { item, say }: RollSheetAsked,
  places: RollPlaces | null,
  id: PassPoint["id"],
): string | null {
  const pipe = isPipe(item);
  const { smallBearingMm, largeBearingMm } = places ?? { smallBearingMm: null, largeBearingMm: null };
  const ends =
    places && pipe
      ? [places.largeMm]
      : smallBearingMm === null || largeBearingMm === null
        ? []
        : [smallBearingMm, largeBearingMm];
  const count = Math.ceil(Math.max(0, ...ends.map(Math.abs)) / STEP[say.units]);
  if (count < 2) return null;
  const each = ends.map((mm, i) => {
    const name = endTowards(i === 0 ? "small" : "large", id);
    const one = Math.abs(mm / count) < NONE ? "next to nothing" : setting(mm / count, say);
    return pipe || id === "finished" ? one : `${one} at the ${name}`;
  });
  return `${count} like steps, about ${each.join(" and ")}`;
}

/** How the first pass's setting is come to. */
export function raiseSteps(asked: RollSheetAsked, places: RollPlaces | null): string {
  const pipe = isPipe(asked.item);
  const like = likeSteps(asked, places, "trial");
  return like === null
    ? `Go in steps of ${most(asked.say)} or less on the scale${pipe ? "" : ", both bearings by turns, so that both arrive together"}.${soon(asked)}`
    : `Bring it to 0; from there go in ${like}${pipe ? "" : ", by turns"}.${soon(asked)}`;
}

/** The same for the second pass, in few words: the first has said how. */
export function raiseStepsAgain(asked: RollSheetAsked, places: RollPlaces | null): string {
  const like = likeSteps(asked, places, "finished");
  return like === null ? `in steps of ${most(asked.say)} or less` : `from 0 in ${like}`;
}
