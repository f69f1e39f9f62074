// @ts-check
/**
 * The form of a worksheet: its boxes by name, what is typed in them, and which of them apply. A box's name is the path of
 * its input: `load`, `parts[0].width`, `centre[2]`.
 */

/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Box */

/**
 * The steps of an input's name: `parts[0].at[2]` is ["parts", 0, "at", 2].
 * @param {string} name
 * @returns {(string | number)[]}
 */
function nameSteps(name) {
  return (name.match(/[^.[\]]+/g) ?? []).map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/**
 * Puts a value where its name says, making the lists and objects on the way.
 * @param {Record<string, unknown>} inputs
 * @param {string} name
 * @param {unknown} value
 */
function put(inputs, name, value) {
  const steps = nameSteps(name);
  /** @type {any} */
  let place = inputs;
  steps.forEach((step, i) => {
    if (i === steps.length - 1) place[step] = value;
    else place = place[step] ??= typeof steps[i + 1] === "number" ? [] : {};
  });
}

/**
 * An optional point whose three boxes are empty was not given at all.
 * @param {Record<string, any>} inputs
 */
function leaveOutEmptyLists(inputs) {
  for (const [name, value] of Object.entries(inputs)) {
    if (!Array.isArray(value)) continue;
    if (value.length > 0 && value.every((item) => item === "")) inputs[name] = "";
    for (const item of value) if (item !== null && typeof item === "object") leaveOutEmptyLists(item);
  }
}

/** @param {unknown} element @returns {element is Box} */
function isBox(element) {
  return element instanceof HTMLInputElement || element instanceof HTMLSelectElement || element instanceof HTMLTextAreaElement;
}

class SheetForm {
  /** Content of chosen files, base64. @type {Map<Box, string>} */
  files = new Map();
  /** @type {HTMLFormElement} */
  #form;
  /** How many rows each list starts with. @type {Map<HTMLElement, number>} */
  #startRows = new Map();

  /** @param {HTMLFormElement} form */
  constructor(form) {
    this.#form = form;
    for (const rows of this.rows()) this.#startRows.set(rows, rows.querySelectorAll("[data-row]").length);
  }

  /** Empties every box, to what the page was built with. */
  clear() {
    for (const [rows, count] of this.#startRows) makeRows(rows, count);
    for (const box of this.boxes()) {
      if (box instanceof HTMLSelectElement) for (const option of box.options) option.selected = option.defaultSelected;
      else if (box instanceof HTMLInputElement && (box.type === "radio" || box.type === "checkbox")) box.checked = box.defaultChecked;
      else if (box.type !== "file") box.value = box.defaultValue;
      else box.value = "";
    }
    this.files.clear();
    this.showConditional();
  }

  /** Whether every box is as the page was built: nothing was typed or chosen. */
  isEmpty() {
    return this.boxes().every((box) => {
      if (box instanceof HTMLSelectElement) return [...box.options].every((option) => option.selected === option.defaultSelected || (option.index === 0 && option.value === ""));
      if (box instanceof HTMLInputElement && (box.type === "radio" || box.type === "checkbox")) return box.checked === box.defaultChecked;
      return box.value === (box.type === "file" ? "" : box.defaultValue);
    });
  }

  /** Marks the boxes whose number has its own unit: on paper the unit that a bare number takes must not stand behind it. */
  markOwnUnits() {
    for (const box of this.boxes()) box.closest(".field-row")?.toggleAttribute("data-own-unit", /[^\s\d.,/+-]/.test(box.value));
  }

  /** What a box is called, for a sentence that names it; one in a row with the row's name. @param {string} name @returns {string} */
  labelOf(name) {
    const box = this.boxes().find((found) => found.name === name);
    const label = box ? this.#labelOfBox(box) : this.#labelOfGroup(name);
    const row = box?.closest("[data-row]")?.querySelector("legend")?.textContent?.trim();
    return [row, (label?.firstChild?.textContent ?? name).trim()].filter(Boolean).join(": ");
  }

  /** @param {Box} box */
  #labelOfBox(box) {
    return box.closest("fieldset.field")?.querySelector("legend") ?? this.#form.querySelector(`label[for="${CSS.escape(box.id)}"]`);
  }

  /** What several boxes are called together: a list of rows, a point. @param {string} name */
  #labelOfGroup(name) {
    const inside = this.boxes().find((found) => found.name.startsWith(`${name}[`));
    return this.#form.querySelector(`[data-rows="${CSS.escape(name)}"] > legend`) ?? inside?.closest("fieldset.field")?.querySelector("legend");
  }

  /** @returns {Box[]} */
  boxes() {
    return [...this.#form.elements].filter(isBox).filter((box) => box.name !== "" && box.name !== "units");
  }

  /** The boxes that take a day. @returns {Box[]} */
  days() {
    return this.boxes().filter((box) => box.dataset["day"] !== undefined);
  }

  /** The lists of rows. @returns {HTMLElement[]} */
  rows() {
    return [...this.#form.querySelectorAll("[data-rows]")].filter((found) => found instanceof HTMLElement);
  }

  /** What is typed in the boxes that are shown, by name. @returns {[string, string][]} */
  typed() {
    /** @type {[string, string][]} */
    const typed = [];
    for (const box of this.boxes()) {
      if (box.closest("[hidden]") || box.disabled || box.type === "file") continue;
      if (box instanceof HTMLInputElement && box.type === "radio" && !box.checked) continue;
      if (box instanceof HTMLInputElement && box.type === "checkbox") typed.push([box.name, box.checked ? "yes" : "no"]);
      else typed.push([box.name, box.value]);
    }
    return typed;
  }

  /** The inputs as calc takes them. @returns {Record<string, unknown>} */
  inputs() {
    /** @type {Record<string, unknown>} */
    const inputs = {};
    for (const rows of this.rows()) if (!rows.closest("[hidden]")) inputs[rows.dataset["rows"] ?? ""] = [];
    for (const [name, value] of this.typed()) put(inputs, name, value);
    for (const [box, content] of this.files) {
      if (box.isConnected && !box.closest("[hidden]")) put(inputs, box.name, content);
    }
    leaveOutEmptyLists(inputs);
    return inputs;
  }

  /** Puts values into the boxes of their names. @param {URLSearchParams} values @returns {boolean} whether any had one */
  fill(values) {
    let filled = false;
    for (const box of this.boxes()) {
      const value = values.get(box.name);
      if (value === null || box.type === "file") continue;
      if (box instanceof HTMLInputElement && box.type === "radio") box.checked = box.value === value;
      else if (box instanceof HTMLInputElement && box.type === "checkbox") box.checked = value === "yes";
      else box.value = value;
      filled = true;
    }
    return filled;
  }

  /** Hides what does not apply: data-shown-when='{"known_by": ["angle"]}', names of the same row first. */
  showConditional() {
    for (const part of this.#form.querySelectorAll("[data-shown-when]")) {
      if (!(part instanceof HTMLElement)) continue;
      /** @type {Record<string, string[]>} */
      const wanted = JSON.parse(part.dataset["shownWhen"] ?? "{}");
      const row = part.closest("[data-row]");
      const rowName = row?.closest("[data-rows]")?.getAttribute("data-rows");
      const rowIndex = row ? [...(row.parentElement?.querySelectorAll("[data-row]") ?? [])].indexOf(row) : -1;
      part.hidden = !Object.entries(wanted).every(([name, values]) => {
        const inRow = rowName ? this.#valueOf(`${rowName}[${rowIndex}].${name}`) : undefined;
        const value = inRow ?? this.#valueOf(name);
        return value !== undefined && values.includes(value);
      });
    }
    for (const boxes of this.#form.querySelectorAll("[data-own-part-boxes]")) {
      boxes.toggleAttribute("hidden", !boxes.querySelector("select")?.value);
    }
  }

  /** @param {string} name @returns {string | undefined} */
  #valueOf(name) {
    const found = this.#form.elements.namedItem(name);
    if (found instanceof RadioNodeList) return found.value;
    if (found instanceof HTMLInputElement && found.type === "checkbox") return found.checked ? "yes" : "no";
    if (found instanceof HTMLInputElement && found.type === "radio") return found.checked ? found.value : "";
    return isBox(found) ? found.value : undefined;
  }
}
