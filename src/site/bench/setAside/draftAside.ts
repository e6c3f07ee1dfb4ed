import { typedYaml } from "../../../input/typedYaml.ts";
import { asDraft } from "../asTyped.ts";
import { setAside } from "./aside.ts";
import { type AsideFile, asideNotice } from "./asideNotice.ts";

/**
 * A shop that was kept and cannot be read makes room for the binder's own: told, and offered as the text that was kept.
 *
 * @param isUnread false where it was set aside before
 */
export function setShopAside(place: Element, key: string, isUnread: boolean): void {
  if (isUnread) setAside(key);
  asideNotice(place, key, {
    words:
      "The shop that was changed in this browser could not be read. It is set aside as it was, and the binder’s own shop is asked.",
    fileOf: (text) => ({ name: "shop-set-aside.txt", text }),
  });
}

/** A text that was kept as a file: the part as it was typed last, or the text itself where it is no part. */
export function asideFile(text: string, name: string): AsideFile {
  let last;
  try {
    last = asDraft(JSON.parse(text))?.at(-1);
  } catch {
    // It is no draft, and goes as it is.
  }
  return last
    ? { name: `${name}-set-aside.yaml`, text: typedYaml(last.part) }
    : { name: `${name}-set-aside.txt`, text };
}

/**
 * What was kept of a part and cannot be shown makes room for what was published; it is told, and offered as a file until
 * somebody throws it away.
 *
 * @param why it cannot be shown; undefined where it was set aside before
 */
export function setDraftAside(
  place: Element,
  { key, name, why }: { readonly key: string; readonly name: string; readonly why: string | undefined },
): void {
  if (why !== undefined) {
    setAside(key);
    // The window's own last state, which mostly is that of the same.
    setAside(key, () => sessionStorage);
  }
  const now = why === undefined ? "" : ` (${why})`;
  asideNotice(place, key, {
    words: `What was typed here before could not be shown${now}. It is set aside in this browser, and this page has begun anew from what was published.`,
    fileOf: (text) => asideFile(text, name),
  });
}
