import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { linksOf } from "./linksOf.ts";

/** The page for an address that is none. Nobody knows how deep such an address lies, so its links stay as they are. */
const NO_SUCH_PAGE = "404.html";

/**
 * A link from the site's root, told from a page so many folders below it.
 * Folders get their index.html, so that the binder also opens from a disk without any server.
 */
export function relativeLink(target: string, depth: number): string {
  const [, path = "", tail = ""] = /^\/([^?#]*)(.*)$/s.exec(target) ?? [];
  const file = path === "" || path.endsWith("/") ? `${path}index.html` : path;
  return `${"../".repeat(depth)}${file}${tail}`;
}

const fromRoot = (target: string): boolean => target.startsWith("/") && !target.startsWith("//");
const asAttribute = (text: string): string => text.replaceAll("&", "&amp;").replaceAll('"', "&quot;");

/** Every link of a page that starts at the root, made relative; all else stays letter for letter. */
export function relativePage(html: string, depth: number): string {
  let done = "";
  let from = 0;
  for (const { name, value, start, end } of linksOf(html)) {
    if (!fromRoot(value)) continue;
    done += `${html.slice(from, start)}${name}="${asAttribute(relativeLink(value, depth))}"`;
    from = end;
  }
  return done + html.slice(from);
}

/** The same for a stylesheet. Its words are ours alone: nothing that a user writes ends up in one. */
export const relativeStyles = (css: string, depth: number): string =>
  css.replace(
    /(\burl\((["']?))(\/(?!\/)[^"')]*)/g,
    (_, start: string, __, target: string) => start + relativeLink(target, depth),
  );

/** Pages link from the root while they are written; the finished folder works from any place. */
export function relativeSite() {
  return {
    name: "relative-links",
    hooks: {
      "astro:build:done": ({ dir }: { dir: URL }) => {
        const root = fileURLToPath(dir);
        for (const file of readdirSync(root, { recursive: true, encoding: "utf8" })) {
          const change = file.endsWith(".html")
            ? relativePage
            : file.endsWith(".css")
              ? relativeStyles
              : null;
          if (change === null || file === NO_SUCH_PAGE) continue;
          const text = readFileSync(join(root, file), "utf8");
          writeFileSync(join(root, file), change(text, file.split(/[\\/]/).length - 1));
        }
      },
    },
  };
}
