import type { RollAsked } from "./asked.ts";
import type { AnySeen } from "./settleTrials.ts";
import type { Tried } from "./tried.ts";
import { cameOutInZone } from "./zoneAdvice.ts";
import { capital, lower } from "./words.ts";
import type { ZonesCorrection } from "./zoneTrials.ts";

/** What trials of the zones of a part came to, as its work sheet takes it. */
export function triedZones({ say }: RollAsked, seen: readonly AnySeen[], { zones }: ZonesCorrection): Tried {
  const several = zones.length > 1;
  const last = seen.at(-1);
  const came = last
    ? `last set ${say.length(last.settingMm)}, came out ${"zone" in last ? cameOutInZone(last, say) : "flat"}`
    : "";
  const places = zones.map(({ kind, set, secondPass }) => ({
    set,
    second: secondPass,
    look: kind === "check",
  }));
  const [first] = places;
  const setFirst = !several && first?.set && last && !("flat" in last);
  // What all zones taught together is for whoever corrects.
  const said = zones.map((one) => one.advice).join(" ");
  return {
    // Several zones have room for what each is set to, and how far it came, alone.
    words: several ? said : setFirst ? `${lower(said)} ${capital(came)}.` : `${capital(came)}. ${said}`,
    set: several ? null : (first?.set ?? null),
    second: several ? null : (first?.second ?? null),
    look: several ? false : (first?.look ?? false),
    zones: several ? places : [],
  };
}
