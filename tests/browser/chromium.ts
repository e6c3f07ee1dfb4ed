import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";

/** Runs without a display, and asks nobody anything over the network. */
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

const found = (): string | undefined =>
  [process.env["CHROMIUM"] ?? "", ...PLACES].find((path) => path !== "" && existsSync(path));

/** Debian, as root, can install what is missing; anywhere else the person at the keyboard is asked to. */
function install(): void {
  if (!existsSync("/etc/debian_version") || process.getuid?.() !== 0) return;
  execFileSync("/usr/bin/apt-get", ["update"], { stdio: "ignore" });
  execFileSync("/usr/bin/apt-get", ["install", "-y", "chromium"], { stdio: "ignore" });
}

/** A browser for the tests. */
export async function launch(): Promise<Browser> {
  if (!found()) install();
  const executablePath = found();
  if (!executablePath)
    throw new Error("No Chromium was found: install it, or name it with CHROMIUM=/path/to/chromium.");
  return chromium.launch({ executablePath, args: FLAGS });
}
