import svelte from "@astrojs/svelte";
import { defineConfig } from "astro/config";
import { fileURLToPath } from "node:url";
import { licences } from "./src/site/build/licences.ts";
import { offline } from "./src/site/build/offline.ts";
import { onePage } from "./src/site/build/onePage.ts";
import { relativeSite } from "./src/site/build/relativeLinks.ts";
import { stopOnProblems } from "./src/site/build/stopOnProblems.ts";
import { stylesInSheet } from "./src/site/build/stylesApart.ts";
import { wholeOrNothing } from "./src/site/build/wholeOrNothing.ts";
import { withoutClient } from "./src/site/build/withoutClient.ts";

// Telemetry and remote fonts stay off: the site is built and read with no network.
export default defineConfig({
  integrations: [
    stopOnProblems(),
    withoutClient(svelte()),
    onePage(),
    stylesInSheet(),
    relativeSite(),
    offline(),
    wholeOrNothing(),
  ],
  output: "static",
  trailingSlash: "always",
  build: { inlineStylesheets: "never" },
  devToolbar: { enabled: false },
  vite: {
    plugins: [licences()],
    // What the PDF library would load for web pages and pictures, which no file of ours holds: it stays out of the binder.
    resolve: {
      alias: Object.fromEntries(
        ["html2canvas", "canvg", "dompurify"].map((name) => [
          name,
          fileURLToPath(new URL("./src/site/build/nothing.ts", import.meta.url)),
        ]),
      ),
    },
    // Nothing is put into a page itself: its policy has only files of its own site run.
    build: { assetsInlineLimit: 0 },
    // A script finds what it loads later on from where it lies itself: the binder works from any folder of any server.
    experimental: {
      renderBuiltUrl: (_, { hostType }) => (hostType === "js" ? { relative: true } : undefined),
    },
  },
});
