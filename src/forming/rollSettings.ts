import type { RollAsked } from "./asked.ts";
import { DERIVED } from "./judge.ts";
import { passPoints } from "./passPoints.ts";
import { type PassSettings, passSettings } from "./passSettings.ts";
import { flatContact, sectionOf } from "./rollSetting.ts";
import { plateOf } from "./springback.ts";
import { stopPlace } from "./stopPlace.ts";
import { type Lying, lyingOf } from "./turnOnStop.ts";
import { type RollZone, zonesOf } from "./zones.ts";

interface ZoneSettings extends RollZone {
  readonly passes: readonly PassSettings[];
}

/** Where to set the bending roll of this machine for this part. */
export interface RollSettings {
  /** From the end of the roll face to the small edge on its stop; null for a pipe, which needs no stop. [mm] */
  readonly stopMm: number | null;
  /** Where the bending roll touches the flat plate: across from the pinch, and up the slide from its origin. [mm] */
  readonly flat: { readonly acrossMm: number; readonly upMm: number };
  /** From the flat plate to the end of the slide. [mm] */
  readonly travelMm: number;
  /** How the flat blank is laid on the rolls; null for a pipe, and for a skin that is curved unevenly. */
  readonly lying: Lying | null;
  readonly zones: readonly ZoneSettings[];
  /** Where all settings come from, and what they are worth, in a sentence. */
  readonly rule: string;
  readonly basis: string;
}

export type SettingsAnswer =
  | { readonly kind: "settings"; readonly settings: RollSettings }
  | { readonly kind: "none"; readonly why: string };

const RULE =
  "Raise along the slide from where the bending roll touches the flat plate: low as if the plate had sprung back already, high as if still fully bent, best two thirds of the way. A start for a trial: pinch and frame give, and the small end, not gripped, usually needs more. Corrections keep the first trial's tilt; here each row has its own, so the second pass's table has other raises for the window.";

const OTHER: Readonly<Record<NonNullable<RollAsked["roll"]["arrangement"]>, string>> = {
  "initial-pinch": "",
  pyramid:
    "no settings: on a pyramid the plate is bent at the top roll between two bottom rolls and nothing holds the cone's large side, for which no sound model is known here",
  "double-pinch":
    "no settings: on a double-pinch roll both lower rolls move and change parts in a pass, for which no sound model is known here",
  "four-roll":
    "no settings: on a four-roll machine two side rolls share the bend, for which no sound model is known here",
};

const UNKNOWN =
  "no settings: the shop file does not say how the rolls of this machine stand to each other (arrangement)";

/** Checks, plan and trials of one part ask for the same settings. */
const known = new WeakMap<RollAsked["item"], Known>();

type Known = WeakMap<RollAsked["roll"], { readonly say: RollAsked["say"]; readonly answer: SettingsAnswer }>;

/** Settings for every zone and pass on an initial-pinch roll that gives its slide; else why there are none. */
export function rollSettings(asked: RollAsked): SettingsAnswer {
  const { item, roll, say } = asked;
  const onRolls: Known = known.get(item) ?? new WeakMap();
  const before = onRolls.get(roll);
  if (before?.say === say) return before.answer;
  const answer = settingsFor(asked);
  known.set(item, onRolls.set(roll, { say, answer }));
  return answer;
}

function settingsFor({ item, roll, say }: RollAsked): SettingsAnswer {
  const { arrangement } = roll;
  if (arrangement === undefined) return { kind: "none", why: UNKNOWN };
  if (arrangement !== "initial-pinch") return { kind: "none", why: OTHER[arrangement] };
  const section = sectionOf(roll);
  if (!section)
    return {
      kind: "none",
      why: "no settings: the shop file does not give the slide of the bending roll (where it starts, how steeply it rises, its travel)",
    };
  const plate = plateOf(item);
  const flat = flatContact(section, plate.thicknessMm);
  if (flat.acrossMm <= 0)
    return {
      kind: "none",
      why: "no settings: by the slide in the shop file the bending roll does not stand beside the pinch when it touches this plate",
    };
  const stopMm = stopPlace({ item, roll })?.mm ?? null;
  const points = passPoints(item);
  const zones = zonesOf(item).map((zone) => ({
    ...zone,
    passes: points.map((point) =>
      passSettings({ section, roll, plate, zone, stopMm: stopMm ?? 0, say }, point),
    ),
  }));
  if (zones.length === 0)
    return { kind: "none", why: "no settings: it runs to a point, and no stop holds a point" };
  return {
    kind: "settings",
    settings: {
      stopMm,
      flat,
      travelMm: section.travelMm - flat.upMm,
      lying: lyingOf(item, roll, flat.acrossMm),
      zones,
      rule: RULE,
      basis: DERIVED,
    },
  };
}

/**
 * How much of the blank the first pass leaves straight at the seam edge that leads: as far as the bending roll stands from
 * the pinch. It is what the settings are told with; where there are none nothing is known of it, and it is taken as nought.
 *
 * @returns along the plate, square to the element [mm]
 * @see derived here
 */
export function straightLeadMm(asked: RollAsked): number {
  const answer = rollSettings(asked);
  return answer.kind === "settings" ? answer.settings.flat.acrossMm : 0;
}
