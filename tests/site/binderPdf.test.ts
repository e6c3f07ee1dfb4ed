import { beforeAll, describe, expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { loadContent } from "../../src/input/loadContent.ts";
import { type Binder, makeBinder } from "../../src/site/binder/makeBinder.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { type BinderPaper, binderPdf, type MadeBinder } from "../../src/site/pdf/binder/binderPdf.ts";
import type { WhichHalf } from "../../src/site/pdf/binder/sections.ts";
import { reckonerTables } from "../../src/tables/tables.ts";
import { type PageRead, readPlaces } from "../output/pdfPlaces.ts";
import { fonts } from "../output/fonts.ts";

// How well the plates are laid is another test's business.
process.env["SLANTWORK_EFFORT"] = "0.02";

const tables = loadCatalogue();
const content = loadContent();
const demo = makeBinder("demo-data", tables);
const few = (change: (binder: Binder) => Binder): Binder =>
  change({ ...demo, parts: demo.parts.slice(0, 2) });

const made = (binder: Binder | undefined, which: WhichHalf, paper: BinderPaper = "a4"): MadeBinder =>
  binderPdf({ content, tables, binder, which, paper, fonts, version: "1.2.3" });

/** The frame from the paper's edges, and the line of lettering below it. [mm] */
const FRAME = { left: 18, right: 9, top: 9, bottom: 13 };
/** Lettering is told to a hundredth of a point. [mm] */
const ROUNDED = 0.01;

/** What is written beyond the frame, save the line below it, which ends where the frame does. */
function beyond({ widthMm, heightMm, texts }: PageRead) {
  return texts.filter(({ x, y, longMm }) => {
    const across = x < FRAME.left - ROUNDED || x + longMm > widthMm - FRAME.right + ROUNDED;
    const foot = y > 6 && y < FRAME.bottom - 2;
    return across || (!foot && (y < FRAME.bottom || y > heightMm - FRAME.top));
  });
}
/** 150 pages are written and read again. */
const SLOW_MS = 120_000;
const squeezed = (text: string) => text.replaceAll(/\s+/g, "");
const footOf = ({ words }: PageRead) => /page (\d+) of (\d+)/.exec(words)?.slice(1).map(Number);

describe.each(["a4", "letter"] as const)("the demo's binder on %s", (paper) => {
  let pdf: MadeBinder;
  let read: Awaited<ReturnType<typeof readPlaces>>;
  beforeAll(async () => {
    pdf = made(demo, "all", paper);
    read = await readPlaces(pdf.bytes);
  }, SLOW_MS);

  it("has every page on that paper, numbered as it lies, with nothing beyond the frame and no sign lost", () => {
    const size = { a4: [210, 297], letter: [215.9, 279.4] }[paper] as [number, number];
    expect(read.pages.length).toBe(pdf.pages);
    read.pages.forEach((page, i) => {
      expect(page.widthMm).toBeCloseTo(size[0], 1);
      expect(page.heightMm).toBeCloseTo(size[1], 1);
      expect(footOf(page)).toEqual([i + 1, pdf.pages]);
      expect(page.words).toContain("Slantwork 1.2.3, files ");
      expect(beyond(page)).toEqual([]);
    });
    expect([...pdf.lost]).toEqual([]);
    expect(read.info["Title"]).toBe("Second cleaning line");
  });

  it("has bookmarks of sections and their sheets, each leading to the page where its sheet begins", () => {
    expect(read.bookmarks.map(({ title }) => title)).toEqual([
      "Cover",
      "Contents",
      "Safety",
      "Machines",
      "Shapes",
      "Tables",
      "Job",
      "Parts",
      "Words and sources",
    ]);
    const under = (section: string) => read.bookmarks.find(({ title }) => title === section)!.under;
    expect(under("Machines").map(({ title }) => title)).toEqual(demo.shop!.machines.map(({ name }) => name));
    expect(under("Shapes").map(({ title }) => title)).toEqual(content.shapes.map(({ title }) => title));
    expect(under("Tables").map(({ title }) => title)).toEqual([
      ...reckonerTables(tables.catalogue).map(({ title }) => title),
      "Materials",
      "Sheet gauges",
    ]);
    expect(under("Parts").map(({ title }) => title)).toEqual(
      demo.parts.map(({ report }) => report.part.title),
    );
    for (const section of read.bookmarks.slice(2)) {
      expect(section.page).toBe(section.under[0]!.page);
      for (const { title, page } of section.under) {
        const [first] = read.pages[page - 1]!.texts.toSorted((a, b) => b.y - a.y);
        const shown = title === "List of parts" ? "Second cleaning line" : title;
        expect(first!.text).toBe(shown);
        expect(read.pages[page - 1]!.words).toMatch(/sheet 1 of \d/);
      }
    }
    demo.parts.forEach(({ report }, i) => {
      const { under: sheets } = under("Parts")[i]!;
      expect(sheets.map(({ title }) => title)).toEqual(chosenPlan(report) ? ["Work sheet"] : []);
      for (const { page } of sheets)
        expect(read.pages[page - 1]!.words).toContain(`Work sheet: ${report.part.title}`);
    });
  });

  it("has contents whose numbers and links are those of the bookmarks", () => {
    const at = (title: string) => read.bookmarks.find((one) => one.title === title)!.page - 1;
    const own = read.pages.slice(at("Contents"), at("Safety"));
    const lines = own.flatMap(({ texts, links }) =>
      links
        .filter(({ bottom }) => bottom > FRAME.bottom)
        .map((link) => {
          const inside = texts
            .filter(
              ({ x, y }) =>
                y > link.bottom - 0.5 && y < link.top && x > link.left - 0.5 && x < link.right + 0.5,
            )
            .toSorted((a, b) => a.x - b.x);
          return { link, title: inside[0]!.text, number: Number(inside.at(-1)!.text) };
        }),
    );
    const sheets = read.bookmarks
      .slice(2)
      .flatMap(({ under }) => under.flatMap((one) => [one, ...one.under]));
    expect(lines.length).toBe(sheets.length);
    lines.forEach(({ link, title, number }, i) => {
      expect(link.page).toBe(sheets[i]!.page);
      expect(number).toBe(sheets[i]!.page);
      expect(title.toLowerCase()).toBe(sheets[i]!.title.toLowerCase());
    });
  });

  it("leads from list and machine cards to the parts, from figures to their sources, from every foot to the contents", () => {
    const pageOf = (section: string, title: string) =>
      read.bookmarks.find((one) => one.title === section)!.under.find((one) => one.title === title)!.page;
    const list = read.pages[pageOf("Job", "List of parts") - 1]!;
    const cards = demo.parts.map(({ report }) => pageOf("Parts", report.part.title));
    expect(list.links.map(({ page }) => page)).toEqual(expect.arrayContaining(cards));
    const sources = pageOf("Words and sources", "Sources");
    // What stands on the line of a link, and the page that it leads to; a name may go on over the next line.
    const based = read.pages.slice(cards[0]! - 1, cards[1]! - 1).flatMap(({ texts, links }) =>
      links
        .filter(({ page }) => page >= sources)
        .map(({ page, bottom, top }) => ({
          page,
          line: texts
            .filter(({ y }) => y > bottom && y < top)
            .map(({ text }) => text)
            .join(""),
        })),
    );
    const whole = based.flatMap(({ page, line }) =>
      Object.values(content.sources)
        .filter(({ short }) => line.includes(short))
        .map(({ title }) => ({ page, title })),
    );
    expect(whole.length).toBeGreaterThan(0);
    for (const { page, title } of whole) expect(read.pages[page - 1]!.words).toContain(title.slice(0, 20));
    for (const { links } of read.pages) expect(links.some(({ page }) => page === 2)).toBe(true);
  });

  it("has the words of the safety sheet, the glossary, every source and every row of the tables", () => {
    const words = squeezed(read.pages.map((page) => page.words).join(" "));
    const plain = (text: string) => squeezed(text.replaceAll(/[*_]/g, "").replaceAll("\u00a0", " "));
    for (const { body } of content.safety)
      for (const line of body.split("\n").filter((one) => one.startsWith("- ")))
        for (const sentence of line.slice(2).split(/(?<=[.;])/)) {
          const [start] = plain(sentence).match(/^.{0,30}/) ?? [""];
          expect(words.includes(start), start).toBe(true);
        }
    for (const word of Object.keys(content.glossary)) expect(words.includes(squeezed(word)), word).toBe(true);
    for (const { title } of Object.values(content.sources))
      expect(words.includes(plain(title)), title).toBe(true);
    for (const sign of "°Ø×½±–≤√²") expect(words.includes(sign), sign).toBe(true);
    const cells = new Set(read.pages.flatMap(({ texts }) => texts.map(({ text }) => text)));
    for (const { rows } of reckonerTables(tables.catalogue))
      for (const row of rows) for (const cell of row) expect(cells.has(cell), cell).toBe(true);
  });
});

it("is the same byte for byte, and another one for another date or another part", () => {
  const one = few((binder) => binder);
  const bytes = (binder: Binder) => Buffer.from(made(binder, "job").bytes);
  expect(bytes(one).equals(bytes(one))).toBe(true);
  const dated = few((binder) => ({ ...binder, job: { ...binder.job!, date: "2031-05-06" } }));
  expect(bytes(one).equals(bytes(dated))).toBe(false);
  expect(bytes(dated).toString("latin1")).toContain("D:20310506000000");
  for (const date of ["2031-13-45", "2099-01-01", "week 19"]) {
    const odd = few((binder) => ({ ...binder, job: { ...binder.job!, date } }));
    expect(bytes(odd).toString("latin1"), date).toContain("D:20000101000000");
  }
});

it("keeps titles of any signs and lengths in its frame, tells what the font has not, and names them whole in the bookmarks", async () => {
  const titles = [`${"Trichter".repeat(30)} č`, "Žluťoučký (kůň) \\ Ø½ → 漢 \u202e </a>"];
  const odd = few((binder) => ({
    ...binder,
    job: { ...binder.job!, title: "čč(\\)".repeat(20), notes: "x".repeat(900) },
    parts: binder.parts.map((one, i) => ({
      ...one,
      report: { ...one.report, part: { ...one.report.part, title: titles[i]! } },
    })),
  }));
  const { bytes, lost } = made(odd, "job", "letter");
  const { pages, bookmarks, info } = await readPlaces(bytes);
  expect(pages.flatMap(beyond)).toEqual([]);
  expect(info["Title"]).toBe(odd.job!.title);
  expect(bookmarks.find(({ title }) => title === "Parts")!.under.map(({ title }) => title)).toEqual(titles);
  expect([...lost.keys()]).toEqual(expect.arrayContaining(["漢", "\u202e"]));
  expect(pages.map(({ words }) => words).join(" ")).toContain("Žluťoučký (kůň) \\ Ø½ → ? ?");
});

it("is one half of the binder where that is asked for", async () => {
  const sections = async (which: WhichHalf, binder?: Binder) =>
    (await readPlaces(made(binder, which).bytes)).bookmarks.map(({ title }) => title);
  expect(await sections("reference")).toEqual([
    "Cover",
    "Contents",
    "Safety",
    "Shapes",
    "Tables",
    "Words and sources",
  ]);
  const job = few((binder) => binder);
  const halves = ["Cover", "Contents", "Safety", "Machines", "Job", "Parts", "Words and sources"];
  expect(await sections("job", job)).toEqual(halves);
  expect(await sections("job", { ...job, shop: undefined })).toEqual(
    halves.filter((title) => title !== "Machines"),
  );
});
