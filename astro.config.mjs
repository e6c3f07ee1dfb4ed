import svelte from "@astrojs/svelte";
import { defineConfig } from "astro/config";
import { relativeSite } from "./src/site/build/relativeLinks.ts";
import { stopOnProblems } from "./src/site/build/stopOnProblems.ts";
import { wholeOrNothing } from "./src/site/build/wholeOrNothing.ts";
import { withoutClient } from "./src/site/build/withoutClient.ts";

// Telemetry and remote fonts stay off: the site is built and read with no network.
export default defineConfig({
  integrations: [stopOnProblems(), withoutClient(svelte()), relativeSite(), wholeOrNothing()],
  output: "static",
  trailingSlash: "always",
  build: { inlineStylesheets: "never" },
  devToolbar: { enabled: false },
  vite: {
    // A script finds what it loads later on from where it lies itself: the binder works from any folder of any server.
    experimental: {
      renderBuiltUrl: (_, { hostType }) => (hostType === "js" ? { relative: true } : undefined),
    },
  },
});
