import type { PdfFonts } from "../../output/pdf/document.ts";
import { siteHref } from "../bits/siteHref.ts";

/** The binder's font, fetched when a PDF is asked for; with the network off from what the browser keeps. */
export async function fetchFonts(): Promise<PdfFonts> {
  const [regular, bold] = await Promise.all(["400", "700"].map(fetchFont));
  if (!regular || !bold) throw new RangeError("the binder's font is missing");
  return { regular, bold };
}

async function fetchFont(weight: string): Promise<Uint8Array> {
  const answer = await fetch(siteHref(`/fonts/binder-sans-${weight}.ttf`));
  if (!answer.ok) throw new RangeError(`binder-sans-${weight}.ttf: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
