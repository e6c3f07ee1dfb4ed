import { Shop } from "../forming/machine.ts";
import type { FileContext } from "./context.ts";
import { readDocument, type DocumentReading } from "./document.ts";
import { shopProblems } from "./shopProblems.ts";

export type ShopReading = DocumentReading<Shop>;

/** Reads the text of a shop file: its machines and stock plates, in its own units. */
export function readShop(text: string, file: FileContext): ShopReading {
  return readDocument({ schema: Shop, begins: "name: Our shop", rules: shopProblems }, text, file);
}
