import { cpSync, existsSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { relative } from "node:path";
import { fileURLToPath } from "node:url";

/** What the builder tells before it begins, as far as it matters here. */
interface Setup {
  readonly command: string;
  readonly config: { readonly root: URL; readonly outDir: URL };
  readonly updateConfig: (change: { outDir: URL; build: { client: URL; server: URL } }) => unknown;
}

/** A folder as a person would type it. */
const named = (folder: string): string => {
  const short = relative(process.cwd(), folder);
  return short === "" || short.startsWith("..") ? folder : short;
};

/** Building replaces a folder whole, so it may only be a binder or nothing. */
const holdsOtherThings = (folder: string): boolean =>
  existsSync(folder) && readdirSync(folder).length > 0 && !existsSync(`${folder}/404.html`);

/** What a failed build leaves behind, in a sentence. */
function left(folder: string): string {
  if (!existsSync(folder)) return "nothing was built";
  const when = new Date(statSync(folder).mtimeMs).toLocaleString("sv").slice(0, 16);
  return `nothing was replaced: the binder in ${named(folder)} is still the one of ${when}`;
}

/** Puts the finished folder in the place of the last one. */
function replace(folder: string, made: string): void {
  rmSync(folder, { recursive: true, force: true });
  try {
    renameSync(made, folder);
  } catch {
    // On another disk, where nothing can be moved to.
    cpSync(made, folder, { recursive: true });
    rmSync(made, { recursive: true, force: true });
  }
}

/**
 * A binder is made aside and put in its place only when it is whole, so that a failed build leaves no half of one, and
 * says which one is still there. Aside is within the project, where the packages are found that its pages are written
 * with: so the binder itself may go anywhere. Stands last among the integrations.
 */
export function wholeOrNothing() {
  let folder = "";
  let made = "";
  let whole = true;
  return {
    name: "whole-or-nothing",
    hooks: {
      "astro:config:setup": ({ command, config, updateConfig }: Setup) => {
        if (command !== "build") return;
        folder = fileURLToPath(config.outDir).replace(/[\\/]$/, "");
        if (holdsOtherThings(folder)) {
          process.stderr.write(
            `${named(folder)} holds other things than a binder, and building would replace them; name an empty or a new folder\n`,
          );
          process.exit(1);
        }
        const aside = new URL(`.astro/binder-${process.pid}/`, config.root);
        made = fileURLToPath(aside).replace(/[\\/]$/, "");
        whole = false;
        updateConfig({
          outDir: aside,
          build: { client: new URL("client/", aside), server: new URL("server/", aside) },
        });
        process.once("SIGINT", () => process.exit(130));
        process.on("exit", () => {
          if (whole) return;
          rmSync(made, { recursive: true, force: true });
          process.stderr.write(`${left(folder)}\n`);
        });
      },
      "astro:build:done": () => {
        replace(folder, made);
        whole = true;
        process.stdout.write(`the binder is in ${named(folder)}\n`);
      },
    },
  };
}
