import type { RollAsked } from "./asked.ts";
import type { FirstPass } from "./firstPass.ts";
import { placesSaid, type RollPlaces } from "./rollPlaces.ts";
import { number, type Say } from "./say.ts";
import type { SecondPass } from "./secondPass.ts";
import { isPipe } from "./skin.ts";
import { LOOK, PAST_CAP } from "./trialAdvice.ts";
import type { ZoneModel } from "./zoneModel.ts";
import type { ZoneNext } from "./zoneNext.ts";
import type { ZoneSeen } from "./zoneSeen.ts";
import type { ZonesCorrection, ZoneTrial } from "./zoneTrials.ts";

type Words = Pick<RollAsked, "item" | "say">;

/** What is known of one zone when it is put into words. */
interface ZoneTold {
  readonly model: ZoneModel;
  readonly window: FirstPass;
  readonly trials: readonly ZoneTrial[];
  readonly kind: ZoneNext["kind"] | "taught" | "plan";
  readonly next: ZoneNext | null;
  readonly set: RollPlaces | null;
  readonly from: readonly number[];
  readonly disagrees: readonly number[];
  readonly secondPass: SecondPass | null;
}

/** "Zone 2: "; nothing where one zone goes all round. */
const zoneHead = ({ number: zone }: ZoneModel, zones: number): string =>
  zones === 1 ? "" : `Zone ${zone}: `;

/** "zone 2", "zones 1 and 3". */
export const listedZones = (zones: readonly number[]): string =>
  zones.length === 1
    ? `zone ${zones[0] ?? 1}`
    : `zones ${zones.slice(0, -1).join(", ")} and ${zones.at(-1) ?? 1}`;

const at = ({ item, say }: Words, places: RollPlaces | null): string =>
  places ? placesSaid({ pipe: isPipe(item), say }, places) : "";

/** "bent 52 % of its finished bend (large end 50 %, small end 47 %)". */
function bent({ say }: Words, { closed, largeShare, smallShare, sprangFlat }: ZoneTrial): string {
  if (sprangFlat) return "the plate took no set at all";
  const ends = [
    ...(largeShare === null ? [] : [`large end ${say.percent(largeShare)}`]),
    ...(smallShare === null ? [] : [`small end ${say.percent(smallShare)}`]),
  ];
  return `bent ${say.percent(closed)} of its finished bend at half the slant (${ends.join(", ")})`;
}

function wanted({ say }: Words, { from, to }: FirstPass): string {
  return `wanted ${say.percent(from)} to ${say.percent(to)}`;
}

function checked(asked: Words, { next, model }: ZoneTold, last: ZoneTrial): string {
  if (next?.kind !== "check") return "";
  switch (next.why) {
    case "disagree":
      return `${bent(asked, last)}. No further raise is safe to name by these trials: measure this zone again before it is rolled on, and leave out the trial that was wrong.`;
    case "tilt":
      return `${bent(asked, last)}: the ${next.end} end is at its limit while half the slant is still open. Do not raise both ends: raise the ${next.end === "large" ? "small" : "large"} end alone, in small steps, and measure both ends after each.`;
    case "flat":
      return `the plate took no set at all, and the plan's own high for this zone, ${asked.say.length(model.aim.highMm)} at the large edge, leaves no more to raise. Do not raise further: make sure that ${LOOK}, and begin again from the sheet's first setting.`;
  }
}

