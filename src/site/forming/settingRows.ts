import { settableStart, worstOf } from "../../forming/settingProblem.ts";
import type { RollSettings } from "../../forming/rollSettings.ts";
import type { NumberedStep } from "../../forming/sheet/step.ts";

/** What stands under the groups of a table of settings: what each end asks, what is set to start with, and at the bearings. */
export const SETTING_NAMES = [
  "low",
  "best",
  "high",
  "low",
  "best",
  "high",
  "large end",
  "small end",
  "tilt",
  "small",
  "large",
];

type Zone = RollSettings["zones"][number];

/** The steps at which the plan's first settings are set, unless trials say otherwise. */
const RAISES: Readonly<Partial<Record<Zone["passes"][number]["id"], string>>> = {
  trial: "first-raise",
  finished: "second-raise",
};

export const overruledLabel = (label: string, { number }: Pick<NumberedStep, "number">): string =>
  `${label}: overruled, step ${number}`;

/** One moment of rolling in one zone; null where nothing can be told. */
interface SettingRow {
  readonly zone: Zone;
  readonly number: number;
  /** Which moment, and whether trials overrule what the plan has for it. */
  readonly label: string;
  readonly planLabel: string;
  /** The step at which it is set first; null where it is none. */
  readonly raisedAt: string | null;
  /** Low, best and high at the large end and at the small end; then what is set to start with at both. */
  readonly raisesMm: readonly (number | null)[];
  readonly tiltDeg: number | null;
  readonly bearingsMm: readonly (number | null)[];
}

export const settingRows = (
  { zones }: RollSettings,
  steps: readonly Pick<NumberedStep, "id" | "number" | "overruled">[],
): SettingRow[] =>
  zones.flatMap((zone, i) =>
    zone.passes.map((pass) => {
      const { large, small } = pass;
      const raisedAt = RAISES[pass.id] ?? null;
      const by = steps.find(({ id, overruled }) => id === raisedAt && overruled?.includes(i + 1));
      const label = by ? overruledLabel(pass.label, by) : pass.label;
      // What cannot be set is told below the table.
      const start = settableStart(pass);
      return {
        zone,
        number: i + 1,
        label,
        planLabel: pass.label,
        raisedAt,
        raisesMm: [
          ...[large, small].flatMap(({ lowMm, bestMm, highMm }) => [lowMm, bestMm, highMm]),
          start?.largeMm ?? null,
          start?.smallMm ?? null,
        ],
        tiltDeg: start?.tiltDeg ?? null,
        bearingsMm: [start?.smallBearingMm ?? null, start?.largeBearingMm ?? null],
      };
    }),
  );

/** What stands in the way of any of these settings, each kind at its worst. */
export const settingProblems = ({ zones }: RollSettings): string[] =>
  worstOf(zones.flatMap(({ passes }) => passes.flatMap(({ problems }) => problems)));
