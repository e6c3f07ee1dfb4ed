import type { Material } from "./material.ts";

/** What the core needs to look up: the materials a part file may name. */
export interface Catalogue {
  readonly materials: Readonly<Record<string, Material>>;
}
