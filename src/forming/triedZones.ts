import type { AnySeen } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import { setting } from "./rollPlaces.ts";
import { isPipe } from "./skin.ts";
import type { Tried } from "./tried.ts";
import { capital } from "./words.ts";
import { cameOutInZone } from "./zoneAdvice.ts";
import { listedZones } from "./zoneWords.ts";
import type { ZoneCorrection, ZonesCorrection } from "./zoneTrials.ts";

/** What is done with a zone, in a word or two; the numbers stand in the boxes. */
function doing({ kind, trials, nextBlank }: ZoneCorrection): string {
  switch (kind) {
    case "done":
      return nextBlank ? "keep for the next blank" : "keep";
    case "raise":
    case "taught":
      return trials.at(-1)?.sprangFlat
        ? "look at 0, thickness and contact, then start"
        : nextBlank
          ? "start the next blank in"
          : "start";
    case "overshot":
      return trials.at(-1)?.place === "past the cap"
        ? "blank set aside, the next lower in"
        : "no more raise, next blank lower in";
    case "check":
      return "look first in";
    case "plan":
      return "by the plan";
  }
}

/** "keep zone 1; start zones 2 and 3": zones of which the same is said, together. */
function allDoing(zones: readonly ZoneCorrection[]): string {
  const groups = new Map<string, number[]>();
  for (const one of zones) groups.set(doing(one), [...(groups.get(doing(one)) ?? []), one.zone]);
  return [...groups].map(([words, numbers]) => `${words} ${listedZones(numbers)}`).join("; ");
}

/** What trials of the zones of a part came to, as its work sheet takes it. */
export function triedZones(
  { item, say }: RollAsked,
  seen: readonly AnySeen[],
  { zones, advice }: ZonesCorrection,
): Tried {
  const several = zones.length > 1;
  const numbers = [...new Set(seen.map((one) => ("zone" in one ? one.zone : 1)))].sort((a, b) => a - b);
  const last = seen.at(-1);
  const came = last
    ? `${several && "zone" in last ? `zone ${last.zone} ` : ""}last set ${say.length(last.settingMm)}, came out ${"zone" in last ? cameOutInZone(last, say) : "flat"}`
    : "";
  const places = zones.map(({ kind, set, secondPass }) => ({
    set,
    second: secondPass,
    look: kind === "check",
  }));
  const [only] = zones;
  const [first] = places;
  const problems = [...new Set(zones.flatMap((one) => one.problems))];
  const large = only?.set ? setting(only.set.largeMm, say) : "";
  const where = isPipe(item) ? large : `${large} at the large edge, the rest in the boxes`;
  const what = several ? allDoing(zones) : only?.set ? `${doing(only)} at ${where}` : (only?.brief ?? "");
  return {
    words: `${capital(came)}. ${advice}`,
    brief: [
      several
        ? `By this part's own trials of ${listedZones(numbers)}: ${what}, as in the boxes.`
        : `By this part's own trials (${came}): ${what}.`,
      ...problems,
    ].join(" "),
    set: several ? null : (first?.set ?? null),
    second: several ? null : (first?.second ?? null),
    look: several ? false : (first?.look ?? false),
    zones: several ? places : [],
  };
}
