import { usualPaper } from "../../output/pdf/tilePaper.ts";
import { MACHINES_HREF } from "./slugs.ts";

const PAPERS = [
  { paper: "a4", name: "A4" },
  { paper: "letter", name: "US Letter" },
] as const;

/** A machine's card as PDF, on either paper; that which goes with the shop's units first. */
export const cardFiles = (slug: string, units: "mm" | "in") =>
  PAPERS.map(({ paper, name }) => ({
    paper,
    file: `${slug}-card-${paper}.pdf`,
    what: `the card on ${name}`,
  })).sort(
    (one, other) => Number(other.paper === usualPaper(units)) - Number(one.paper === usualPaper(units)),
  );

export const cardFileHref = (slug: string, file: string): string => `${MACHINES_HREF}${slug}/${file}`;
