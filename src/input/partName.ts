import { either } from "./nearest.ts";
import { read, shown, unreadable, type Reading } from "./reading.ts";

const MAX_NAME = 80;
const ENDING = /\.ya?ml$/i;
/** Names that one operating system or another keeps for its devices, whatever ending they carry. */
const DEVICES = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\.|$)/i;

/** Endings by which a web server and the build know their own files. */
const PAGES = /\.(?:html?|json|css|m?js|svg|xml|txt)$/i;

/** What stands between folders on the machine at hand; a browser names files without their folders. */
const { process } = globalThis as { readonly process?: { readonly platform?: string } };
const SEPARATOR = process?.platform === "win32" ? "\\" : "/";

/**
 * A part's name: its file name without the ending. It becomes a file name on every system and a piece of a web address,
 * so it keeps to the letters that both take as they are (RFC 3986, unreserved).
 */
export function partName(path: string, separator: string = SEPARATOR): Reading<string> {
  // Only one system takes a backslash between folders; on the others it is a sign of the name, and an odd one.
  const file = path.split(separator === "\\" ? /[/\\]/ : "/").at(-1) ?? "";
  if (!ENDING.test(file)) return unreadable("its name does not end in .yaml", `rename it to end in .yaml`);
  const name = file.replace(ENDING, "");
  const better = suggestion(name);
  const rename =
    better === undefined ? "give it a name of letters, digits and hyphens" : `rename it to ${better}.yaml`;
  if (name === "") return unreadable("there is no name before the ending", rename);
  if (name.startsWith("."))
    return unreadable("its name begins with a point, which hides it on many systems", rename);
  if (name.length > MAX_NAME)
    return unreadable(`its name is longer than ${MAX_NAME} characters`, "give it a shorter name");
  if (DEVICES.test(name))
    return unreadable(`${shown(name)} is a name that some systems keep for a device`, rename);
  // A web server shows the page index when it is asked for the folder.
  if (/^index$/i.test(name))
    return unreadable(`${shown(name)} is kept for the page that lists the parts`, rename);
  if (PAGES.test(name))
    return unreadable(`${shown(name)} ends like a file of the site itself`, "rename it without that ending");
  const odd = [...new Set(name.match(/[^A-Za-z0-9._~-]/gu) ?? [])];
  if (odd.length > 0) {
    const signs = either(odd.slice(0, 5).map((sign) => (sign === " " ? "a space" : shown(sign))));
    return unreadable(
      `its name holds ${signs}, which a web address or another system does not take as it is`,
      rename,
    );
  }
  if (name.endsWith(".")) return unreadable("its name ends in a point", rename);
  return read(name);
}

const SPELT: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  Æ: "Ae",
  ø: "o",
  Ø: "O",
  ł: "l",
  Ł: "L",
  đ: "d",
};

/** A name as near as may be under which a part may be kept, where its own will not do; undefined where there is none. */
export function betterName(name: string): string | undefined {
  const better = suggestion(name);
  return better !== undefined && partName(`${better}.yaml`).kind === "read" ? better : undefined;
}

/** The nearest name that would do, where there is one. */
function suggestion(name: string): string | undefined {
  const plain = name
    .replace(/[ßæÆøØłŁđ]/g, (letter) => SPELT[letter] ?? letter)
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^A-Za-z0-9._~-]+/g, "-")
    .replace(/-{2,}/g, "-")
    .replace(/^[.-]+|[.-]+$/g, "");
  if (plain === "" || plain.length > MAX_NAME) return undefined;
  return DEVICES.test(plain) || /^index$/i.test(plain) ? `part-${plain}` : plain;
}
