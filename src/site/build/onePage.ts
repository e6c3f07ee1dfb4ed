import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse, type DefaultTreeAdapterTypes } from "parse5";

type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.Node;

/** Where the whole binder stands as one page, once it is built. */
const PAGE = "binder/index.html";

/** What names other elements of its page; all but links list one or more ids. */
const NAMING: ReadonlySet<string> = new Set(["for", "headers", "aria-labelledby", "aria-describedby"]);

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const valueOf = (element: Element, name: string): string | undefined =>
  element.attrs.find((one) => one.name === name)?.value;

/** All elements below a node, each before those within it; `into` may keep out of some. */
function* elementsOf(node: Node, into: (element: Element) => boolean = () => true): Generator<Element> {
  if (!("childNodes" in node)) return;
  for (const child of node.childNodes) {
    if (!("tagName" in child)) continue;
    yield child;
    if (into(child)) yield* elementsOf(child, into);
  }
}

/** What the stylesheet for paper leaves out; a sheet's own contents lead to parts of it that may be of these. */
const UNPRINTED = ["screen-only", "contents"];
const screenOnly = (element: Element): boolean =>
  (valueOf(element, "class") ?? "").split(" ").some((one) => UNPRINTED.includes(one));

/** A sheet of the page: what stands in it, and the page of the site that it was made from. */
interface SheetOf {
  readonly id: string;
  readonly elements: readonly Element[];
  readonly ids: ReadonlySet<string>;
}

/**
 * Pages of the site that stand below each other as one. Each keeps its ids apart from those of the others by the id of its
 * sheet (`data-page` names the page that it stands for), links to a page that is here lead there, and what is for a screen
 * alone is left out, since this page is as it prints.
 */
export function asOnePage(html: string): string {
  const sheets = new Map<string, SheetOf>();
  for (const element of elementsOf(parse(html, { sourceCodeLocationInfo: true }))) {
    const page = valueOf(element, "data-page");
    if (page === undefined) continue;
    const elements = [...elementsOf(element, (one) => !screenOnly(one))];
    const ids = new Set(elements.flatMap((one) => valueOf(one, "id") ?? []));
    sheets.set(page, { id: valueOf(element, "id") ?? "", elements, ids });
  }
  const edits = [...sheets.values()].flatMap((sheet) =>
    sheet.elements.flatMap((one) => editsOf(one, sheet, sheets)),
  );
  return edited(html, edits);
}

function editsOf(element: Element, { id, ids }: SheetOf, sheets: ReadonlyMap<string, SheetOf>): Edit[] {
  const place = element.sourceCodeLocation;
  const own = (one: string): string => (ids.has(one) ? `${id}-${one}` : one);
  const edits = element.attrs.flatMap(({ name, value }): Edit[] => {
    const at = place?.attrs?.[name];
    if (!at) return [];
    const changed =
      name === "id"
        ? own(value)
        : NAMING.has(name)
          ? value.split(" ").map(own).join(" ")
          : name === "href"
            ? hrefOf(value, own, sheets)
            : value;
    return changed === value
      ? []
      : [{ start: at.startOffset, end: at.endOffset, text: `${name}="${changed}"` }];
  });
  const { startTag, endTag } = place ?? {};
  // It stays as an empty element: what is laid out beside it on paper asks whether it is there.
  if (screenOnly(element) && startTag && endTag)
    edits.push({ start: startTag.endOffset, end: endTag.startOffset, text: "" });
  return edits;
}

/** A link within the sheet, or to a page that stands here too; others stay as they are. */
function hrefOf(value: string, own: (id: string) => string, sheets: ReadonlyMap<string, SheetOf>): string {
  if (value.startsWith("#")) return `#${own(value.slice(1))}`;
  const [page = "", fragment] = value.split("#");
  const sheet = sheets.get(page);
  if (!sheet) return value;
  return `#${fragment !== undefined && sheet.ids.has(fragment) ? `${sheet.id}-${fragment}` : sheet.id}`;
}

function edited(html: string, edits: readonly Edit[]): string {
  let done = "";
  let from = 0;
  for (const { start, end, text } of edits.toSorted((a, b) => a.start - b.start)) {
    done += html.slice(from, start) + text;
    from = end;
  }
  return done + html.slice(from);
}

/** To stand before what makes links relative: they are known by their way from the site's root. */
export function onePage() {
  return {
    name: "one-page",
    hooks: {
      "astro:build:done": ({ dir }: { dir: URL }) => {
        const path = fileURLToPath(new URL(PAGE, dir));
        writeFileSync(path, asOnePage(readFileSync(path, "utf8")));
      },
    },
  };
}
