import svelte from "@astrojs/svelte";
import { defineConfig } from "astro/config";
import { relativeSite } from "./src/site/build/relativeLinks.ts";
import { stopOnProblems } from "./src/site/build/stopOnProblems.ts";

// Telemetry and remote fonts stay off: the site is built and read with no network.
export default defineConfig({
  integrations: [stopOnProblems(), svelte(), relativeSite()],
  output: "static",
  trailingSlash: "always",
  build: { inlineStylesheets: "never" },
  devToolbar: { enabled: false },
});
