import type { BrakeTrial } from "../../forming/brakeTrial.ts";

/** Under which this browser keeps the hits of a part on a brake. */
export const brakeKey = (part: string, brake: string): string =>
  `slantwork brake hits ${JSON.stringify([part, brake])}`;

interface KeptHits {
  /** Radius of the die's shoulders, as it was typed. */
  readonly shoulder: string;
  readonly trials: readonly BrakeTrial[];
}

const isHit = (value: unknown): value is BrakeTrial => {
  if (typeof value !== "object" || value === null) return false;
  const { depthMm, bendDeg } = value as Record<string, unknown>;
  return [depthMm, bendDeg].every((one) => typeof one === "number" && Number.isFinite(one) && one >= 0);
};

/** What the browser kept; no hits where what it kept is none. */
export function brakeKept(text: string | null): KeptHits {
  const nothing = { shoulder: "", trials: [] };
  if (text === null) return nothing;
  try {
    const kept = JSON.parse(text) as Partial<Record<keyof KeptHits, unknown>> | null;
    const { shoulder, trials } = kept ?? {};
    return typeof shoulder === "string" && Array.isArray(trials) && trials.every(isHit)
      ? { shoulder, trials }
      : nothing;
  } catch {
    return nothing;
  }
}