/** What to do in one zone, in sentences with its own numbers. */
export function zoneAdvice(asked: Words, told: ZoneTold, zones: number): string {
  const { model, window, trials, set, from, disagrees, secondPass } = told;
  const { say } = asked;
  const last = trials.at(-1);
  const head = zoneHead(model, zones);
  const tilt = isPipe(asked.item) ? "" : ", the tilt as it is";
  const second = secondPass
    ? ` Second pass: start at ${at(asked, secondPass)}${secondPass.held ? " (held back at the plan's own high)" : ""}, and go on by the templates.`
    : "";
  const unsure =
    disagrees.length > 0
      ? ` Trial ${disagrees.join(" and ")} of this zone and its last one do not agree: measure again first.`
      : "";
  const said = (): string => {
    if (!last)
      return told.kind === "taught"
        ? `no trial yet; by what ${listedZones(from)} taught start at ${at(asked, set)}.`
        : `no trial yet, and none that took set to learn from: start at the plan's own ${at(asked, set)}.`;
    switch (told.kind) {
      case "done":
        return `${bent(asked, last)}, within ${say.percent(window.from)} to ${say.percent(window.to)}: its first pass is done; keep ${at(asked, set)} for the lot.${second}`;
      case "raise":
        return last.sprangFlat
          ? `${bent(asked, last)}. First make sure that ${LOOK}. Only then set ${at(asked, set)}${tilt}, with the plate moving, and roll this blank once more.`
          : `${bent(asked, last)}, ${wanted(asked, window)}: set ${at(asked, set)}${tilt}, with the plate moving, and roll this blank once more.`;
      case "overshot":
        return last.place === "past the cap"
          ? `${bent(asked, last)}, past the cap of ${say.percent(window.cap)}. ${PAST_CAP} Set ${at(asked, set)} for the next blank${tilt}.`
          : `${bent(asked, last)}, past the ${say.percent(window.to)} where this pass ends: no further raise in this zone of this blank; it is kept for the second pass. Set ${at(asked, set)} for the next blank${tilt}.`;
      case "check":
      case "taught":
      case "plan":
        return checked(asked, told, last);
    }
  };
  const words = `${said()}${unsure}`;
  return head === "" ? `${words.charAt(0).toUpperCase()}${words.slice(1)}` : `${head}${words}`;
}

/** The same in few words, to stand on a sheet. */
export function zoneBrief(asked: Words, told: ZoneTold, zones: number): string {
  const { model, trials, kind, next, set, disagrees, from } = told;
  const last = trials.at(-1);
  const head = zoneHead(model, zones);
  const places = set && at(asked, set);
  const unsure = disagrees.length > 0 ? " (trials do not agree: measure again)" : "";
  const past = last?.place === "past the cap";
  const words = {
    done: `keep ${places ?? ""}`,
    raise: `${last?.sprangFlat ? "look at 0, thickness and contact, then " : ""}start at ${places ?? ""}`,
    overshot: `${past ? "past the cap, blank set aside; next blank" : "no more raise; next blank"} ${places ?? ""}`,
    check:
      next?.kind === "check" && next.why === "tilt"
        ? `the ${next.end} end is at its limit: raise the other alone`
        : "look first, no further raise",
    taught: `by ${listedZones(from.length > 0 ? from : [1])} start at ${places ?? ""}`,
    plan: `the plan's own ${places ?? ""}`,
  }[kind];
  const all = `${words}${unsure}.`;
  return head === "" ? `${all.charAt(0).toUpperCase()}${all.slice(1)}` : `${head}${all}`;
}

/** What all trials together say of this plate on this roll; nothing before one took set. */
export function learnedSaid({ say }: Words, learned: ZonesCorrection["learned"]): string {
  if (!learned) return "";
  const { offsetMm, slope, zones } = learned;
  const more = `${say.length(Math.abs(offsetMm))} ${offsetMm < 0 ? "less" : "more"} raise than the model where it was tried`;
  const each =
    slope === null ? "" : `, and ${number(slope, 2)} mm for each further millimetre of the model's`;
  return `By ${listedZones(zones)} this plate on this roll asks about ${more}${each}; plate and machine being the same, that holds for every zone.`;
}

/** "inside R 830 mm large end, 520 mm small end" or "sprang back flat". */
export function cameOutInZone(seen: ZoneSeen, say: Say): string {
  if ("flat" in seen) return "sprang back flat";
  const ends = [
    ...(seen.largeMm === undefined ? [] : [`${say.length(seen.largeMm)} large end`]),
    ...(seen.smallMm === undefined ? [] : [`${say.length(seen.smallMm)} small end`]),
  ];
  return `inside R ${ends.join(", ")}`;
}
