import { isNamed, type NamedTyped } from "./asTyped.ts";

export const MARK = "#part=";
/** Longer than any part; an address beyond it was not made here. */
export const LONGEST = 20_000;

/** The longest name that a file has. */
const LONGEST_NAME = 255;

/**
 * The whole part in the address behind #, which a browser sends to nobody.
 * @param from its file or its place on the tray, where it does not come from somebody else
 */
export const linkOf = ({ name, part }: NamedTyped, from?: string): string =>
  MARK + encodeURIComponent(JSON.stringify({ name, part, ...(from !== undefined && { from }) }));

/** Said of a part that was put on the bench. */
export const onTheBench = (what: string): string =>
  `${what} is on the bench. Undo brings back what was here.`;

export type LinkReading =
  | { readonly kind: "none" }
  | { readonly kind: "read"; readonly value: NamedTyped; readonly from?: string }
  | { readonly kind: "broken"; readonly why: string };

/** The part that an address carries; what is wrong with one that carries none is told, and nothing else happens. */
export function partInLink(hash: string): LinkReading {
  if (!hash.startsWith(MARK)) return { kind: "none" };
  const broken = (why: string): LinkReading => ({ kind: "broken", why });
  if (hash.length > LONGEST) return broken("it is far longer than any part");
  let data: unknown;
  try {
    data = JSON.parse(decodeURIComponent(hash.slice(MARK.length)));
  } catch {
    return broken("it was cut off or changed on its way");
  }
  return isNamed(data)
    ? { kind: "read", value: { name: data.name, part: data.part }, ...fromOf(data) }
    : broken("it holds no part");
}

/** What the part is known by to whoever opened it here; one that was sent says nothing of the kind. */
const fromOf = (data: object): { readonly from?: string } =>
  "from" in data && typeof data.from === "string" ? { from: data.from.slice(0, LONGEST_NAME) } : {};
