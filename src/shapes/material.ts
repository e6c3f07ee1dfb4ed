import * as z from "zod/mini";

/** Sheet gauges mean different thicknesses in different metals. */
export const GaugeFamily = z.enum(["steel", "galvanised", "stainless", "aluminium"]);
export type GaugeFamily = z.infer<typeof GaugeFamily>;

const megapascals = () => z.number().check(z.positive(), z.maximum(10_000));

/** One plate material. Values are nominal, for the thickness range the source names. */
export const Material = z.strictObject({
  name: z.string(),
  /** What else people call it, capitals, spaces, hyphens and points aside. */
  aliases: z.optional(z.array(z.string())),
  /** What kind of metal it is to whoever buys it, beside its name in a list; left out, its family is said. */
  trade: z.optional(z.string()),
  family: GaugeFamily,
  densityKgM3: z.number().check(z.minimum(1000), z.maximum(20_000)),
  yieldMPa: megapascals(),
  /** Least tensile strength of the grade. */
  tensileMPa: megapascals(),
  /** Greatest tensile strength that the grade allows, plate of 3 mm and more; left out where the source says none. */
  tensileMostMPa: z.optional(megapascals()),
  youngsGPa: z.number().check(z.positive(), z.maximum(500)),
  poisson: z.number().check(z.positive(), z.maximum(0.5)),
  /** Temper, thickness range and whatever else the strengths hold for, in words. */
  note: z.optional(z.string()),
  /** An id in the list of sources, one for each group of values. */
  sources: z.strictObject({ strength: z.string(), density: z.string(), elastic: z.string() }),
});
export type Material = z.infer<typeof Material>;
