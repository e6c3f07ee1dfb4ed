import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { benchPlates } from "./plates.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

await benchParts();
benchPlates();
await benchPages();
printKeystrokes(await keystrokes());
