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

class CalcSheet extends HTMLElement {
  /** @type {SheetForm | null} */
  #form = null;
  /** @type {SheetErrors | null} */
  #errors = null;
  /** @type {AnswerView | null} */
  #view = null;
  #asking = new Asking({
    question: () => this.#question(),
    wanted: () => this.isConnected,
    answered: (view) => this.#show(view),
    refused: (errors) => this.#refuse(errors),
    stopped: (error) => this.#empty("cleared", say("stopped", { reason: error instanceof Error ? error.message : String(error) })),
  });
  #touched = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #clearing;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #speaking;
  /** @type {AbortController | null} */
  #listening = null;

  connectedCallback() {
    const form = this.querySelector("form");
    if (!form || this.#listening) return;
    this.#listening = new AbortController();
    this.#form ??= new SheetForm(form);
    this.#errors ??= new SheetErrors(this, this.#form);
    this.#view ??= new AnswerView(this);
    this.#listen(form, this.#listening.signal);
    this.dataset["answerState"] = "example";
    this.#begin(this.#form, this.#listening.signal);
  }

  disconnectedCallback() {
    this.#listening?.abort();
    this.#listening = null;
    clearTimeout(this.#clearing);
    clearTimeout(this.#speaking);
  }

  /** @param {HTMLFormElement} form @param {AbortSignal} signal */
  #listen(form, signal) {
    form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    form.addEventListener("input", (event) => this.#edited(event), { signal });
    form.addEventListener("change", (event) => this.#edited(event), { signal });
    form.addEventListener("reset", () => setTimeout(() => this.#changed()), { signal });
    this.addEventListener("click", (event) => this.#clicked(event), { signal });
    document.addEventListener("linkwright-units", (event) => this.#unitsChosen(event), { signal });
    addEventListener("hashchange", () => this.#form && restoreFromAddress(this.#form) && this.#changed(), { signal });
    python.addEventListener("state", () => this.#pythonMoved(), { signal });
  }

  /**
   * The reader's own units and the inputs of the address, then Python.
   * @param {SheetForm} form
   * @param {AbortSignal} signal
   */
  #begin(form, signal) {
    showUnits();
    const builtIn = isUnits(this.dataset["units"]) ? this.dataset["units"] : "us";
    if (chosenUnits() !== builtIn) writeUnitsBeside(form.boxes(), builtIn);
    const restored = restoreFromAddress(form);
    form.showConditional();
    const otherUnits = chosenUnits() !== builtIn;
    if (restored) this.#changed();
    else if (otherUnits) this.#empty("working", say("starting-for-units"));
    this.#startInTime(restored || otherUnits, signal);
    this.#pythonMoved();
  }

  /**
   * A worksheet's own page starts Python at once; a sheet within a longer page when it comes near the reader, so that
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

  /** @returns {Question} */
  #question() {
    const inputs = this.#form?.inputs() ?? {};
    const { sheet = "", root = "" } = this.dataset;
    return { worksheet: sheet, inputs, units: chosenUnits(), language: document.documentElement.lang, root };
  }

  // ---- what the reader does

  /** @param {Event} event */
  #edited(event) {
    const box = event.target;
    if (!isBox(box) || box.name === "" || box.name === "units") return;
    if (box instanceof HTMLInputElement && box.type === "file") {
      if (event.type === "change") void this.#takeFile(box);
      return;
    }
    // A select or tick box fires both; one answer is enough.
    const choice = box instanceof HTMLSelectElement || box.type === "radio" || box.type === "checkbox";
    if (event.type !== (choice ? "change" : "input")) return;
    this.#form?.showConditional();
    this.#changed();
  }

  /** @param {HTMLInputElement} box */
  async #takeFile(box) {
    const file = box.files?.[0];
    this.#form?.files.delete(box);
    const fault = file ? fileFault(file) : "";
    if (fault) {
      this.#touched = true;
      this.#asking.drop();
      box.value = ""; // what is not counted must not look as if it were
      this.#refuse([{ input: box.name, said: fault }]);
      return;
    }
    if (file) {
      this.#empty("working", fileNote(file));
      this.#form?.files.set(box, await fileContent(file));
    }
    this.#changed();
  }

  /** @param {Event} event */
  #unitsChosen(event) {
    const was = event instanceof CustomEvent && isUnits(event.detail) ? event.detail : "us";
    writeUnitsBeside(this.#form?.boxes() ?? [], was);
    this.#changed();
  }

  /** @param {Event} event */
  #clicked(event) {
    if (!(event.target instanceof Element)) return;
    if (event.target.closest("[data-print]")) {
      print();
      return;
    }
    if (!rowButton(event.target)) return;
    event.preventDefault();
    this.#form?.showConditional();
    this.#changed();
  }

  // ---- asking and answering

  #changed() {
    this.#touched = true;
    this.#asking.change();
    if (this.#form) rememberInAddress(this.#form);
    clearTimeout(this.#clearing);
    if (python.state === "live") {
      if (this.dataset["answerState"] !== "working") {
        this.#clearing = setTimeout(() => this.#empty("working", say("working")), CLEAR_AFTER_MS);
      }
      void this.#asking.run();
    } else if (python.state === "failed") {
      this.#pythonMoved();
    } else {
      this.#empty("working", say("starting"));
    }
  }

  #pythonMoved() {
    if (python.state === "idle") return;
    if (python.state === "starting") {
      this.setAttribute("aria-busy", "true");
      return;
    }
    this.removeAttribute("aria-busy");
    if (python.state === "failed") this.#failed();
    else this.#live();
  }

  /** The page's own example is asked once too: what stands there must be what Python answers now. */
  #live() {
    this.dataset["state"] = "live";
    this.#note("");
    if (!this.#touched) this.#asking.change();
    void this.#asking.run();
  }

  #failed() {
    this.dataset["state"] = "failed";
    clearTimeout(this.#clearing);
    if (this.dataset["answerState"] === "answered" && this.#touched) this.#empty("working", "");
    this.#note(say(this.#touched ? "cannot-run-typed" : "cannot-run", { reason: python.reason }));
    this.dataset["answerFor"] = "example";
    if (this.dataset["answerState"] !== "working") return;
    this.dataset["answerState"] = "example";
    this.#view?.putBackExample();
  }

  /** @param {View} view */
  #show(view) {
    clearTimeout(this.#clearing);
    this.#errors?.clear();
    this.dataset["answerState"] = "answered";
    this.dataset["answerFor"] = this.#touched ? "reader" : "example";
    this.#view?.show(view);
    this.#note("");
    this.#speak(view.spoken);
  }

  /** @param {InputError[]} errors */
  #refuse(errors) {
    this.#empty("errors", "");
    const elsewhere = this.#errors?.show(errors) ?? "";
    const note = say("no-answer", { count: errors.length });
    this.#note([note, elsewhere].filter(Boolean).join(" "));
    this.#speak([note, ...errors.map((error) => error.said)].join(" "));
  }

  /**
   * Takes the answer off the page.
   * @param {"working" | "errors" | "cleared"} state
   * @param {string} note
   */
  #empty(state, note) {
    clearTimeout(this.#clearing);
    clearTimeout(this.#speaking);
    this.dataset["answerState"] = state;
    this.#view?.empty();
    this.#write("[data-live]", "");
    this.#note(note);
  }

  // ---- how the answer stands, in words

  /** @param {string} selector @param {string} text */
  #write(selector, text) {
    for (const place of this.querySelectorAll(selector)) place.textContent = text;
  }

  /** @param {string} text */
  #note(text) {
    this.#write("[data-state-note]", text);
    for (const place of this.querySelectorAll("[data-state-note]")) place.toggleAttribute("hidden", text === "");
  }

  /** One short sentence to a screen reader, once the reader pauses. @param {string} text */
  #speak(text) {
    clearTimeout(this.#speaking);
    if (!this.#touched) return;
    this.#speaking = setTimeout(() => this.#write("[data-live]", text), SPEAK_AFTER_MS);
  }
}

if (!customElements.get("calc-sheet")) customElements.define("calc-sheet", CalcSheet);
