import { benchBinder } from "./binder.ts";
import { benchForming } from "./forming.ts";
import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { benchPlates } from "./plates.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

benchForming();
await benchParts();
benchPlates();
benchBinder();
await benchPages();
printKeystrokes(await keystrokes());
