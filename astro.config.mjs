import svelte from "@astrojs/svelte";
import { defineConfig } from "astro/config";

// Telemetry and remote fonts stay off: the site is built and read with no network.
export default defineConfig({
  integrations: [svelte()],
  output: "static",
  trailingSlash: "always",
  devToolbar: { enabled: false },
});
