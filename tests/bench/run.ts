import { benchBinder } from "./binder.ts";
import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { benchPlates } from "./plates.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

await benchParts();
benchPlates();
benchBinder();
await benchPages();
printKeystrokes(await keystrokes());
