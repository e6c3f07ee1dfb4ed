import { listed } from "./words.ts";
import type { RollZone } from "./zones.ts";

/** No template tells these apart. [mm] */
const READ_ALIKE_MM = 0.05;
const FULL_TURN_DEG = 360;

/** "zone 2", "zones 1 and 3". */
export const listedZones = (zones: readonly number[]): string =>
  `${zones.length === 1 ? "zone" : "zones"} ${listed(zones)}`;

type Radii = Pick<RollZone, "largeRadiusMm" | "smallRadiusMm">;

/** Zones of one setting, counted from 1, in the order of the first of each. Alike are those whose radii read the same. */
export function alikeNumbers(zones: readonly Radii[]): number[][] {
  const groups: number[][] = [];
  zones.forEach((zone, i) => {
    const same = groups.find(([first = 1]) => {
      const other = zones[first - 1] ?? zone;
      return (
        Math.abs(other.largeRadiusMm - zone.largeRadiusMm) < READ_ALIKE_MM &&
        Math.abs(other.smallRadiusMm - zone.smallRadiusMm) < READ_ALIKE_MM
      );
    });
    if (same) same.push(i + 1);
    else groups.push([i + 1]);
  });
  return groups;
}

/**
 * Zones of one setting, told together: "zone 2", "zones 1 and 3".
 *
 * @returns each with the first of its zones and its name, in the order of the zones
 */
export function alikeZones<Z extends Radii>(
  zones: readonly Z[],
): { readonly zone: Z; readonly name: string }[] {
  return alikeNumbers(zones).flatMap((numbers) => {
    const zone = zones[(numbers[0] ?? 1) - 1];
    return zone ? [{ zone, name: listedZones(numbers) }] : [];
  });
}

/** How figures of one of several zones begin: "plan 155° to 260°: "; nothing where one setting serves all round. */
export function zoneName({ fromDeg, toDeg }: Pick<RollZone, "fromDeg" | "toDeg">, zones: number): string {
  const deg = (angle: number) => `${Math.round(angle % FULL_TURN_DEG)}°`;
  return zones === 1 ? "" : `plan ${deg(fromDeg)} to ${deg(toDeg)}: `;
}

const NAMED = /^plan (\d+° to \d+°): (.+)$/;

/** A figure's zone and what it is without it; null where it is of no zone. */
export function zoneOfLabel(label: string): { readonly zone: string; readonly label: string } | null {
  const [, zone, own] = NAMED.exec(label) ?? [];
  return zone === undefined || own === undefined ? null : { zone, label: own };
}
