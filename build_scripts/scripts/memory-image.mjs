// @ts-check
/**
 * The form in which the memory image travels, and how it is put back. make_runtime.mjs writes it, a starting page reads it.
 *
 * Left out are the pages that hold only zeros, about half, and those that are as in an interpreter that has not begun (its
 * own data): a sum over these is compared before anything is put back. The rest is copied straight to where it belongs, so
 * that no second memory is filled first. Little-endian 32-bit numbers: length of the head, length of the memory, sum over
 * the own pages, count of these, count of the pages kept, the indexes of both; then the head as Pyodide wants it, then the
 * pages kept.
 */

const PAGE = 4096;
/** More than this is never restored; a damaged head must not ask for gigabytes. */
const LARGEST_MEMORY = 64 * 1024 * 1024;
const NUMBERS = 5;
/**
 * What a fresh interpreter may have written before the image is put back lies next to what the image holds: it is cleared
 * so far on both sides of a gap. make_runtime.mjs asks whether that is all.
 */
const CLEARED = 512 * 1024;

/**
 * @typedef {{head: Uint8Array<ArrayBuffer>, length: number, ownSum: number, ownPages: Uint32Array,
 *   runs: {to: number, bytes: Uint8Array<ArrayBuffer>}[]}} MemoryImage
 */

/** @param {Uint8Array} memory @param {number} page */
const pageOf = (memory, page) => memory.subarray(page * PAGE, (page + 1) * PAGE);

/**
 * A sum over pages that changes with every number in them, and with its place.
 * @param {Uint8Array} memory
 * @param {Iterable<number>} pages
 */
function sumOver(memory, pages) {
  const numbers = new Int32Array(memory.buffer, memory.byteOffset, memory.length / 4);
  let sum = 1;
  for (const page of pages) sum = sumOn(sum, numbers, page * (PAGE / 4), (page + 1) * (PAGE / 4));
  return sum >>> 0;
}

/** @param {number} sum @param {Int32Array} numbers @param {number} from @param {number} to */
function sumOn(sum, numbers, from, to) {
  let on = sum;
  for (let i = from; i < to; i += 1) on = (Math.imul(on, 31) + /** @type {number} */ (numbers[i])) | 0;
  return on;
}

/**
 * @param {Uint8Array} image  as Pyodide makes it: a head that says in its second number how long it is, then the memory
 * @param {Uint8Array} fresh  the memory of an interpreter that has not begun
 * @returns {Uint8Array<ArrayBuffer>}
 */
export function packedImage(image, fresh) {
  const headLength = new Uint32Array(image.buffer, image.byteOffset, 2)[1] ?? 0;
  const memory = image.subarray(headLength);
  const own = [];
  const kept = [];
  for (let page = 0; page * PAGE < memory.length; page += 1) {
    const bytes = pageOf(memory, page);
    if (bytes.every((byte) => byte === 0)) continue;
    const before = pageOf(fresh, page);
    if (bytes.every((byte, i) => byte === before[i])) own.push(page);
    else kept.push(page);
  }
  const numbers = [headLength, memory.length, sumOver(fresh, own), own.length, kept.length, ...own, ...kept];
  const headAt = 4 * numbers.length;
  const packed = new Uint8Array(headAt + headLength + kept.length * PAGE);
  new Uint32Array(packed.buffer, 0, numbers.length).set(numbers);
  packed.set(image.subarray(0, headLength), headAt);
  kept.forEach((page, i) => packed.set(pageOf(memory, page), headAt + headLength + i * PAGE));
  return packed;
}

/**
 * @param {ArrayBuffer} packed
 * @returns {MemoryImage | undefined} nothing, where it is not of this form
 */
