import type { Catalogue } from "../../shapes/catalogue.ts";

/** A material to choose: its id, and its name with what the trade calls it. */
export interface MaterialChoice {
  readonly id: string;
  readonly name: string;
}

/** All materials as a list shows them: who looks for galvanised sheet need not know its grade by heart. */
export const materialChoices = ({ materials }: Catalogue): MaterialChoice[] =>
  Object.entries(materials).map(([id, { name, trade, family }]) => ({
    id,
    name: `${name}, ${trade ?? family}`,
  }));
