import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Vec2 } from "../../src/geometry/vector.ts";

const MM = 25.4 / 72;
/** A curve is read as so many straight pieces. */
const STEPS = 48;

/** A path as it was painted. Millimetres from the page's lower left corner, y up. */
export interface PaintedPath {
  readonly widthMm: number;
  readonly filled: boolean;
  /** Each from where the pen was put down; curves as points along them. */
  readonly runs: readonly (readonly Vec2[])[];
  /** Only so much of it shows; null where nothing is cut away. */
  readonly clip: { left: number; right: number; bottom: number; top: number } | null;
}
export interface PdfPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly paths: readonly PaintedPath[];
  readonly texts: readonly {
    readonly text: string;
    readonly at: Vec2;
    readonly sizeMm: number;
    readonly longMm: number;
  }[];
}
export interface PdfRead {
  readonly pages: readonly PdfPage[];
  readonly bookmarks: readonly string[];
  readonly info: Record<string, unknown>;
}

/** Path data of the reader: a number for what is done, then its coordinates. */
function runsOf(data: ArrayLike<number>): Vec2[][] {
  const runs: Vec2[][] = [];
  const at = (i: number): Vec2 => [data[i]! * MM, data[i + 1]! * MM];
  for (let i = 0; i < data.length;) {
    const kind = data[i++]!;
    const run = runs.at(-1)!;
    if (kind === 0) {
      runs.push([at(i)]);
      i += 2;
    } else if (kind === 1) {
      run.push(at(i));
      i += 2;
    } else if (kind === 2) {
      const [p, q, r, s] = [run.at(-1)!, at(i), at(i + 2), at(i + 4)];
      for (let k = 1; k <= STEPS; k++) {
        const t = k / STEPS;
        const u = 1 - t;
        const mix = (j: 0 | 1) => u ** 3 * p[j] + 3 * u * u * t * q[j] + 3 * u * t * t * r[j] + t ** 3 * s[j];
        run.push([mix(0), mix(1)]);
      }
      i += 6;
    } else if (kind === 4) run.push(run[0]!);
    else throw new RangeError(`path operator ${kind}`);
  }
  return runs;
}

/** Read a PDF with another library than the one that wrote it: every painted path and every word with its place. */
export async function readPdf(bytes: Uint8Array): Promise<PdfRead> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const doc = await task.promise;
  const pages: PdfPage[] = [];
  for (let n = 1; n <= doc.numPages; n++) {
    const page = await doc.getPage(n);
    const [, , right = 0, top = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const paths: PaintedPath[] = [];
    let [width, clip] = [1, null as PaintedPath["clip"]];
    let waits = false;
    const kept: { width: number; clip: PaintedPath["clip"] }[] = [];
    fnArray.forEach((fn, i) => {
      const args = argsArray[i] as unknown[];
      if (fn === OPS.save) kept.push({ width, clip });
      else if (fn === OPS.restore) ({ width, clip } = kept.pop()!);
      else if (fn === OPS.setLineWidth) width = args[0] as number;
      else if (fn === OPS.transform) throw new RangeError("a transform: places would be read wrong");
      else if (fn === OPS.clip || fn === OPS.eoClip) waits = true;
      else if (fn === OPS.constructPath) {
        const [paint, [data]] = args as [number, [ArrayLike<number> | null]];
        const runs = data ? runsOf(data) : [];
        if (paint === OPS.endPath || waits) {
          const all = runs.flat();
          if (waits)
            clip = {
              left: Math.min(...all.map(([x]) => x)),
              right: Math.max(...all.map(([x]) => x)),
              bottom: Math.min(...all.map(([, y]) => y)),
              top: Math.max(...all.map(([, y]) => y)),
            };
          waits = false;
          return;
        }
        paths.push({ widthMm: width * MM, filled: paint === OPS.fill || paint === OPS.eoFill, runs, clip });
      }
    });
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => {
      if (!("str" in item) || item.str.trim() === "") return [];
      const [a = 0, b = 0, , , e = 0, f = 0] = item.transform as number[];
      return [
        {
          text: item.str,
          at: [e * MM, f * MM] as const,
          sizeMm: Math.hypot(a, b) * MM,
          longMm: b === 0 ? item.width * MM : 0,
        },
      ];
    });
    pages.push({ widthMm: right * MM, heightMm: top * MM, paths, texts });
  }
  const outline = (await doc.getOutline()) as { title: string }[] | null;
  const { info } = await doc.getMetadata();
  await task.destroy();
  return {
    pages,
    bookmarks: (outline ?? []).map(({ title }) => title),
    info: info as Record<string, unknown>,
  };
}
