import { isHeld } from "../keep.ts";
import { saveFile } from "../files/saveFile.ts";
import { asides, dropAsides } from "./aside.ts";

/** There is no room to move it. */
const HELD =
  " This browser has no room to set it aside: it stays where it lies, and nothing that is changed here is kept until you have saved it as a file and thrown it away here.";

/** What somebody can take away of a text that was set aside. */
export interface AsideFile {
  readonly name: string;
  readonly text: string;
}

/**
 * Says above a place that something kept there was set aside, and offers it as files until somebody throws it away. It
 * stands there once; nothing is said where nothing was set aside.
 *
 * @param key under which it was kept before
 */
export function asideNotice(
  place: Element,
  key: string,
  { words, fileOf }: { readonly words: string; readonly fileOf: (text: string) => AsideFile },
): void {
  const files = asides(key).map(fileOf);
  const differing = new Map(files.map((file) => [file.text, file]));
  for (const other of place.parentElement?.children ?? [])
    if (other instanceof HTMLElement && other.dataset["setAside"] === key) other.remove();
  if (differing.size === 0) return;
  const notice = document.createElement("div");
  notice.className = "screen-only bench-row";
  notice.setAttribute("role", "alert");
  notice.dataset["setAside"] = key;
  const said = document.createElement("p");
  said.textContent = `${words}${isHeld(key) ? HELD : ""}`;
  notice.append(
    said,
    button("Save it as a file", () => {
      for (const file of differing.values()) saveFile(file.name, file.text, "text/plain");
    }),
    button("Throw it away", () => {
      dropAsides(key);
      notice.remove();
    }),
  );
  place.before(notice);
}

function button(label: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = label;
  made.addEventListener("click", act);
  return made;
}
