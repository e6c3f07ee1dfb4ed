import { defineConfig } from "astro/config";

// The yardstick for building pages: nothing but pages.
export default defineConfig({ output: "static", devToolbar: { enabled: false } });
