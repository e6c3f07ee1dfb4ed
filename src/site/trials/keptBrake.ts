import type { BrakeTrial } from "../../forming/brakeTrial.ts";
import { ownKey } from "./ownKey.ts";

/** Under which this browser keeps the hits of a part on a brake. */
export const brakeKey = (part: string, brake: string): string => ownKey("brake hits", part, brake);

interface KeptHits {
  /** Radius of the die's shoulders, as it was typed. */
  readonly shoulder: string;
  readonly trials: readonly BrakeTrial[];
  /** Is that all that was kept, so that nothing is lost where it is written anew? */
  readonly isSound: boolean;
}

const isHit = (value: unknown): value is BrakeTrial => {
  if (typeof value !== "object" || value === null) return false;
  const { depthMm, bendDeg } = value as Record<string, unknown>;
  return [depthMm, bendDeg].every((one) => typeof one === "number" && Number.isFinite(one) && one >= 0);
};

/** What the browser kept: as much of it as is hits, and the shoulders where they are a text. */
export function brakeKept(text: string | null): KeptHits {
  if (text === null) return { shoulder: "", trials: [], isSound: true };
  try {
    const kept = JSON.parse(text) as Partial<Record<keyof KeptHits, unknown>> | null;
    const { shoulder, trials } = kept ?? {};
    const list: readonly unknown[] = Array.isArray(trials) ? trials : [];
    return {
      shoulder: typeof shoulder === "string" ? shoulder : "",
      trials: list.filter(isHit),
      isSound: typeof shoulder === "string" && Array.isArray(trials) && list.every(isHit),
    };
  } catch {
    return { shoulder: "", trials: [], isSound: false };
  }
}