export function readImage(packed) {
  if (packed.byteLength < 4 * NUMBERS) return undefined;
  const [headLength = 0, length = 0, ownSum = 0, own = 0, count = 0] = new Uint32Array(packed, 0, NUMBERS);
  const headAt = 4 * (NUMBERS + own + count);
  const isFit = headLength % 4 === 0 && length % PAGE === 0 && length <= LARGEST_MEMORY && packed.byteLength === headAt + headLength + count * PAGE;
  if (!isFit) return undefined;
  const ownPages = new Uint32Array(packed, 4 * NUMBERS, own);
  const pages = new Uint32Array(packed, 4 * (NUMBERS + own), count);
  if ([...ownPages, ...pages].some((page) => (page + 1) * PAGE > length)) return undefined;
  const runs = [];
  for (let i = 0; i < count; ) {
    const first = pages[i] ?? 0;
    let many = 1;
    while (i + many < count && pages[i + many] === first + many) many += 1;
    runs.push({ to: first * PAGE, bytes: new Uint8Array(packed, headAt + headLength + i * PAGE, many * PAGE) });
    i += many;
  }
  return { head: new Uint8Array(packed, headAt, headLength), length, ownSum, ownPages, runs };
}

/**
 * Puts the image into the memory of an interpreter that has not begun.
 * @param {MemoryImage} image
 * @param {Uint8Array} memory
 */
export function restore(image, memory) {
  if (memory.length !== image.length) throw new RangeError(`a memory of ${memory.length} bytes`);
  if (sumOver(memory, image.ownPages) !== image.ownSum) throw new RangeError("a memory that begins otherwise");
  const own = [...image.ownPages].map((page) => ({ to: page * PAGE, length: PAGE }));
  const given = image.runs.map(({ to, bytes }) => ({ to, length: bytes.length }));
  let at = 0;
  for (const { to, length } of [...own, ...given].sort((one, other) => one.to - other.to)) {
    clear(memory, at, to);
    at = to + length;
  }
  clear(memory, at, memory.length);
  for (const { to, bytes } of image.runs) memory.set(bytes, to);
}

/** Where make_runtime.mjs leaves in Python's memory what a page takes from it: attributes of a module that Pyodide shows to scripts. */
export const TAKEN = { begin: "linkwright_begin", library: "linkwright_library" };

/**
 * Ends the start of an interpreter whose memory holds the image: what Pyodide's own `finalizeBootstrap` does for a memory
 * that was put back, without the Python that it runs for the sake of `runPython` and packages, a tenth of a start.
 * make_runtime.mjs proves it: it begins in this way, and its answers must be those of the library.
 * @param {any} module  Pyodide's module in the sense of Emscripten
 * @param {Uint8Array} head  of the image
 * @returns {{ask: (request: string) => unknown, library: string}}  the way to answers, and where Python looks for its library
 */
export function wake(module, head) {
  const api = module.API;
  const { hiwireKeys, immortalKeys } = api.restoreSnapshot(head);
  module._jslib_init();
  module._init_pyodide_proxy();
  module.runtimeKeepalivePush();
  const expected = api.getExpectedKeys();
  const objects = [...expected, ...hiwireKeys.map((/** @type {any} */ key) => objectOf(key, api))];
  objects.forEach((object, i) => {
    if (module.__hiwire_set(i, object) < 0) throw new RangeError("the table of objects is full");
  });
  for (const key of immortalKeys) module.__hiwire_immortal_add(key);
  const shown = api._pyodide;
  return { ask: shown[TAKEN.begin](), library: String(shown[TAKEN.library]) };
}

/** An object of this side that Python held when the image was made. @param {any} key @param {any} api */
function objectOf(key, api) {
  if (!key) return key;
  if ("path" in key) return key.path.reduce((/** @type {any} */ object, /** @type {string} */ name) => object[name], api.config.jsglobals) || null;
  if ("abortSignalAny" in key) return api.abortSignalAny;
  if ("API" in key) return api;
  throw new TypeError("the memory image holds an object of this side");
}

/** @param {Uint8Array} memory @param {number} from @param {number} to */
function clear(memory, from, to) {
  memory.fill(0, from, Math.min(to, from + CLEARED));
  memory.fill(0, Math.max(from, to - CLEARED), to);
}
