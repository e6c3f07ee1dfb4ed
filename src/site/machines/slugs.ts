import type { Machine } from "../../forming/machine.ts";
import { slug } from "../../output/slug.ts";

/** Where the machines' cards stand. */
export const MACHINES_HREF = "/machines/";

/** The name of a machine as it stands in an address: its letters and figures, and a number where two are alike. */
export function slugs(machines: readonly Machine[]): string[] {
  const bare = machines.map(({ name }) => slug(name));
  return bare.map((one, i) => {
    const before = bare.slice(0, i).filter((other) => other === one).length;
    return one === "" || before > 0 ? `${one || "machine"}-${i + 1}` : one;
  });
}
