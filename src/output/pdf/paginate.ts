import type { Block } from "./block.ts";

/** A page's place for its blocks. [mm] */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly bottom: number;
}

interface Laid {
  readonly block: Block;
  readonly y: number;
}
type Page = readonly Laid[];

/** Between blocks. [mm] */
export const GAP_MM = 1.7;
/** Less only where that saves a page. [mm] */
const GAPS = [GAP_MM, 1.2, 0.8];
/** A last page filled less than this takes over some of what stands on the page before it. [-] */
const ORPHAN = 0.25;
/** How closely that is looked for. [mm] */
const STEP_MM = 6;

/** Blocks on as few pages as they take; a page begins where `null` asks for it, and the last one is not left nearly empty. */
export function paginated(blocks: readonly (Block | null)[], area: Area): Page[] {
  const parts: Block[][] = [[]];
  for (const block of blocks) {
    if (block === null) parts.push([]);
    else parts.at(-1)?.push(block);
  }
  return parts.filter((part) => part.length > 0).flatMap((part) => onPages(part, area));
}

function onPages(blocks: readonly Block[], area: Area): Page[] {
  let [pages, gap] = [lay(blocks, area, { gap: GAP_MM }), GAP_MM];
  for (const closer of GAPS.slice(1)) {
    if (pages.length === 1) return pages;
    const tried = lay(blocks, area, { gap: closer });
    if (tried.length < pages.length) [pages, gap] = [tried, closer];
  }
  const count = pages.length;
  const filled = (page: Page | undefined): number => {
    const last = page?.at(-1);
    return last ? last.y + last.block.height(area.widthMm) - area.y : 0;
  };
  const high = area.bottom - area.y;
  for (let less = STEP_MM; count > 1 && filled(pages.at(-1)) < ORPHAN * high; less += STEP_MM) {
    const tried = lay(blocks, area, { gap, less: { page: count - 2, mm: less } });
    if (tried.length > count || filled(tried.at(-1)) > filled(tried.at(-2))) break;
    pages = tried;
  }
  return pages;
}

/** One after the other; a heading is not left alone at the foot of a page. */
function lay(
  blocks: readonly Block[],
  area: Area,
  { gap, less }: { gap: number; less?: { readonly page: number; readonly mm: number } },
): Page[] {
  const pages: Laid[][] = [[]];
  const { widthMm } = area;
  const foot = (): number => area.bottom - (less?.page === pages.length - 1 ? less.mm : 0);
  let y = area.y;
  const turn = (): void => {
    pages.push([]);
    y = area.y;
  };
  const put = (block: Block): void => {
    pages.at(-1)?.push({ block, y });
    y += block.height(widthMm) + gap;
  };
  const queue = [...blocks];
  for (let block = queue.shift(); block !== undefined; block = queue.shift()) {
    const bottom = foot();
    const needed = leastWith(block, queue, { widthMm, roomMm: bottom - area.y, gap });
    if (y + needed <= bottom || (pages.at(-1)?.length === 0 && !block.split)) {
      put(block);
      continue;
    }
    const parts = block.split?.(widthMm, bottom - y);
    if (parts) {
      put(parts[0]);
      queue.unshift(parts[1]);
      turn();
    } else if (pages.at(-1)?.length === 0) put(block);
    else {
      turn();
      queue.unshift(block);
    }
  }
  return pages.filter((page) => page.length > 0);
}

/**
 * What a block wants on a page: its height with those after it that it is not left without, of which one may lead to the
 * next, as a heading to the words over a table. Where no page holds them together, its own height.
 */
function leastWith(
  block: Block,
  after: readonly Block[],
  { widthMm, roomMm, gap }: { widthMm: number; roomMm: number; gap: number },
): number {
  const own = block.height(widthMm);
  let [all, leads] = [own, block.withNext];
  for (const next of after) {
    if (!leads) break;
    all += gap + (next.withNext ? next.height(widthMm) : leastOf(next, widthMm, roomMm));
    leads = next.withNext;
  }
  return all > roomMm ? own : all;
}

/** Height of the first part of a block that may stand under a heading. */
function leastOf(block: Block, widthMm: number, roomMm: number): number {
  const whole = block.height(widthMm);
  if (!block.split) return Math.min(whole, roomMm);
  return Math.min(whole, 25);
}
