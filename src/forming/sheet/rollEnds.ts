import type { PassPoint } from "../passPoints.ts";

type Edge = "small" | "large";

/** The two ends of the roll, and which edge of the piece lies towards each: turning the job round swaps them. */
export const ROLL_ENDS = [
  { name: "drop end", edge: { first: "small", second: "large" } },
  { name: "fixed end", edge: { first: "large", second: "small" } },
] as const satisfies readonly { name: string; edge: { first: Edge; second: Edge } }[];

/** The end of the roll that an edge lies towards at one moment of rolling. */
export function endTowards(edge: Edge, id: PassPoint["id"]): (typeof ROLL_ENDS)[number]["name"] {
  const first = (edge === "small") === (id !== "finished");
  return first ? "drop end" : "fixed end";
}
