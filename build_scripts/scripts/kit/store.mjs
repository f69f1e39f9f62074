// @ts-check
/**
 * The reader's own parts in the browser's database. A part is kept beside what its list is sorted by; its photo stands in a
 * store of its own, so that a list need not read it. Nothing here thinks about a part: calc.records does.
 */
import { openDB } from "idb";

/**
 * @typedef {Record<string, any>} Part
 * @typedef {{part: Part, order: string}} Kept  a part as Python gives it to be kept
 * @typedef {{id: string, order: string, revision: number, part: Part}} Row
 */

const NAME = "linkwright-kit";
const VERSION = 1;

/** A part was changed elsewhere since it was read. */
export class Changed extends Error {}

export class KitStore {
  /** @type {import("idb").IDBPDatabase} */
  #db;

  /** @param {import("idb").IDBPDatabase} db */
  constructor(db) {
    this.#db = db;
  }

  /** Opens the database; throws where the browser allows none. */
  static async open() {
    /** @type {import("idb").IDBPDatabase} */
    const db = await openDB(NAME, VERSION, {
      upgrade(made) {
        made.createObjectStore("parts", { keyPath: "id" }).createIndex("order", "order");
        made.createObjectStore("photos");
        made.createObjectStore("notes");
      },
      blocking: () => db.close(), // a newer book in another tab must not wait for this one
    });
    return new KitStore(db);
  }

  /**
   * The parts, at most so many, without photos, whose line has every one of the words; and how many there are.
   * @param {string[]} words  in small letters
   * @param {IDBKeyRange | null} range  of what the list is sorted by
   * @param {(part: Part) => string} line
   * @param {number} most
   */
  async find(words, range, line, most) {
    /** @type {Row[]} */
    const rows = await this.#db.transaction("parts").store.index("order").getAll(range);
    const found = rows.filter(({ part }) => {
      const text = line(part).toLowerCase();
      return words.every((word) => text.includes(word));
    });
    return { parts: found.slice(0, most).map(({ part }) => ({ ...part, photo: "" })), found: found.length };
  }

  /** How many parts there are, and how many of them are to be looked at by a day. @param {string} today */
  async counts(today) {
    const order = this.#db.transaction("parts").store.index("order");
    return { count: await order.count(), due: await order.count(IDBKeyRange.upperBound(today)) };
  }

  /** Some parts of the list, without photos. @param {number} from @param {number} most @returns {Promise<Part[]>} */
  async list(from, most) {
    /** @type {Part[]} */
    const found = [];
    let cursor = await this.#db.transaction("parts").store.index("order").openCursor();
    if (cursor && from > 0) cursor = await cursor.advance(from);
    while (cursor && found.length < most) {
      found.push({ ...cursor.value.part, photo: "" });
      cursor = await cursor.continue();
    }
    return found;
  }

  /** A part with its photo, and how often it was changed. @param {string} id @returns {Promise<{part: Part, revision: number} | null>} */
  async get(id) {
    const reading = this.#db.transaction(["parts", "photos"]);
    /** @type {Row | undefined} */
    const row = await reading.objectStore("parts").get(id);
    if (!row) return null;
    return { part: { ...row.part, photo: (await reading.objectStore("photos").get(id)) ?? "" }, revision: row.revision };
  }

  /** The parts that bear one of some numbers, however it is spaced and in whatever letters. @param {string[]} numbers @returns {Promise<Part[]>} */
  async numbered(numbers) {
    const plain = (/** @type {string} */ text) => text.trim().replace(/\s+/g, " ").toLowerCase();
    const wanted = new Set(numbers.map(plain));
    /** @type {Row[]} */
    const rows = await this.#db.getAll("parts");
    return rows.filter(({ part }) => wanted.has(plain(part["number"]))).map(({ part }) => ({ ...part, photo: "" }));
  }

  /**
   * All parts with their photos, in the order of the list, and how often each was changed.
   * @returns {Promise<{parts: Part[], revisions: Map<string, number>}>}
   */
  async all() {
    const reading = this.#db.transaction(["parts", "photos"]);
    const [rows, ids, photos] = await Promise.all([
      reading.objectStore("parts").index("order").getAll(),
      reading.objectStore("photos").getAllKeys(),
      reading.objectStore("photos").getAll(),
    ]);
    const photoOf = new Map(ids.map((id, i) => [String(id), photos[i]]));
    return {
      parts: rows.map((/** @type {Row} */ row) => ({ ...row.part, photo: photoOf.get(row.id) ?? "" })),
      revisions: new Map(rows.map((/** @type {Row} */ row) => [row.id, row.revision])),
    };
  }

  /**
   * Keeps parts, all or none.
   * @param {Kept[]} kept
   * @param {(id: string) => number} revisionOf  of a part as it was read, 0 for a new one
   */
  async put(kept, revisionOf) {
    const writing = this.#db.transaction(["parts", "photos"], "readwrite");
    const [parts, photos] = [writing.objectStore("parts"), writing.objectStore("photos")];
    try {
      for (const { part, order } of kept) {
        /** @type {Row | undefined} */
        const before = await parts.get(part["id"]);
        if ((before?.revision ?? 0) !== revisionOf(part["id"])) throw new Changed();
        const { photo, ...rest } = part;
        await parts.put({ id: part["id"], order, revision: (before?.revision ?? 0) + 1, part: rest });
        if (photo) await photos.put(photo, part["id"]);
        else await photos.delete(part["id"]);
      }
      await writing.done;
    } catch (error) {
      writing.done.catch(() => undefined);
      try {
        writing.abort();
      } catch {
        // It has ended by itself, as one that found no room.
      }
      throw error;
    }
  }

  /** Sorts parts anew. @param {Record<string, string>} orders */
  async reorder(orders) {
    const writing = this.#db.transaction("parts", "readwrite");
    for (const [id, order] of Object.entries(orders)) {
      /** @type {Row | undefined} */
      const row = await writing.store.get(id);
      if (row && row.order !== order) await writing.store.put({ ...row, order });
    }
    await writing.done;
  }

  /** @param {string} key @returns {Promise<string>} */
  async note(key) {
    return (await this.#db.get("notes", key)) ?? "";
  }

  /** @param {string} key @param {string} value */
  async writeNote(key, value) {
    await this.#db.put("notes", value, key);
  }
}
