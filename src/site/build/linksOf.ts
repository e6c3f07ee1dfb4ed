import { parse, type DefaultTreeAdapterTypes } from "parse5";

/** One attribute, and where it stands in the text of the page. */
export interface PageAttribute {
  readonly name: string;
  readonly value: string;
  readonly start: number;
  readonly end: number;
}

const ADDRESSES: ReadonlySet<string> = new Set(["href", "src"]);

/** The links of a page. */
export const linksOf = (html: string): PageAttribute[] => attributesOf(html, ADDRESSES);

/** Some attributes of a page as a browser finds them, in order: text that only looks like one is none. */
export function attributesOf(html: string, names: ReadonlySet<string>): PageAttribute[] {
  const found: PageAttribute[] = [];
  const visit = (node: DefaultTreeAdapterTypes.Node): void => {
    if ("attrs" in node)
      for (const { name, value } of node.attrs) {
        const place = node.sourceCodeLocation?.attrs?.[name];
        if (place && names.has(name))
          found.push({ name, value, start: place.startOffset, end: place.endOffset });
      }
    if ("childNodes" in node) node.childNodes.forEach(visit);
  };
  visit(parse(html, { sourceCodeLocationInfo: true }));
  // A page that nests wrongly is put right while it is read, and then its order is another.
  return found.sort((a, b) => a.start - b.start);
}
