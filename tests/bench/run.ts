import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

await benchParts();
await benchPages();
printKeystrokes(await keystrokes());
