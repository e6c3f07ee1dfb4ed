import { execFile } from "node:child_process";
import { existsSync, globSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { promisify } from "node:util";

/** The binder of the invented job, as `npm run build` leaves it. */
export const DIST = "dist";

/** Every page of a built folder, "parts/scalper-cone/index.html". */
export function pagesOf(folder: string): string[] {
  if (!existsSync(folder)) throw new Error(`there is no folder ${folder}: run npm run build first`);
  return globSync("**/*.html", { cwd: folder }).toSorted();
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

/** Serves a folder as any plain web server would, below a sub-folder of its own. */
export async function serve(folder: string): Promise<{ url: string; close: () => void }> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const file = join(folder, path.replace(/^\/binder\//, "/"), path.endsWith("/") ? "index.html" : "");
    if (!path.startsWith("/binder/") || !existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": TYPES[extname(file)] ?? "application/octet-stream" });
    response.end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}/binder/`, close: () => server.close() };
}

export interface Built {
  readonly code: number;
  readonly stderr: string;
}

/** Builds the binder of another data folder. */
export async function build(data: string, outDir: string): Promise<Built> {
  const env = { ...process.env, SLANTWORK_DATA: data, ASTRO_TELEMETRY_DISABLED: "1", NODE_ENV: "production" };
  try {
    const { stderr } = await promisify(execFile)("node_modules/.bin/astro", ["build", "--outDir", outDir], {
      env,
    });
    return { code: 0, stderr };
  } catch (error) {
    const { code, stderr } = error as { code: number; stderr: string };
    return { code, stderr };
  }
}
