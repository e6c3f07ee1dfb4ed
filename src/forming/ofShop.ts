import type { Units } from "../geometry/units.ts";
import type { Say } from "./say.ts";

/** A number that the shop file gives in other units than the part's: it is told in those first. */
export interface OfShop<Which extends string> {
  readonly which: Which;
  readonly units: Units;
}

/** Marks the number of a check that is the shop's own; nothing where part and shop count alike. */
export const ofShop = <Which extends string>(
  { units, shopUnits }: Say,
  which: Which,
): { readonly ofShop?: OfShop<Which> } =>
  units === shopUnits ? {} : { ofShop: { which, units: shopUnits } };
