import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

const MM = 25.4 / 72;

export interface BookmarkRead {
  readonly title: string;
  /** The page that it leads to, from 1. */
  readonly page: number;
  readonly under: readonly BookmarkRead[];
}
interface TextRead {
  readonly text: string;
  /** Millimetres from the page's lower left corner to the lettering's foot. */
  readonly x: number;
  readonly y: number;
  readonly longMm: number;
  readonly sizeMm: number;
}
export interface PageRead {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly texts: readonly TextRead[];
  readonly words: string;
  readonly links: readonly {
    readonly page: number;
    readonly left: number;
    readonly bottom: number;
    readonly right: number;
    readonly top: number;
  }[];
}
type Dest = readonly [{ num: number; gen: number }, ...unknown[]];
interface Item {
  readonly title: string;
  readonly dest: Dest;
  readonly items: readonly Item[];
}

/** Words, links and bookmarks of a PDF, read with another library than the one that wrote it. */
export async function readPlaces(bytes: Uint8Array): Promise<{
  readonly pages: readonly PageRead[];
  readonly bookmarks: readonly BookmarkRead[];
  readonly info: Record<string, unknown>;
}> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const doc = await task.promise;
  const pageOf = async ([ref]: Dest): Promise<number> => 1 + (await doc.getPageIndex(ref));
  const marked = (items: readonly Item[]): Promise<BookmarkRead[]> =>
    Promise.all(
      items.map(async ({ title, dest, items: under }) => ({
        title,
        page: await pageOf(dest),
        under: await marked(under),
      })),
    );
  const pages: PageRead[] = [];
  for (let n = 1; n <= doc.numPages; n++) {
    const page = await doc.getPage(n);
    const [, , right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): TextRead[] => {
      if (!("str" in item) || item.str.trim() === "") return [];
      const [a = 0, b = 0, , , e = 0, f = 0] = item.transform as number[];
      const upright = Math.abs(a) < Math.abs(b);
      return [
        {
          text: item.str.replaceAll("\u00a0", " "),
          x: e * MM,
          y: f * MM,
          longMm: upright ? 0 : item.width * MM,
          sizeMm: Math.hypot(a, b) * MM,
        },
      ];
    });
    // A browser's own files name their places; ours lead to a page itself.
    const annotations = (await page.getAnnotations()) as { dest?: Dest | string; rect: number[] }[];
    const ours = annotations.flatMap(({ dest, rect }) =>
      dest && typeof dest !== "string" ? [{ dest, rect }] : [],
    );
    const links = await Promise.all(
      ours.map(async ({ dest, rect }) => {
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = rect.map((one) => one * MM);
        return {
          page: await pageOf(dest),
          left: Math.min(x1, x2),
          right: Math.max(x1, x2),
          bottom: Math.min(y1, y2),
          top: Math.max(y1, y2),
        };
      }),
    );
    pages.push({
      widthMm: right * MM,
      heightMm: top * MM,
      texts,
      words: texts.map(({ text }) => text).join(" "),
      links,
    });
  }
  const bookmarks = await marked(((await doc.getOutline()) as unknown as Item[] | null) ?? []);
  const { info } = await doc.getMetadata();
  await task.destroy();
  return { pages, bookmarks, info: info as Record<string, unknown> };
}
