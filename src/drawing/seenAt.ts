import type { Vec2 } from "../geometry/vector.ts";

/** Where a label stands when one looks `near` times nearer: its distance on the screen from what it speaks of stays. */
export function seenAt({ at, of }: { readonly at: Vec2; readonly of?: Vec2 }, near: number): Vec2 {
  return of ? [of[0] + (at[0] - of[0]) / near, of[1] + (at[1] - of[1]) / near] : at;
}
