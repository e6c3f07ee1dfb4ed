import { settableStart, worstOf } from "../../forming/settingProblem.ts";
import type { RollSettings } from "../../forming/rollSettings.ts";

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

/** One moment of rolling in one zone; null where nothing can be told. */
interface SettingRow {
  readonly zone: Zone;
  readonly number: number;
  readonly label: string;
  /** Low, best and high at the large end and at the small end; then what is set to start with at both. */
  readonly raisesMm: readonly (number | null)[];
  readonly tiltDeg: number | null;
  readonly bearingsMm: readonly (number | null)[];
}

export const settingRows = ({ zones }: RollSettings): SettingRow[] =>
  zones.flatMap((zone, i) =>
    zone.passes.map((pass) => {
      const { label, large, small } = pass;
      // What cannot be set is told below the table.
      const start = settableStart(pass);
      return {
        zone,
        number: i + 1,
        label,
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
