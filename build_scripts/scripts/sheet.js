// @ts-check
/**
 * <calc-sheet>: a worksheet on a page. The page is built with an example and its answer; this makes it answer the
 * reader's own numbers.
 *
 * The worst failure is a stale number: on any change the old answer goes as soon as the new one is not there at once,
 * on any error it goes immediately, and in the failed state the built-in answer is plainly named the example's.
 */

/** How long the old answer may stay while the new one is worked out. */
const CLEAR_AFTER_MS = 100;
/** How long the reader must pause before the screen reader is told the answer. */
const SPEAK_AFTER_MS = 600;
/** The parts of the page that an answer fills. */
const ANSWER_PARTS = ["verdict-word", "headline", "big", "big-label", "result", "figure", "steps", "cautions", "sources"]
  .map((part) => `[data-${part}]`)
  .join(", ");
/** Larger files would not fit in the memory that a browser gives. */
const LARGEST_FILE = 50_000_000;
/** Browsers and mail programs cut long addresses; what is longer than this (a pasted log) stays out of them. */
const LONGEST_IN_ADDRESS = 2000;
/** A longer result stands under its label, not beside it; sheet.html has the same. */
const LONGEST_BESIDE = 60;
const UNITS_KEY = "linkwright-units";

/** Storage may be forbidden; the page works without it. */
const kept = {
  /** @param {string} key @returns {string | null} */
  get(key) {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  /** @param {string} key @param {string} value */
  set(key, value) {
    try {
      localStorage.setItem(key, value);
    } catch {
      // Forbidden or full: the choice lasts for this page.
    }
  },
};

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

class CalcSheet extends HTMLElement {
  /** @type {HTMLFormElement | null} */
  #form = null;
  #asked = 0;
  #answered = 0;
  #busy = false;
  /** Content of chosen files, base64. @type {Map<Box, string>} */
  #files = new Map();
  #touched = false;
  /** @type {Map<HTMLElement, {verdict?: string, nodes?: Node[], data?: DOMStringMap, hidden?: boolean}>} */
  #example = new Map();
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #clearing;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #speaking;
  /** @type {AbortController | null} */
  #listening = null;

  connectedCallback() {
    this.#form = this.querySelector("form");
    if (!this.#form || this.#listening) return;
    const signal = (this.#listening = new AbortController()).signal;
    this.#form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    this.#form.addEventListener("input", (event) => this.#edited(event), { signal });
    this.#form.addEventListener("change", (event) => this.#edited(event), { signal });
    this.#form.addEventListener("reset", () => setTimeout(() => this.#changed()), { signal });
    this.addEventListener("click", (event) => this.#clicked(event), { signal });
    document.addEventListener(
      "linkwright-units",
      (event) => {
        this.#writeUnits(event instanceof CustomEvent ? event.detail : "us");
        this.#changed();
      },
      { signal },
    );
    addEventListener("hashchange", () => this.#restore() && this.#changed(), { signal });
    python.addEventListener("state", () => this.#pythonMoved(), { signal });

    this.dataset["answerState"] = "example";
    this.#keepExample();
    showUnits();
    const builtIn = this.dataset["units"] ?? "us";
    if (chosenUnits() !== builtIn) this.#writeUnits(builtIn);
    const restored = this.#restore();
    this.#showConditional();
    if (restored) this.#changed();
    else if (chosenUnits() !== builtIn) this.#clear("working", "Starting the calculator for your units.");
    this.#startInTime(restored || chosenUnits() !== builtIn, signal);
    this.#pythonMoved();
  }

  /** A worksheet's own page starts Python at once; a sheet within a longer page when it comes near the reader, so that
   * reading is not slowed by a calculator he may not use.
   * @param {boolean} needed
   * @param {AbortSignal} signal
   */
  #startInTime(needed, signal) {
    if (needed || document.querySelector("main.page-sheet")) {
      python.start();
      return;
    }
    const watcher = new IntersectionObserver(
      (seen) => {
        if (!seen.some((one) => one.isIntersecting)) return;
        watcher.disconnect();
        python.start();
      },
      { rootMargin: "100% 0px" },
    );
    watcher.observe(this);
    signal.addEventListener("abort", () => watcher.disconnect());
  }

  disconnectedCallback() {
    this.#listening?.abort();
    this.#listening = null;
    clearTimeout(this.#clearing);
    clearTimeout(this.#speaking);
  }

  /** @param {string} selector @returns {HTMLElement[]} */
  #all(selector) {
    return [...this.querySelectorAll(selector)].filter((found) => found instanceof HTMLElement);
  }

  /** @returns {Box[]} */
  #boxes() {
    return [...(this.#form?.elements ?? [])].filter(
      /** @returns {element is Box} */ (element) =>
        (element instanceof HTMLInputElement || element instanceof HTMLSelectElement || element instanceof HTMLTextAreaElement) &&
        element.name !== "" &&
        element.name !== "units",
    );
  }

  /** What is typed in the boxes that are shown, by name. @returns {[string, string][]} */
  #typed() {
    /** @type {[string, string][]} */
    const typed = [];
    for (const box of this.#boxes()) {
      if (box.closest("[hidden]") || box.disabled || box.type === "file") continue;
      if (box instanceof HTMLInputElement && box.type === "radio" && !box.checked) continue;
      if (box instanceof HTMLInputElement && box.type === "checkbox") typed.push([box.name, box.checked ? "yes" : "no"]);
      else typed.push([box.name, box.value]);
    }
    return typed;
  }

  #request() {
    /** @type {Record<string, unknown>} */
    const inputs = {};
    for (const rows of this.#all("[data-rows]")) {
      if (!rows.closest("[hidden]")) inputs[rows.dataset["rows"] ?? ""] = [];
    }
    for (const [name, value] of this.#typed()) put(inputs, name, value);
    for (const box of this.#boxes()) {
      const content = this.#files.get(box);
      if (content !== undefined && !box.closest("[hidden]")) put(inputs, box.name, content);
    }
    leaveOutEmptyLists(inputs);
    return { worksheet: this.dataset["sheet"] ?? "", inputs, units: chosenUnits() };
  }

  // ---- what the reader does

  /** @param {Event} event */
  #edited(event) {
    const box = event.target;
    if (!(box instanceof Element) || !("name" in box) || box.name === "" || box.name === "units") return;
    if (box instanceof HTMLInputElement && box.type === "file") {
      if (event.type === "change") void this.#readFile(box);
      return;
    }
    // A select or tick box fires both; one answer is enough.
    const choice = box instanceof HTMLSelectElement || (box instanceof HTMLInputElement && /^(radio|checkbox)$/.test(box.type));
    if (choice ? event.type !== "change" : event.type !== "input") return;
    this.#showConditional();
    this.#changed();
  }

  /** @param {HTMLInputElement} box */
  async #readFile(box) {
    const file = box.files?.[0];
    this.#files.delete(box);
    const megabytes = (bytes = 0) => Math.ceil(bytes / 1e6);
    const fault = !file
      ? ""
      : file.size === 0
        ? "is an empty file. Save the drawing again, or take the file out."
        : file.size > LARGEST_FILE
          ? `is ${megabytes(file.size)} MB. Give a file of up to ${megabytes(LARGEST_FILE)} MB.`
          : "";
    if (file && fault) {
      this.#touched = true;
      this.#asked += 1; // an answer on its way is stale
      this.#answered = this.#asked;
      box.value = ""; // what is not counted must not look as if it were
      this.#refuse([{ input: box.name, given: file.name, message: fault }]);
      return;
    }
    if (file) {
      const wait = file.size > 1e6 ? " A large drawing takes some seconds." : "";
      this.#clear("working", `Working out ${file.name}, ${megabytes(file.size)} MB.${wait}`);
      const address = await new Promise((resolve) => {
        const reader = new FileReader();
        reader.onload = () => resolve(reader.result);
        reader.onerror = () => resolve("");
        reader.readAsDataURL(file);
      });
      this.#files.set(box, String(address).slice(String(address).indexOf(",") + 1));
    }
    this.#changed();
  }

  /**
   * A bare number means the unit beside its box. Before the switch changes that unit, the number takes it in writing.
   * @param {string} was
   */
  #writeUnits(was) {
    for (const box of this.#boxes()) {
      const beside = box.closest(".field-row");
      const words = ["us", "si"].map((system) => beside?.querySelector(`.${system}-only`)?.textContent?.trim() ?? "");
      const unit = words[was === "us" ? 0 : 1];
      if (!unit || words[0] === words[1] || box instanceof HTMLSelectElement) continue;
      box.value = box.value.replace(/[^;\n]+/g, (item) => (/^[\s\d.,/+-]*\d[\s\d.,/+-]*$/.test(item) ? `${item.trimEnd()} ${unit}` : item));
    }
  }

  /** @param {Event} event */
  #clicked(event) {
    if (event.target instanceof Element && event.target.closest("[data-print]")) {
      print();
      return;
    }
    const button = event.target instanceof Element ? event.target.closest("[data-add-row], [data-remove-row]") : null;
    const rows = button?.closest("[data-rows]");
    if (!(button instanceof HTMLElement) || !(rows instanceof HTMLElement)) return;
    event.preventDefault();
    if (button.hasAttribute("data-add-row")) {
      const row = this.#addRow(rows);
      /** @type {HTMLElement | null | undefined} */ (row?.querySelector("input, select, textarea"))?.focus();
    } else {
      const row = button.closest("[data-row]");
      const beside = row?.previousElementSibling?.closest("[data-row]") ?? row?.nextElementSibling?.closest("[data-row]");
      row?.remove();
      const next = beside?.querySelector("[data-remove-row]") ?? rows.querySelector("[data-add-row]");
      if (next instanceof HTMLElement) next.focus();
    }
    this.#numberRows(rows);
    this.#showConditional();
    this.#changed();
  }

  /** @param {HTMLElement} rows @returns {Element | null} */
  #addRow(rows) {
    const template = rows.querySelector("template");
    const made = template?.content.firstElementChild?.cloneNode(true);
    if (!template || !(made instanceof Element)) return null;
    const all = rows.querySelectorAll("[data-row]");
    const last = all[all.length - 1];
    if (last) last.after(made);
    else template.before(made);
    this.#numberRows(rows);
    return made;
  }

  /** Numbers every row's names, ids and references anew. @param {HTMLElement} rows */
  #numberRows(rows) {
    const name = rows.dataset["rows"] ?? "";
    const all = [...rows.querySelectorAll("[data-row]")];
    const most = Number(rows.dataset["maxRows"] || Infinity);
    const fewest = Number(rows.dataset["minRows"] ?? 0);
    const index = new RegExp(`(^|[^A-Za-z0-9_])(${name})(?:\\[[^\\]]*\\]|-(?:\\d+|__)(?=-|$))`, "g");
    all.forEach((row, i) => {
      for (const element of [row, ...row.querySelectorAll("*")]) {
        for (const attribute of ["name", "id", "for", "aria-describedby", "aria-labelledby", "data-error"]) {
          const value = element.getAttribute(attribute);
          if (value === null) continue;
          const numbered = value.replace(index, (whole, before, rowsName) =>
            `${before}${rowsName}${whole.includes("[") ? `[${i}]` : `-${i}`}`,
          );
          if (numbered !== value) element.setAttribute(attribute, numbered);
        }
      }
      for (const number of row.querySelectorAll("[data-row-number]")) number.textContent = String(i + 1);
      for (const button of row.querySelectorAll("[data-remove-row]")) {
        if (button instanceof HTMLButtonElement) button.disabled = all.length <= fewest;
      }
    });
    for (const button of rows.querySelectorAll("[data-add-row]")) {
      if (button instanceof HTMLButtonElement) button.disabled = all.length >= most;
    }
  }

  /** Hides what does not apply: data-shown-when='{"known_by": ["angle"]}', names of the same row first. */
  #showConditional() {
    for (const part of this.#all("[data-shown-when]")) {
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
  }

  /** @param {string} name @returns {string | undefined} */
  #valueOf(name) {
    const found = this.#form?.elements.namedItem(name);
    if (found instanceof RadioNodeList) return found.value;
    if (found instanceof HTMLInputElement && found.type === "checkbox") return found.checked ? "yes" : "no";
    if (found instanceof HTMLInputElement && found.type === "radio") return found.checked ? found.value : "";
    if (found instanceof HTMLInputElement || found instanceof HTMLSelectElement || found instanceof HTMLTextAreaElement) {
      return found.value;
    }
    return undefined;
  }

  // ---- the address

  /** Writes the inputs into the address, so that an answer can be bookmarked and sent; a long one as empty, to be given again. */
  #remember() {
    const fields = new URLSearchParams(this.#typed().map(([name, value]) => [name, value.length > LONGEST_IN_ADDRESS ? "" : value]));
    fields.set("units", chosenUnits());
    try {
      history.replaceState(history.state, "", `#${fields}`);
    } catch {
      // Some browsers limit how often; the next change writes it.
    }
  }

  /** Puts the address's inputs into the boxes. @returns {boolean} whether there were any */
  #restore() {
    const fragment = location.hash.slice(1);
    if (!fragment.includes("=")) return false;
    const fields = new URLSearchParams(fragment);
    for (const rows of this.#all("[data-rows]")) {
      const name = rows.dataset["rows"] ?? "";
      let count = -1;
      for (const key of fields.keys()) {
        const steps = nameSteps(key);
        if (steps[0] === name && typeof steps[1] === "number") count = Math.max(count, Math.min(steps[1], 199) + 1);
      }
      if (count < 0) continue;
      let all = rows.querySelectorAll("[data-row]");
      for (let i = all.length; i > count; i -= 1) all[i - 1]?.remove();
      for (let i = all.length; i < count; i += 1) this.#addRow(rows);
      this.#numberRows(rows);
    }
    const units = fields.get("units");
    if (units === "us" || units === "si") chooseUnits(units, false);
    let changed = false;
    for (const box of this.#boxes()) {
      const value = fields.get(box.name);
      if (value === null) continue;
      if (box instanceof HTMLInputElement && box.type === "radio") box.checked = box.value === value;
      else if (box instanceof HTMLInputElement && box.type === "checkbox") box.checked = value === "yes";
      else box.value = value;
      changed = true;
    }
    this.#showConditional();
    return changed;
  }

  // ---- asking and answering

  #changed() {
    this.#touched = true;
    this.#asked += 1;
    this.#remember();
    clearTimeout(this.#clearing);
    if (python.state === "live") {
      if (this.dataset["answerState"] !== "working") {
        this.#clearing = setTimeout(() => this.#clear("working", "Working it out."), CLEAR_AFTER_MS);
      }
      void this.#ask();
    } else if (python.state === "failed") {
      this.#pythonMoved();
    } else {
      this.#clear("working", "Starting the calculator. Your answer comes as soon as it runs.");
    }
  }

  async #ask() {
    if (this.#busy) return; // the newest inputs are asked when this answer is in
    this.#busy = true;
    try {
      while (this.#answered < this.#asked && this.isConnected) {
        const asking = this.#asked;
        const response = await python.answer(this.#request());
        this.#answered = asking;
        if (asking !== this.#asked) continue; // a newer question waits: this answer is stale already
        clearTimeout(this.#clearing);
        if (response.ok) this.#show(response);
        else this.#refuse(response.errors);
      }
    } catch (error) {
      clearTimeout(this.#clearing);
      this.#clear("cleared", `The calculator stopped (${error instanceof Error ? error.message : String(error)}). Reload the page.`);
    } finally {
      this.#busy = false;
    }
  }

  #pythonMoved() {
    switch (python.state) {
      case "live":
        this.dataset["state"] = "live";
        this.#say("");
        if (this.#touched) void this.#ask();
        else void this.#confirm();
        break;
      case "failed":
        this.dataset["state"] = "failed";
        clearTimeout(this.#clearing);
        if (this.dataset["answerState"] === "answered" && this.#touched) this.#clear("working", "");
        this.#say(
          `The calculator cannot run here: ${python.reason}. ` +
            (this.#touched
              ? "The numbers you typed are NOT worked out. Any answer on this page is the built-in example's, not yours."
              : "The answer below is the built-in example's."),
        );
        this.dataset["answerFor"] = "example";
        if (this.dataset["answerState"] === "working") this.#putBackExample();
        break;
      case "starting":
        this.setAttribute("aria-busy", "true");
        return;
      case "idle":
        return;
    }
    this.removeAttribute("aria-busy");
  }

  /** Keeps what the page was built with, for the case that Python never answers. */
  #keepExample() {
    for (const place of this.#all("[data-answer], [data-foot]")) this.#example.set(place, { verdict: place.dataset["verdict"] ?? "" });
    for (const place of this.#all(ANSWER_PARTS)) {
      this.#example.set(place, { nodes: [...place.childNodes].map((node) => node.cloneNode(true)), data: { ...place.dataset }, hidden: place.hidden });
    }
  }

  #putBackExample() {
    this.dataset["answerState"] = "example";
    for (const [place, was] of this.#example) {
      if (was.verdict !== undefined) place.dataset["verdict"] = was.verdict;
      if (was.nodes) place.replaceChildren(...was.nodes.map((node) => node.cloneNode(true)));
      if (was.data) Object.assign(place.dataset, was.data);
      if (was.hidden !== undefined) place.hidden = was.hidden;
    }
  }

  /** The page's own example is asked once too: what stands there must be what Python answers now. */
  async #confirm() {
    this.#asked += 1;
    await this.#ask();
  }

  /** @param {Answer} answer */
  #show(answer) {
    this.#clearErrors();
    this.dataset["answerState"] = "answered";
    this.dataset["answerFor"] = this.#touched ? "reader" : "example";
    for (const region of this.#all("[data-answer]")) region.dataset["verdict"] = answer.verdict;
    for (const foot of this.#all("[data-foot]")) foot.dataset["verdict"] = answer.verdict;
    this.#write("[data-verdict-word]", answer.verdict_words);
    for (const place of this.#all("[data-headline]")) setSentence(place, answer.headline);
    this.#write("[data-big]", answer.big?.text ?? "");
    this.#write("[data-big-label]", answer.big?.label ?? "");
    for (const place of this.#all("[data-result]")) {
      const result = answer.results[place.dataset["result"] ?? ""];
      const row = place.closest("[data-result-row]");
      if (row instanceof HTMLElement) row.hidden = result === undefined;
      if (result === undefined) {
        emptyResult(place);
        continue;
      }
      showResult(place, result);
      place.dataset["value"] = typeof result.value === "object" ? JSON.stringify(result.value) : String(result.value);
      place.dataset["unit"] = result.unit;
    }
    this.#draw(answer.figure);
    this.#list("[data-steps]", "step", answer.steps);
    this.#list("[data-cautions]", "caution", answer.cautions);
    this.#list("[data-sources]", "source", answer.sources);
    this.#say("");
    this.#speak(answer.headline);
  }

  /** @param {InputError[]} errors */
  #refuse(errors) {
    this.#clear("errors", "");
    this.#clearErrors();
    /** @type {string[]} */
    const elsewhere = [];
    for (const error of errors) {
      const place = this.#errorPlace(error.input);
      if (place) {
        place.textContent = [place.textContent, inWords(error)].filter(Boolean).join(" ");
        place.hidden = false;
      } else {
        elsewhere.push(inWords(error));
      }
      for (const box of this.#boxes()) if (box.name === error.input) box.setAttribute("aria-invalid", "true");
    }
    const general = this.#all('[data-error=""]');
    for (const place of general) {
      place.textContent = elsewhere.join(" ");
      place.hidden = elsewhere.length === 0;
    }
    const note = "No answer: " + (errors.length === 1 ? "one box needs" : `${errors.length} boxes need`) + " another look.";
    this.#say(general.length === 0 && elsewhere.length > 0 ? `${note} ${elsewhere.join(" ")}` : note);
    this.#speak([note, ...errors.map(inWords)].join(" "));
  }

  /**
   * Where an error is told: beside its own box, else beside what holds it (`at[2]` beside `at`).
   * @param {string} input
   * @returns {HTMLElement | undefined}
   */
  #errorPlace(input) {
    for (let name = input; name !== ""; name = name.replace(/(\.|\[)?[^.[\]]+\]?$/, "")) {
      const place = this.#all("[data-error]").find((found) => found.dataset["error"] === name && !found.parentElement?.closest("[hidden]"));
      if (place) return place;
    }
    return undefined;
  }

  #clearErrors() {
    for (const place of this.#all("[data-error]")) {
      place.textContent = "";
      place.hidden = true;
    }
    for (const box of this.#boxes()) box.removeAttribute("aria-invalid");
  }

  /**
   * Takes the answer off the page.
   * @param {"working" | "errors" | "cleared"} state
   * @param {string | null} note  null keeps the note
   */
  #clear(state, note) {
    clearTimeout(this.#clearing);
    clearTimeout(this.#speaking);
    this.dataset["answerState"] = state;
    for (const region of this.#all("[data-answer], [data-foot]")) delete region.dataset["verdict"];
    for (const part of ["verdict-word", "headline", "big", "big-label"]) this.#write(`[data-${part}]`, "");
    for (const place of this.#all("[data-result]")) emptyResult(place);
    this.#draw(null);
    for (const part of ["steps", "cautions", "sources"]) this.#list(`[data-${part}]`, part, []);
    this.#write("[data-live]", "");
    if (note !== null) this.#say(note);
  }

  // ---- writing

  /** @param {string} selector @param {string} text */
  #write(selector, text) {
    for (const place of this.#all(selector)) place.textContent = text;
  }

  /** @param {string} text */
  #say(text) {
    for (const place of this.#all("[data-state-note]")) {
      place.textContent = text;
      place.hidden = text === "";
    }
  }

  /** One short sentence to a screen reader, once the reader pauses. @param {string} text */
  #speak(text) {
    clearTimeout(this.#speaking);
    if (!this.#touched) return;
    this.#speaking = setTimeout(() => this.#write("[data-live]", text), SPEAK_AFTER_MS);
  }

  /** @param {{svg: string, caption: string} | null} figure */
  #draw(figure) {
    for (const place of this.#all("[data-figure]")) {
      const caption = place.querySelector("figcaption");
      place.hidden = figure === null;
      for (const child of [...place.children]) if (child !== caption) child.remove();
      if (caption) caption.textContent = figure?.caption ?? "";
      if (!figure) continue;
      const parsed = new DOMParser().parseFromString(figure.svg, "text/html").querySelector("svg");
      if (parsed) place.prepend(document.importNode(parsed, true));
    }
  }

  /**
   * Fills a list by its own <template data-item> where the page has one, so that the built and the live markup agree.
   * @param {string} selector
   * @param {string} kind
   * @param {object[]} items
   */
  #list(selector, kind, items) {
    for (const place of this.#all(selector)) {
      const template = place.querySelector("template[data-item]");
      for (const child of [...place.children]) if (child !== template) child.remove();
      for (const item of items) {
        const made = template instanceof HTMLTemplateElement ? template.content.firstElementChild?.cloneNode(true) : null;
        const root = made instanceof HTMLElement ? made : document.createElement("li");
        for (const [part, value] of Object.entries(item)) {
          const text = String(value ?? "");
          if (part === "kind") root.dataset["kind"] = text;
          if (made instanceof HTMLElement) {
            for (const slot of made.querySelectorAll(`[data-part="${part}"]`)) {
              if (part === "text") setSentence(slot, text);
              else slot.textContent = text;
              if (slot instanceof HTMLElement) slot.hidden = text === "";
            }
            for (const link of made.querySelectorAll(`[data-href-part="${part}"]`)) {
              link.setAttribute("href", `${link.getAttribute("data-href-start") ?? ""}${text}`);
            }
          } else if (text && part !== "kind" && part !== "key") {
            const span = document.createElement("span");
            span.className = `${kind}-${part}`;
            span.textContent = text;
            root.append(span, " ");
          }
        }
        place.append(root);
      }
    }
  }
}

/**
 * An error as a sentence: calc's message goes on from the name of the box ("is too small. Give ...").
 * @param {InputError} error
 * @returns {string}
 */
function inWords(error) {
  if (!/^[a-z]/.test(error.message)) return error.message;
  return `${error.given === "" ? "This" : `“${error.given}”`} ${error.message}`;
}

/** Shop fractions, as build_scripts/markup.py sets them: 3/8, 1-1/4. */
const FRACTION = /(?<![\w/.])(?:(\d{1,2})-)?(\d{1,2}\/(?:2|4|8|16|32|64))(?![\w/])/g;

/**
 * Writes a sentence with its shop fractions set as fractions.
 * @param {Element} place
 * @param {string} text
 */
function setSentence(place, text) {
  /** @param {string} name @param {string} content */
  const span = (name, content) => {
    const made = document.createElement("span");
    made.className = name;
    made.textContent = content;
    return made;
  };
  /** @type {(string | Node)[]} */
  const pieces = [];
  let from = 0;
  for (const found of text.matchAll(FRACTION)) {
    pieces.push(text.slice(from, found.index));
    if (found[1]) pieces.push(found[1], span("frac-dash", "-"));
    pieces.push(span("frac", found[2] ?? ""));
    from = found.index + found[0].length;
  }
  place.replaceChildren(...pieces, text.slice(from));
}

/**
 * Writes a result as sheet.html does: the rows of a table, the items of a list, or its words.
 * @param {HTMLElement} place
 * @param {ShownResult} result
 */
function showResult(place, result) {
  if (place instanceof HTMLTableSectionElement) {
    const columns = (place.dataset["columns"] ?? "").split(" ");
    place.replaceChildren(...(result.rows ?? []).map((cells) => resultRow(columns, cells)));
    return;
  }
  const listed = result.items !== undefined && result.items.length > 1;
  place.classList.toggle("said", listed || result.text.length > LONGEST_BESIDE);
  if (listed) {
    const list = document.createElement("ul");
    list.className = "items";
    for (const item of result.items ?? []) {
      const made = document.createElement("li");
      made.textContent = item;
      list.append(made);
    }
    place.replaceChildren(list);
  } else {
    place.textContent = result.text;
  }
}

/** @param {string[]} columns @param {string[]} cells */
function resultRow(columns, cells) {
  const row = document.createElement("tr");
  cells.forEach((text, i) => {
    const cell = document.createElement(i === 0 ? "th" : "td");
    if (i === 0) cell.setAttribute("scope", "row");
    cell.className = `cell-${columns[i]}`;
    cell.textContent = text;
    row.append(cell);
    if (columns[i] === "outcome") row.dataset["outcome"] = text.split(";")[0] ?? "";
  });
  return row;
}

/** @param {HTMLElement} place */
function emptyResult(place) {
  place.textContent = "";
  delete place.dataset["value"];
  delete place.dataset["unit"];
}

// ---- US or SI, for every page

/** @type {string} */
let units = kept.get(UNITS_KEY) === "si" ? "si" : "us";

/** @returns {string} */
function chosenUnits() {
  return units;
}

/**
 * @param {"us" | "si"} chosen
 * @param {boolean} [byReader]  by the switch, not by an address that was sent: remembered, and worksheets answer anew
 */
function chooseUnits(chosen, byReader = true) {
  const was = units;
  units = chosen;
  showUnits();
  if (!byReader) return;
  kept.set(UNITS_KEY, chosen);
  document.dispatchEvent(new CustomEvent("linkwright-units", { detail: was }));
}

function showUnits() {
  document.documentElement.dataset["units"] = units;
  for (const box of document.querySelectorAll('input[name="units"]')) {
    if (box instanceof HTMLInputElement && box.type === "radio") box.checked = box.value === units;
  }
}

document.addEventListener("change", (event) => {
  const box = event.target;
  if (box instanceof HTMLInputElement && box.name === "units" && (box.value === "us" || box.value === "si")) {
    chooseUnits(box.value);
  }
});

showUnits();
// A page that comes by instant navigation brings its own switch.
document.addEventListener("linkwright-page", () => showUnits());

if (!customElements.get("calc-sheet")) customElements.define("calc-sheet", CalcSheet);
