import { Inflate } from "fflate";
import { read, unreadable, type Reading } from "../../../input/reading.ts";
import { MOST_PACKED } from "./mostPacked.ts";

/** More than any job, unpacked. [bytes] */
const MOST_UNPACKED = 50_000_000;
const MOST_FILES = 5000;
/** Unpacked piece by piece, so that a file that grows beyond all measure is noticed at once. [bytes] */
const PIECE = 16_384;

const broken = unreadable("it is not a whole zip file", "copy or download it again");
const tooLarge = unreadable("it holds more than any job", "check that this is the file you mean");

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_SIZE = 22;
const MOST_COMMENT = 65_535;
const LOCKED = 1;
const STORED = 0;
const DEFLATED = 8;

/** Where an archive's own list of files says that one lies, and what it must come to (PKWARE APPNOTE, 4.3.12). */
interface Entry {
  readonly name: string;
  readonly flags: number;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly at: number;
}

/** A file of an archive; undefined where nobody wants it or it is larger than asked for. */
export type Packed = ReadonlyMap<string, Uint8Array | undefined>;

/**
 * The files of a zip archive, all or none: one broken byte, or a name that leads out of its folder, and nothing is read.
 * @param wanted files to unpack; the others come as a name
 * @param most a larger file comes as a name too [bytes]
 */
export function unzip(bytes: Uint8Array, wanted: (name: string) => boolean, most: number): Reading<Packed> {
  if (bytes.length > MOST_PACKED) return tooLarge;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const entries = entriesOf(view);
    if (!entries) return broken;
    if (entries.length > MOST_FILES) return tooLarge;
    const files = new Map<string, Uint8Array | undefined>();
    let total = 0;
    for (const entry of entries) {
      const name = entry.name.replaceAll("\\", "/");
      if (name.endsWith("/")) continue;
      if (leadsOut(name)) return unreadable("a name in it leads out of its folder", "do not use it");
      if (files.has(name)) return unreadable("it holds two files of the same name", "pack it again");
      if (!wanted(name)) {
        files.set(name, undefined);
        continue;
      }
      const file = fileOf(view, entry, most);
      if (file.kind === "unreadable") return file;
      total += file.value?.length ?? 0;
      if (total > MOST_UNPACKED) return tooLarge;
      files.set(name, file.value);
    }
    return read(files);
  } catch (error) {
    // Offsets that point beyond the end, and streams that the unpacker cannot follow.
    if (error instanceof RangeError || (error instanceof Error && "code" in error)) return broken;
    throw error;
  }
}

const leadsOut = (name: string): boolean =>
  name === "" || /^\/|^[A-Za-z]:/.test(name) || name.split("/").some((step) => step === "..");

function entriesOf(view: DataView): Entry[] | undefined {
  let end = view.byteLength - END_SIZE;
  const first = Math.max(0, end - MOST_COMMENT);
  while (end >= first && view.getUint32(end, true) !== END) end--;
  if (end < first) return undefined;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: Entry[] = [];
  for (let i = 0; i < count; i++) {
    if (view.getUint32(at, true) !== ENTRY) return undefined;
    const length = view.getUint16(at + 28, true);
    entries.push({
      flags: view.getUint16(at + 8, true),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
      name: new TextDecoder().decode(slice(view, at + 46, length)),
    });
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

function slice(view: DataView, at: number, length: number): Uint8Array {
  if (at + length > view.byteLength) throw new RangeError(`archive: ${at + length}`);
  return new Uint8Array(view.buffer, view.byteOffset + at, length);
}

function fileOf(view: DataView, entry: Entry, most: number): Reading<Uint8Array | undefined> {
  if (entry.flags & LOCKED) return unreadable("it is locked with a password", "pack it without one");
  if (entry.method !== STORED && entry.method !== DEFLATED)
    return unreadable("it is packed in a way that is not read here", "pack it as a plain zip file");
  if (view.getUint32(entry.at, true) !== LOCAL) return broken;
  const begin = entry.at + 30 + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  const data = slice(view, begin, entry.packed);
  if (entry.size > most) return read(undefined);
  const file = entry.method === STORED ? data : inflated(data, entry.size);
  return file?.length === entry.size && crc32(file) === entry.crc ? read(file) : broken;
}

/** Undefined where more comes out than the archive said. */
function inflated(data: Uint8Array, size: number): Uint8Array | undefined {
  const out = new Uint8Array(size);
  let at = 0;
  const inflate = new Inflate((piece) => {
    if (at + piece.length <= size) out.set(piece, at);
    at += piece.length;
  });
  for (let from = 0; from < data.length && at <= size; from += PIECE)
    inflate.push(data.subarray(from, from + PIECE), from + PIECE >= data.length);
  return at === size ? out : undefined;
}

/** The check sum of a zip archive (PKWARE APPNOTE, 4.4.7): polynomial 0xedb88320, least bit first. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
