import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";

await benchParts();
await benchPages();
