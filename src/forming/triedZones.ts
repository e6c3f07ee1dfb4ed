import type { AnySeen } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import type { Tried } from "./tried.ts";
import { cameOutInZone, ONCE_MORE } from "./zoneAdvice.ts";
import { capital } from "./words.ts";
import type { ZonesCorrection } from "./zoneTrials.ts";

/** What a screen has room for: zone by zone the raises at the bearings, the tilt and which zones are alike stand in the step's boxes. */
const IN_BOXES = [
  / \(at the bearings [^)]*\)/g,
  / at half the slant \([^)]*\)/g,
  /, the tilt as it is/g,
  / Set alike with its mirror, zones? [^.]*\./g,
];

/** What is said of each zone, without what the sheet says elsewhere and what all of them taught. */
function shortly(zones: ZonesCorrection["zones"]): string {
  const all = zones.map(({ advice }) => advice).join(" ");
  return IN_BOXES.reduce((words, what) => words.replaceAll(what, ""), all).replaceAll(ONCE_MORE, "");
}

/** What trials of the zones of a part came to, as its work sheet takes it. */
export function triedZones(
  { say }: RollAsked,
  seen: readonly AnySeen[],
  { zones, advice }: ZonesCorrection,
): Tried {
  const several = zones.length > 1;
  const last = seen.at(-1);
  const came = last
    ? `${several && "zone" in last ? `zone ${last.zone} ` : ""}last set ${say.length(last.settingMm)}, came out ${"zone" in last ? cameOutInZone(last, say) : "flat"}`
    : "";
  const places = zones.map(({ kind, set, secondPass }) => ({
    set,
    second: secondPass,
    look: kind === "check",
  }));
  const [first] = places;
  return {
    words: `${capital(came)}. ${several ? shortly(zones) : advice}`,
    set: several ? null : (first?.set ?? null),
    second: several ? null : (first?.second ?? null),
    look: several ? false : (first?.look ?? false),
    zones: several ? places : [],
  };
}
