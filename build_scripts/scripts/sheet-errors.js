// @ts-check
/** What is wrong with the inputs, each said beside its box. */

/** @typedef {{input: string, given?: string, code?: string, said: string}} InputError  a box's name, what it holds, and what is wrong, by code and as a whole sentence */

class SheetErrors {
  /** @type {Element} */
  #sheet;
  /** @type {SheetForm} */
  #form;

  /** @param {Element} sheet @param {SheetForm} form */
  constructor(sheet, form) {
    this.#sheet = sheet;
    this.#form = form;
  }

  /** @returns {HTMLElement[]} */
  #places() {
    return [...this.#sheet.querySelectorAll("[data-error]")].filter((found) => found instanceof HTMLElement);
  }

  /** @param {InputError[]} errors @returns {string} what found no place at all */
  show(errors) {
    this.clear();
    const boxes = this.#form.boxes();
    /** @type {string[]} */
    const elsewhere = [];
    for (const error of errors) {
      const place = this.#placeOf(error.input);
      if (place) append(place, error.said);
      else elsewhere.push(error.said);
      for (const box of boxes) if (box.name === error.input) box.setAttribute("aria-invalid", "true");
    }
    const general = this.#places().find((place) => place.dataset["error"] === "");
    if (!general) return elsewhere.join(" ");
    if (elsewhere.length > 0) append(general, elsewhere.join(" "));
    return "";
  }

  /** How boxes were understood that could be read in two ways. @param {Record<string, string>} understood */
  echo(understood) {
    for (const place of this.#sheet.querySelectorAll("[data-echo]")) {
      if (!(place instanceof HTMLElement)) continue;
      place.textContent = understood[place.dataset["echo"] ?? ""] ?? "";
      place.hidden = place.textContent === "";
    }
  }

  clear() {
    for (const place of this.#places()) {
      place.textContent = "";
      place.hidden = true;
    }
    for (const box of this.#form.boxes()) box.removeAttribute("aria-invalid");
  }

  /**
   * Where an error is told: beside its own box, else beside what holds it (`at[2]` beside `at`).
   * @param {string} input
   * @returns {HTMLElement | undefined}
   */
  #placeOf(input) {
    const open = this.#places().filter((place) => !place.parentElement?.closest("[hidden]"));
    for (let name = input; name !== ""; name = name.replace(/(\.|\[)?[^.[\]]+\]?$/, "")) {
      const place = open.find((found) => found.dataset["error"] === name);
      if (place) return place;
    }
    return undefined;
  }
}

/** @param {HTMLElement} place @param {string} said */
function append(place, said) {
  place.textContent = [place.textContent, said].filter(Boolean).join(" ");
  place.hidden = false;
}
