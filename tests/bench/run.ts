import { benchForming } from "./forming.ts";
import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { benchPlates } from "./plates.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

benchForming();
await benchParts();
benchPlates();
await benchPages();
printKeystrokes(await keystrokes());
