import type { RollAsked } from "./asked.ts";
import type { FirstPass } from "./firstPass.ts";
import { placesSaid, type RollPlaces, setting } from "./rollPlaces.ts";
import { number, type Say } from "./say.ts";
import type { SecondPass } from "./secondPass.ts";
import { isPipe } from "./skin.ts";
import { aboveHigh, LOOK, PAST_CAP, readingAsked, secondSaid } from "./trialAdvice.ts";
import { capital, listed } from "./words.ts";
import type { ZoneModel } from "./zoneModel.ts";
import type { ZoneKind, ZoneNext } from "./zoneNext.ts";
import type { ZoneSeen } from "./zoneSeen.ts";
import type { ZonesCorrection, ZoneTrial } from "./zoneTrials.ts";
import { listedZones } from "./zoneWords.ts";

type Words = Pick<RollAsked, "item" | "say" | "onSheet">;

/** What is known of one zone when it is put into words. */
interface ZoneTold {
  readonly model: ZoneModel;
  readonly window: FirstPass;
  readonly trials: readonly ZoneTrial[];
  readonly kind: ZoneKind;
  readonly next: ZoneNext | null;
  readonly set: RollPlaces | null;
  readonly from: readonly number[];
  readonly disagrees: readonly number[];
  readonly secondPass: SecondPass | null;
  /** The zones of this blank that are past their cap: it is set aside, and every setting is for the next one. */
  readonly pastCap: readonly number[];
  /** Inside radius at the large end that `set` is to leave; null where trials say too little. [mm] */
  readonly expectMm?: number | null;
  /** The other zones of the same radii, which are set alike. */
  readonly mirrors: readonly number[];
  /** Those of the same radii that came out unlike it. */
  readonly unlike: readonly number[];
}

/** "Zone 2: "; nothing where one zone goes all round. */
const zoneHead = ({ number: zone }: ZoneModel, zones: number): string =>
  zones === 1 ? "" : `Zone ${zone}: `;

/** Where to set; on a sheet all of it stands in the boxes. */
function at({ item, say, onSheet }: Words, places: RollPlaces | null): string {
  if (!places) return "";
  const pipe = isPipe(item);
  return onSheet && !pipe
    ? `${setting(places.largeMm, say)} at the large edge`
    : placesSaid({ pipe, say }, places);
}

/** "bent 52 % of its finished bend (large end 50 %, small end 47 %)". */
function bent({ say, onSheet }: Words, { closed, largeShare, smallShare, sprangFlat }: ZoneTrial): string {
  if (sprangFlat) return "the plate sprang back flat";
  const ends = [
    ...(largeShare === null ? [] : [`large end ${say.percent(largeShare)}`]),
    ...(smallShare === null ? [] : [`small end ${say.percent(smallShare)}`]),
  ];
  // Several zones have the same few words, and the share of what is said where it is measured.
  return onSheet
    ? `bent ${say.percent(closed)}`
    : `bent ${say.percent(closed)} of its finished bend at half the slant (${ends.join(", ")})`;
}

function wanted({ say }: Words, { from, to }: FirstPass): string {
  return `wanted ${say.percent(from)} to ${say.percent(to)}`;
}

/** "zone 1 is past its cap". */
const isPastCap = (zones: readonly number[]): string =>
  `${listedZones(zones)} ${zones.length === 1 ? "is past its cap" : "are past their caps"}`;

function checked(asked: Words, { next, model, from, trials }: ZoneTold, last: ZoneTrial | undefined): string {
  if (next?.kind !== "check" || !last)
    return `${last ? bent(asked, last) : "no trial yet"}; set like its mirror, which is to be looked at first (${listedZones(from)}): no setting is safe to name.`;
  switch (next.why) {
    case "disagree":
      return `${bent(asked, last)}. No further raise is safe to name by these trials: measure this zone again before it is rolled on, and leave out the trial that was wrong.`;
    case "reading":
      return readingAsked(asked, trials, model.aim);
    case "tilt":
      return `${bent(asked, last)}: the ${next.end} end is at its limit while half the slant is still open. Do not raise both ends: raise the ${next.end === "large" ? "small" : "large"} end alone, in small steps, and measure both ends after each.`;
    case "flat":
      return `the plate sprang back flat, and the plan's own high for this zone, ${asked.say.length(model.aim.highMm)} at the large edge, leaves no more to raise. Do not raise further: make sure that ${LOOK}, and begin again from the sheet's first setting.`;
  }
}

/** The first raise of the next blank, for its sheet; the second pass has its own step. One zone has room for what it is to leave. */
function nextBlank(asked: Words, { window, set, model, expectMm }: ZoneTold, last: ZoneTrial, zones: number) {
  const { say } = asked;
  const { from, to, cap } = window;
  const came = {
    open: `, ${wanted(asked, window)}`,
    "in the window": `, within ${say.percent(from)} to ${say.percent(to)}`,
    "past the window": `, past the ${say.percent(to)} where this pass ends`,
    "past the cap": `, past the cap of ${say.percent(cap)} (do not roll on with that blank, set it aside)`,
  }[last.place];
  const high = set ? aboveHigh(say, set.largeMm, model.aim.highMm) : "";
  if (zones > 1) return `${bent(asked, last)}${came}: set ${at(asked, set)}.${high}`;
  const expect =
    expectMm == null
      ? ""
      : `; expect an inside radius near ${say.tape(say.units === "mm" ? Math.round(expectMm) : expectMm)}${isPipe(asked.item) ? "" : " at the large end"}`;
  return `raise to ${at(asked, set)}${expect}.${high} Bent ${say.percent(last.closed)} of its finished bend${came}.`;
}

