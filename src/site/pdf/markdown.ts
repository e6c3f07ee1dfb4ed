/** A stretch of a text page; what is stressed is told from the rest. */
interface Words {
  readonly text: string;
  readonly strong: boolean;
}
export type MarkdownBlock =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "paragraph"; readonly words: readonly Words[] }
  | { readonly kind: "list"; readonly numbered: boolean; readonly items: readonly (readonly Words[])[] }
  | {
      readonly kind: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

const ITEM = /^(?:-|\d+\.) +(.*)$/;
/** What our text pages have no use for so far: it would be printed as it is typed. */
const UNKNOWN = /^(?: {2,}\S|>|#{3,}|!|```|~~~|<)|`|\]\(/;

/**
 * The little of Markdown that our own text pages use: headings, paragraphs, lists of one level, tables, ** and _.
 *
 * @throws RangeError for a line of another kind, so that nobody finds its signs on paper
 */
export function markdown(text: string): MarkdownBlock[] {
  const lines = text.split("\n");
  const blocks: MarkdownBlock[] = [];
  const odd = lines.find((line) => UNKNOWN.test(line));
  if (odd !== undefined) throw new RangeError(`markdown that is not set on paper: ${odd}`);
  for (const chunk of text.trim().split(/\n{2,}/)) {
    const own = chunk.split("\n");
    const [first = ""] = own;
    if (first.startsWith("#")) blocks.push({ kind: "heading", text: wordsOf(first.replace(/^#+ */, "")) });
    else if (ITEM.test(first))
      blocks.push({ kind: "list", numbered: !first.startsWith("-"), items: itemsOf(own) });
    else if (first.startsWith("|")) blocks.push(tableOf(own));
    else blocks.push({ kind: "paragraph", words: stressed(own.join(" ")) });
  }
  return blocks;
}

/** A line that begins no item goes on with the one before it. */
function itemsOf(lines: readonly string[]): (readonly Words[])[] {
  const items: string[] = [];
  for (const line of lines) {
    const [, begun] = ITEM.exec(line) ?? [];
    if (begun === undefined) items.push(`${items.pop() ?? ""} ${line.trim()}`);
    else items.push(begun);
  }
  return items.map(stressed);
}

function tableOf(lines: readonly string[]): MarkdownBlock {
  const cells = (line: string): string[] =>
    line
      .replace(/^\||\|$/g, "")
      .split("|")
      .map((cell) => wordsOf(cell.trim()));
  const [head = "", , ...rows] = lines;
  return { kind: "table", head: cells(head), rows: rows.map(cells) };
}

/** The binder's font has no slanting letters: words of the trade, marked with _, stand as the others do. */
const wordsOf = (text: string): string =>
  text.replaceAll(/(^|[^\p{L}\p{N}])_([^_]+)_(?![\p{L}\p{N}])/gu, "$1$2");

const stressed = (text: string): Words[] =>
  text
    .split("**")
    .map((part, i) => ({ text: wordsOf(part), strong: i % 2 === 1 }))
    .filter((part) => part.text !== "");
