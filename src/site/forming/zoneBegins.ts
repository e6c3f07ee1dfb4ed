import type { RollZone } from "../../forming/zones.ts";

/** Where each further zone begins on the blank, with its name; nothing where one setting serves all round. */
export const zoneBegins = (zones: readonly Pick<RollZone, "begins">[]) =>
  zones.flatMap(({ begins }, i) => (begins ? [{ ...begins, name: `zone ${i + 1}` }] : []));
