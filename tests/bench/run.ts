import { benchParts } from "./parts.ts";

await benchParts();
