// @ts-check
/**
 * A row of keys under the box that is typed in, on a touch screen: the keyboard there shows digits alone, and the keys give
 * the units and marks that a shop writes beside them. One key brings back the keyboard with letters, for any other unit.
 */

/** @typedef {{face: string, word?: string}} Key  what the key shows and types, and the word that names a mark */

/** @type {Key} */
const DASH = { face: "-", word: "key-dash" };
/** @type {Key} */
const THOUSAND = { face: "k", word: "key-thousand" };
/** The keys of a box by its dimension, for readers of US and of SI units. @type {Record<string, {us: Key[], si: Key[]}>} */
const KEYS = {
  length: { us: [{ face: "ft" }, { face: "in" }, { face: "/", word: "key-slash" }, DASH], si: [{ face: "mm" }, { face: "m" }, DASH] },
  weight: { us: [{ face: "lb" }, THOUSAND], si: [{ face: "kg" }, THOUSAND] },
};
/** The key that brings the keyboard with letters. */
const LETTERS = "ABC";

/** What a key puts behind what stands before it: a unit keeps its distance from a number. @param {string} face @param {string} before */
function typedBy(face, before) {
  const isUnit = /^[a-z]{2}|^m$/.test(face);
  return isUnit && /[\d/k]$/.test(before) ? ` ${face}${face === "ft" ? " " : ""}` : face;
}

class SheetKeys {
  #row = document.createElement("div");
  /** @type {HTMLInputElement | null} */
  #box = null;

  constructor() {
    this.#row.className = "keys";
    this.#row.setAttribute("role", "group");
    this.#row.setAttribute("aria-label", say("keys"));
    this.#row.addEventListener("pointerdown", (event) => event.preventDefault()); // the box keeps the caret
    this.#row.addEventListener("mousedown", (event) => event.preventDefault());
  }

  /** Digits alone for the boxes that have keys. @param {Box[]} boxes */
  prepare(boxes) {
    for (const box of boxes) if (KEYS[box.dataset["dimension"] ?? ""]) box.inputMode = "decimal";
  }

  /** The keys go under a box that has some; under another they stay where they were, so that nothing moves under a finger. @param {EventTarget | null} box */
  under(box) {
    if (!(box instanceof HTMLInputElement)) return;
    const keys = KEYS[box.dataset["dimension"] ?? ""]?.[chosenUnits()];
    if (!keys) return;
    if (box !== this.#box) this.prepare([box]);
    this.#box = box;
    // Only once the tap is over: a box that moves between its press and its release takes no caret, and what is typed is lost.
    setTimeout(() => this.#box === box && this.#place(box, keys));
  }

  /** @param {HTMLInputElement} box @param {Key[]} keys */
  #place(box, keys) {
    this.#row.replaceChildren(...keys.map((key) => this.#button(key.face, key.word, () => this.#type(key.face))), this.#button(LETTERS, "key-letters", () => this.#letters()));
    (box.closest(".axes") ?? box.closest(".field-row"))?.after(this.#row);
    this.#row.scrollIntoView({ block: "nearest" });
  }

  /** The units of the keys follow the reader's choice of units at once. */
  follow() {
    if (this.#row.isConnected) this.under(this.#box);
  }

  /** @param {string} face @param {string | undefined} word @param {() => void} pressed */
  #button(face, word, pressed) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = face;
    button.tabIndex = -1;
    if (word) button.setAttribute("aria-label", say(word));
    button.addEventListener("click", pressed);
    return button;
  }

  /** Where the whole value is selected, as a tap leaves it, a key goes behind it. @param {string} face */
  #type(face) {
    const box = this.#box;
    if (!box) return;
    const end = box.selectionEnd ?? box.value.length;
    const isAll = box.selectionStart === 0 && end === box.value.length;
    const start = isAll ? end : (box.selectionStart ?? end);
    box.focus();
    box.setRangeText(typedBy(face, box.value.slice(0, start)), start, end, "end");
    box.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }

  #letters() {
    const box = this.#box;
    if (!box) return;
    box.blur(); // a keyboard changes only for a box that is entered
    box.inputMode = "text";
    box.focus();
    setTimeout(() => box.setSelectionRange(box.value.length, box.value.length)); // entering it took the whole value
  }
}
