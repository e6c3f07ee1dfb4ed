import type { BrakeNext } from "../../forming/brakeTrial.ts";

export const degrees = (deg: number): string => `${Number(deg.toFixed(1))}°`;

/** What trials on the brake have shown, in sentences. */
export function answerWords(next: BrakeNext | null): string {
  if (!next) return "No hit yet: go deeper little by little.";
  if (next.kind === "none") return `No next depth: ${next.why}.`;
  const { sprangDeg, by, slope } = next;
  // What does not come out for each degree under load is what springs back more for it.
  const moreDeg = Number((1 - slope).toFixed(2));
  const each =
    by === "one trial" || moreDeg === 0
      ? ""
      : `, and ${Math.abs(moreDeg)}° ${moreDeg > 0 ? "more" : "less"} for each degree more under load`;
  return `By ${by === "two trials" ? "two hits" : "one hit"} this plate springs back about ${degrees(sprangDeg)}, the give of the brake in it${each}. Go to the depth below in small steps, and measure: a bend that is too sharp does not go back.`;
}
