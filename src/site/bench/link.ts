import { isNamed, type NamedTyped } from "./asTyped.ts";

export const MARK = "#part=";
/** Longer than any part; an address beyond it was not made here. */
export const LONGEST = 20_000;

/** The whole part in the address behind #, which a browser sends to nobody. */
export const linkOf = ({ name, part }: NamedTyped): string =>
  MARK + encodeURIComponent(JSON.stringify({ name, part }));

export type LinkReading =
  | { readonly kind: "none" }
  | { readonly kind: "read"; readonly value: NamedTyped }
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
    ? { kind: "read", value: { name: data.name, part: data.part } }
    : broken("it holds no part");
}