/** What to do in one zone, in sentences with its own numbers. */
export function zoneAdvice(whole: Words, told: ZoneTold, zones: number): string {
  const forNext = whole.onSheet === true;
  // One zone has room for all of it.
  const onSheet = forNext && zones > 1;
  const asked = { ...whole, onSheet };
  const { model, window, trials, set, from, disagrees, secondPass, pastCap, mirrors, unlike } = told;
  const { say } = asked;
  const last = trials.at(-1);
  const head = zoneHead(model, zones);
  const tilt = isPipe(asked.item) || forNext ? "" : ", the tilt as it is";
  const aside = pastCap.length > 0 && !forNext;
  const setAside = aside ? ` This blank is set aside: ${isPastCap(pastCap)}.` : "";
  const onNext = aside ? " with the next blank" : "";
  // The second pass has its own step on a sheet.
  const second = secondSaid(asked, forNext ? null : secondPass, {
    by: "the templates",
    of: aside ? " of the next blank" : "",
  });
  const high = set ? aboveHigh(say, set.largeMm, model.aim.highMm) : "";
  const unsure =
    disagrees.length > 0
      ? ` Trial ${listed(disagrees)} of this zone and its last one do not agree: measure again first.`
      : "";
  const alike =
    mirrors.length > 0 && set && told.kind !== "plan" && !onSheet
      ? ` Set alike with its mirror, ${listedZones(mirrors)}.`
      : unlike.length > 0
        ? ` It came out unlike its mirror, ${listedZones(unlike)}: set each by itself.`
        : "";
  const said = (): string => {
    if (told.kind === "check")
      return `${checked(asked, told, last)}${last?.place === "past the cap" ? ` ${PAST_CAP}` : setAside}${aside ? " The next blank waits for that too." : ""}`;
    if (!last)
      return `${
        told.kind === "taught" && onSheet && from.every((one) => mirrors.includes(one))
          ? `no trial yet: set like ${listedZones(from)}.${high}`
          : told.kind === "taught"
            ? `no trial yet; by what ${listedZones(from)} taught start${onNext} at ${at(asked, set)}.${high}`
            : `no trial yet, and none that stayed bent to learn from: start${onNext} at the plan's own ${at(asked, set)}.`
      }${setAside}`;
    if (forNext && set && !last.sprangFlat) return nextBlank(asked, told, last, zones);
    switch (told.kind) {
      case "done": {
        const done = `${bent(asked, last)}, within ${say.percent(window.from)} to ${say.percent(window.to)}`;
        return aside
          ? `${done}.${setAside} Set ${at(asked, set)} for the next blank${tilt}.${second}`
          : `${done}: its first pass is done; keep ${at(asked, set)} for the lot.${second}`;
      }
      case "raise": {
        const open = last.sprangFlat
          ? `${bent(asked, last)}. First make sure that ${LOOK}.`
          : `${bent(asked, last)}, ${wanted(asked, window)}`;
        if (aside)
          return `${open}${last.sprangFlat ? "" : "."}${setAside} Set ${at(asked, set)} for the next blank${tilt}, with the plate moving.${last.sprangFlat ? "" : high}`;
        return `${open}${last.sprangFlat ? " Only then" : ":"} set ${at(asked, set)}${tilt}${forNext ? "" : ", with the plate moving, and roll this blank once more"}.${last.sprangFlat ? "" : high}`;
      }
      case "overshot": {
        const next = `Set ${at(asked, set)} for the next blank${tilt}.`;
        if (last.place === "past the cap")
          return `${bent(asked, last)}, past the cap of ${say.percent(window.cap)}. ${PAST_CAP} ${next}`;
        const past = `${bent(asked, last)}, past the ${say.percent(window.to)} where this pass ends`;
        return aside
          ? `${past}.${setAside} ${next}${second}`
          : `${past}: no further raise ${zones === 1 ? "on this blank in this pass" : "in this zone of this blank"}; it is kept for the second pass.${second} ${next}`;
      }
      case "taught":
      case "plan":
        return "";
    }
  };
  const words = `${said()}${alike}${unsure}`;
  return head === "" ? capital(words) : `${head}${words}`;
}

/** What all trials together say of this plate on this roll; nothing before one stayed bent. */
export function learnedSaid(
  { say }: Words,
  learned: ZonesCorrection["learned"],
  { several }: { readonly several: boolean },
): string {
  if (!learned) return "";
  const { offsetMm, slope, zones } = learned;
  const more = `${say.length(Math.abs(offsetMm))} ${offsetMm < 0 ? "less" : "more"} raise than the model where it was tried`;
  const each =
    slope === null ? "" : `, and ${number(slope, 2)} mm for each further millimetre of the model's`;
  if (!several) return `This plate on this roll asks about ${more}${each}.`;
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
