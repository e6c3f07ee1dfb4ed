import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * A link from the site's root, told from a page so many folders below it.
 * Folders get their index.html, so that the binder also opens from a disk without any server.
 */
export function relativeLink(target: string, depth: number): string {
  const [, path = "", tail = ""] = /^\/([^?#]*)(.*)$/.exec(target) ?? [];
  const file = path === "" || path.endsWith("/") ? `${path}index.html` : path;
  return `${"../".repeat(depth)}${file}${tail}`;
}

/** Every link of a page or a stylesheet that starts at the root, made relative. */
export function relativeLinks(text: string, depth: number): string {
  return text
    .replace(
      /(\s(?:href|src)=")(\/(?!\/)[^"]*)"/g,
      (_, start: string, target: string) => `${start}${relativeLink(target, depth)}"`,
    )
    .replace(
      /(\burl\((["']?))(\/(?!\/)[^"')]*)/g,
      (_, start: string, __, target: string) => start + relativeLink(target, depth),
    );
}

/** Pages link from the root while they are written; the finished folder works from any place. */
export function relativeSite() {
  return {
    name: "relative-links",
    hooks: {
      "astro:build:done": ({ dir }: { dir: URL }) => {
        const root = fileURLToPath(dir);
        for (const file of readdirSync(root, { recursive: true, encoding: "utf8" })) {
          if (!/\.(html|css)$/.test(file)) continue;
          const text = readFileSync(join(root, file), "utf8");
          writeFileSync(join(root, file), relativeLinks(text, file.split(/[\\/]/).length - 1));
        }
      },
    },
  };
}
