import type { Check } from "../../forming/check.ts";

/** Fields that decide a check most directly, the likeliest first: what it says stands beside the first that the shape has. */
const CHECK_FIELDS: Readonly<Record<string, readonly string[]>> = {
  capacity: ["thickness"],
  thickness: ["thickness"],
  strain: ["thickness"],
  "bend-radius": ["thickness"],
  "brake-force": ["thickness"],
  "die-opening": ["thickness"],
  "sharp-fold": ["thickness"],
  "working-width": ["height"],
  "half-angle": ["height"],
  "brake-bed": ["height"],
  "pinch-trim": ["height"],
  "small-end": ["smallEnd.diameter", "roundEnd.diameter"],
  "smallest-closed": ["smallEnd.diameter", "roundEnd.diameter"],
  "travel-ratio": ["smallEnd.diameter"],
  "round-ends": ["smallEnd.diameter", "roundEnd.diameter"],
  "bend-spacing": ["roundEnd.diameter", "smallEnd.diameter"],
  "room-beyond-stop": ["smallEnd.diameter"],
  "roll-settings": ["smallEnd.diameter"],
  "stock-plate": ["largeEnd.diameter", "rectangularEnd.length"],
  "brake-throat": ["largeEnd.diameter", "rectangularEnd.length"],
  "off-the-punch": ["pieces"],
  handling: ["pieces"],
  "weld-gap": ["seam.gap"],
  certificate: ["certificate.yieldMPa"],
};

/** No plate of this thickness and material is there: it is no matter of size. */
const NOT_LISTED = ["thickness"];

/** Where what a check says belongs in a form that has these fields; undefined where it belongs to none of them. */
export function fieldOfCheck(
  { id, value }: Pick<Check, "id" | "value">,
  fields: ReadonlySet<string>,
): string | undefined {
  const beside = id === "stock-plate" && value === null ? NOT_LISTED : CHECK_FIELDS[id];
  return beside?.find((field) => fields.has(field));
}
