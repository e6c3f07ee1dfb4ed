import { describe, expect, it } from "vitest";
import { readBinder } from "../../src/site/binder/binder.ts";
import { cardOf } from "../../src/site/machines/card.ts";
import { cardFileHref, cardFiles } from "../../src/site/machines/cardFiles.ts";
import { CARD_NEVER } from "../../src/site/machines/words.ts";
import { machineCardPdf } from "../../src/site/pdf/machineCardPdf.ts";
import { CAUTION } from "../../src/site/words/work.ts";
import { fonts } from "../output/fonts.ts";
import { readPdf } from "../output/readPdf.ts";

const { shop, ...rest } = readBinder();
if (!shop) throw new RangeError("the demo job has no shop");
const binder = { ...rest, shop };
const run = (text: string) => text.replace(/\s/g, "");
const pagesOf = async (index: number, paper: "a4" | "letter") =>
  (await readPdf(machineCardPdf(binder, index, { paper, fonts, known: new Map(), mark: "Made of these" })))
    .pages;

describe.each(shop.machines.map((machine, index) => ({ name: machine.name, machine, index })))(
  "the card of $name",
  ({ name, machine, index }) => {
    it.each(["a4", "letter"] as const)(
      "is one sheet on %s, its front complete without the list of parts, and says all that the page says",
      async (paper) => {
        const pages = await pagesOf(index, paper);
        expect(pages.length).toBeLessThanOrEqual(2);
        const wordsOf = (some: typeof pages) =>
          run(some.flatMap(({ texts }) => texts.map(({ text }) => text)).join(""));
        const { facts, gaps, entries } = cardOf(machine, index, binder);
        const onFront = [
          name,
          shop.name,
          "Made of these",
          CAUTION,
          ...CARD_NEVER[machine.kind],
          ...facts.flatMap((one) => [one.name, one.value]),
          ...gaps,
        ];
        for (const text of onFront) expect(wordsOf(pages.slice(0, 1))).toContain(run(text));
        // Nothing of the list stands on the front where it has the back.
        for (const { one } of entries) expect(wordsOf(pages.slice(-1))).toContain(run(one.report.part.title));
      },
    );
  },
);

it("is offered on both papers, the shop's own first", () => {
  expect(cardFiles("big-roll", "in").map(({ file }) => cardFileHref("big-roll", file))).toEqual([
    "/machines/big-roll/big-roll-card-letter.pdf",
    "/machines/big-roll/big-roll-card-a4.pdf",
  ]);
  expect(cardFiles("big-roll", "mm")[0]?.paper).toBe("a4");
});
