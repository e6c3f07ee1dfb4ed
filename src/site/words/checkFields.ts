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

/** Where what a check says belongs in a form that has these fields; undefined where it belongs to none of them. */
export function fieldOfCheck(id: string, fields: ReadonlySet<string>): string | undefined {
  return CHECK_FIELDS[id]?.find((field) => fields.has(field));
}
