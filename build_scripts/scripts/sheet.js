// @ts-check
/**
 * <calc-sheet>: a worksheet on a page. It starts empty; the reader fills it, or asks for the example, which is marked
 * wherever its answer stands and never becomes his.
 *
 * The worst failure is an answer beside inputs it was not computed from: on any change the old answer goes as soon as the
 * new one is not there at once, on any error it goes immediately, and when Python cannot run there is none.
 *
 * `data-mode` is empty, own (the reader's numbers) or example (the example, or what was made from it); `data-answer-state`
 * is empty, working, unfinished, errors, cleared or answered, `data-answer-for` whose answer is shown. `data-state` is static
 * until this script has taken the worksheet over (the built answer is then hidden, or marked where no script runs), then
 * ready, live or failed.
 */

/** @typedef {"empty" | "own" | "example"} Mode */

/** How long the old answer may stay while the new one is worked out. */
const CLEAR_AFTER_MS = 100;
/** When the boxes are looked at after the browser brought a whole page back. WebKit empties them then, and tells nobody. */
const CAME_BACK_MS = [0, 50, 250, 1000];
/** How long an answer must stand before the text is made that brings its numbers back. */
const CODE_AFTER_MS = 500;
/** How long the reader must pause before the screen reader is told the answer. */
const SPEAK_AFTER_MS = 600;
/** After a failure, an edit starts the calculator again when so much time has passed. */
const TRY_AGAIN_AFTER_MS = 5000;
/** So many empty boxes are named; the others are counted. */
const MOST_NAMED = 3;

class CalcSheet extends HTMLElement {
  /** @type {SheetForm | null} */
  #form = null;
  /** @type {SheetErrors | null} */
  #errors = null;
  /** @type {AnswerView | null} */
  #view = null;
  /** Keys under the box, where a finger types. */
  #keys = matchMedia("(pointer: coarse)").matches ? new SheetKeys() : null;
  #asking = new Asking({
    question: () => this.#question(),
    wanted: () => this.isConnected,
    answered: (view) => this.#show(view),
    refused: (errors) => this.#refuse(errors),
    stopped: (error) => this.#stopped(inWords(error)),
  });
  /** @type {BuiltAnswer | null} */
  #built = null;
  /** Whether the boxes hold the example as it was built, in its own units. */
  #isBuiltExample = false;
  /** Why no answer of this page is believed any more. */
  #doubt = "";
  /** The path of this worksheet's page: while another page is on its way, the address is no longer this one's. */
  #path = location.pathname;
  /** @type {Mode} */
  #mode = "empty";
  /** How the last answer understood boxes that can be read in two ways. @type {Record<string, string>} */
  #understood = {};
  /** The inputs that were last seen or asked, as text: what the boxes hold now may be another thing. */
  #askedFor = "";
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #clearing;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #speaking;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #coding;
  /** What was asked when the browser brought this page back whole, until the boxes are known to hold it. */
  #cameBackWith = "";
  /** @type {AbortController | null} */
  #listening = null;

  connectedCallback() {
    const form = this.querySelector("form");
    if (!form || this.#listening) return;
    this.#listening = new AbortController();
    this.#form ??= new SheetForm(form);
    this.#errors ??= new SheetErrors(this, this.#form);
    this.#view ??= new AnswerView(this);
    this.#built ??= new BuiltAnswer(this);
    this.#listen(form, this.#listening.signal);
    this.#begin(this.#form, this.#listening.signal);
  }

  disconnectedCallback() {
    this.#listening?.abort();
    this.#listening = null;
    clearTimeout(this.#clearing);
    clearTimeout(this.#speaking);
    clearTimeout(this.#coding);
  }

  /** @param {HTMLFormElement} form @param {AbortSignal} signal */
  #listen(form, signal) {
    form.addEventListener("submit", (event) => event.preventDefault(), { signal });
    form.addEventListener("input", (event) => this.#edited(event), { signal });
    form.addEventListener("change", (event) => this.#edited(event), { signal });
    form.addEventListener("reset", () => setTimeout(() => this.#changed()), { signal });
    form.addEventListener("focusin", (event) => this.#focused(event), { signal });
    form.addEventListener("focusout", (event) => this.#writeDays(event.target), { signal });
    this.addEventListener("click", (event) => this.#clicked(event), { signal });
    document.addEventListener("linkwright-units", (event) => this.#unitsChosen(event), { signal });
    addEventListener("hashchange", () => this.#open(), { signal });
    // Browsers put old values back into boxes (going back, filling in): what the boxes hold is read again.
    addEventListener("pageshow", (event) => (event.persisted ? this.#cameBack() : this.#readAgain()), { signal });
    for (const moment of ["focus", "beforeprint"]) addEventListener(moment, () => this.#readAgain(), { signal });
    document.addEventListener("visibilitychange", () => this.#readAgain(), { signal });
    python.addEventListener("state", () => this.#pythonMoved(), { signal });
  }

  /**
   * What the address asks for, or what was typed here before, or nothing; then Python.
   * @param {SheetForm} form
   * @param {AbortSignal} signal
   */
  #begin(form, signal) {
    showUnits();
    this.#keys?.prepare(form.boxes());
    form.showConditional();
    const early = typedEarly(form);
    this.#open();
    if (form.fill(early)) this.#edit();
    this.#startInTime(this.#mode !== "empty", signal);
    this.dataset["state"] = "ready";
    this.#pythonMoved();
  }

  /** Fills the boxes from the address, else from what was typed in this tab before. */
  #open() {
    const form = this.#form;
    if (!form) return;
    if (location.hash === `#${EXAMPLE_ADDRESS}`) {
      this.#showExample();
      return;
    }
    const fields = fieldsToOpen(this.dataset["sheet"] ?? "");
    leaveOutLooseDays(form, fields);
    const filled = fillFrom(form, fields);
    this.#carried(fields.get(FROM), fields.get(BACK));
    this.#become(filled ? "own" : "empty");
    if (filled) this.#changed();
    else this.#start();
  }

  /**
   * @param {string | null} from  the title of the worksheet whose numbers were handed over
   * @param {string | null} back  what named the tables and code that printed the numbers
   */
  #carried(from, back) {
    const printed = back ? say("brought-back", { printed: back, code: linkwrightBuild.code }) : "";
    this.#write("[data-carried]", from ? say("carried", { sheet: from }) : printed);
  }

  /** @param {Mode} mode */
  #become(mode) {
    this.#mode = mode;
    this.dataset["mode"] = mode;
    // The example never takes the place of what the reader typed: that is cleared first, by hand.
    for (const button of this.querySelectorAll("[data-show-example]")) {
      if (button instanceof HTMLButtonElement) button.disabled = mode === "own";
    }
  }

  #showExample() {
    if (!this.#form) return;
    fillFrom(this.#form, new URLSearchParams(this.dataset["example"] ?? ""));
    this.#become("example");
    this.#isBuiltExample = true;
    this.#changed();
  }

  #clearAll() {
    this.#form?.clear();
    this.#become("empty");
    if (this.#form) remember(this.#form, this.dataset["sheet"] ?? "", false, this.#path);
    this.#start();
  }

  /** An empty worksheet: nothing is asked, nothing is answered. */
  #start() {
    this.#asking.drop();
    this.#askedFor = "";
    this.#errors?.clear();
    this.#empty("empty", say("empty"), say("bar-empty"));
  }

  /** A page that the browser kept whole and shows again: what was typed is put back should the boxes lose it. */
  #cameBack() {
    this.#cameBackWith = this.#mode === "empty" ? "" : this.#askedFor;
    for (const wait of CAME_BACK_MS) setTimeout(() => this.#putBack(), wait);
    setTimeout(() => (this.#cameBackWith = ""), Math.max(...CAME_BACK_MS) + 1);
  }

  #putBack() {
    if (!this.#form || !this.#cameBackWith || this.#cameBackWith === JSON.stringify(this.#form.typed())) return;
    fillFrom(this.#form, new URLSearchParams(JSON.parse(this.#cameBackWith)));
    this.#changed();
  }

  /** What the boxes hold may have been changed by the browser. */
  #readAgain() {
    if (this.#cameBackWith) {
      this.#putBack();
      return;
    }
    if (!this.#form || this.#mode === "empty" && this.#form.isEmpty()) return;
    if (this.#askedFor === JSON.stringify(this.#form.typed())) return;
    // The old answer goes at once: what comes next may be a sheet of paper.
    if (this.dataset["answerFor"]) this.#empty("working", say("working"), say("bar-working"));
    this.#edit();
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
    this.#askedFor = JSON.stringify(this.#form?.typed());
    const example = this.#mode === "example";
    return { worksheet: sheet, inputs, units: chosenUnits(), language: document.documentElement.lang, root, example };
  }

  /** What the shown answer was asked; null where none to the reader's own numbers is shown. For the scripts of the kit. */
  get answered() {
    return this.dataset["answerFor"] === "reader" ? this.#question() : null;
  }

  /** Puts values into boxes, as if they were typed. @param {Record<string, string>} values  by the names of the boxes */
  take(values) {
    this.#form?.fill(new URLSearchParams(values));
    this.#edit();
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
    this.#edit();
  }

  /** The reader's hand was on a box: an empty worksheet becomes his; the example stays the example. */
  #edit() {
    this.#cameBackWith = "";
    if (this.#mode === "empty") this.#become("own");
    this.#isBuiltExample = false;
    this.#form?.showConditional();
    this.#changed();
  }

  /** A tap into a box takes all that stands in it, so that the next key replaces it. @param {FocusEvent} event */
  #focused(event) {
    const box = event.target;
    this.#keys?.under(box);
    if (!(box instanceof HTMLInputElement) || box.type !== "text") return;
    const { value } = box;
    // An empty box too: after a tap while the page is being drawn again, a browser may leave the caret where it was, and what
    // is typed goes nowhere.
    // To select in a box that was left meanwhile would take the reader back to it, and in one typed in, take his first key.
    setTimeout(() => document.activeElement === box && box.value === value && box.select());
  }

  /** @param {HTMLInputElement} box */
  async #takeFile(box) {
    const file = box.files?.[0];
    this.#form?.files.delete(box);
    const fault = file ? fileFault(file) : "";
    if (fault) {
      this.#asking.drop();
      box.value = ""; // what is not counted must not look as if it were
      this.#refuse([{ input: box.name, said: fault }]);
      return;
    }
    if (file) {
      this.#empty("working", fileNote(file), say("bar-working"));
      this.#form?.files.set(box, await fileContent(file));
    }
    this.#edit();
  }

  /** @param {Event} event */
  #unitsChosen(event) {
    const was = event instanceof CustomEvent && isUnits(event.detail) ? event.detail : "us";
    writeUnitsBeside(this.#form?.boxes() ?? [], was);
    this.#keys?.follow();
    this.#isBuiltExample = false;
    if (this.#mode !== "empty") this.#changed();
  }

  /** @param {Event} event */
  #clicked(event) {
    if (!(event.target instanceof Element)) return;
    if (event.target.closest("[data-print]")) {
      print();
      return;
    }
    if (event.target.closest("[data-try-again]")) this.#tryAgain();
    else if (event.target.closest("[data-show-example]")) this.#showExample();
    else if (event.target.closest("[data-clear]")) this.#clearAll();
    else if (event.target.closest("[data-foot]")) this.#toAnswer(event);
    else if (rowButton(event.target)) {
      event.preventDefault();
      if (this.#mode === "empty") this.#form?.showConditional();
      else this.#edit();
    }
  }

  /** @param {Event} event */
  #toAnswer(event) {
    event.preventDefault(); // the address holds the inputs
    const answer = this.querySelector("[data-answer]");
    answer?.scrollIntoView({ block: "start" });
    if (answer instanceof HTMLElement) answer.focus({ preventScroll: true });
  }

  // ---- asking and answering

  #changed() {
    this.#asking.change();
    clearTimeout(this.#coding);
    this.#form?.markOwnUnits();
    this.#askedFor = JSON.stringify(this.#form?.typed());
    if (this.#form) remember(this.#form, this.dataset["sheet"] ?? "", this.#mode === "own", this.#path);
    clearTimeout(this.#clearing);
    if (python.state === "live") {
      if (this.dataset["answerState"] !== "working") {
        this.#clearing = setTimeout(() => this.#empty("working", say("working"), say("bar-working")), CLEAR_AFTER_MS);
      }
      void this.#asking.run();
    } else if (python.state === "failed" && performance.now() - python.failedAt < TRY_AGAIN_AFTER_MS) {
      this.#pythonMoved();
    } else {
      python.start();
      this.#empty("working", say("starting"), say("bar-working"));
    }
  }

  #pythonMoved() {
    if (python.state === "idle") return;
    if (python.state === "starting") {
      this.setAttribute("aria-busy", "true");
      if (this.dataset["state"] !== "ready") this.#startsAnew();
      return;
    }
    this.removeAttribute("aria-busy");
    if (python.state === "failed") this.#failed();
    else this.#live();
  }

  #live() {
    this.dataset["state"] = "live";
    this.#write("[data-fault-note]", "");
    if (this.#mode === "empty") {
      this.#note(say("empty"));
      return;
    }
    this.#note("");
    void this.#asking.run();
  }

  /** Python was there or had failed, and is started once more. */
  #startsAnew() {
    this.dataset["state"] = "ready";
    this.#write("[data-fault-note]", "");
    if (this.#mode === "empty") {
      this.#note(say("empty"));
      return;
    }
    this.#asking.change(); // what stood answered goes, and is asked again
    this.#empty("working", say("starting"), say("bar-working"));
  }

  #tryAgain() {
    if (python.state === "live") this.#changed();
    else python.start();
  }

  /** Python cannot run: no answer to anything, and what to do instead. What was typed stays in the boxes. */
  #failed() {
    this.dataset["state"] = "failed";
    this.#fault(say(this.#mode === "own" ? "cannot-run-typed" : "cannot-run", { reason: python.reason }));
  }

  /** A question found no answer. @param {string} reason */
  #stopped(reason) {
    if (python.state === "starting") this.#startsAnew(); // it is asked again
    else if (python.state === "failed") this.#failed();
    else this.#fault(say("stopped", { reason }));
  }

  /** No answer, and why: beside the answer's place, at the head, in the bar, and aloud. @param {string} said */
  #fault(said) {
    this.#empty("cleared", said, say("bar-failed"));
    this.#write("[data-fault-note]", said);
    this.#speak(said);
  }

  /** What keeps an answer from being shown as one to what the boxes hold, or nothing. @param {View} view */
  #doubtOf(view) {
    if (this.#doubt) return this.#doubt;
    if (view.runtime !== linkwrightBuild.runtime) return say("other-edition");
    const isExample = this.#isBuiltExample && chosenUnits() === "us";
    return isExample && !this.#built?.isLike(view) ? say("example-differs") : "";
  }

  /** @param {View} view */
  #show(view) {
    clearTimeout(this.#clearing);
    this.#doubt = this.#doubtOf(view);
    if (this.#doubt) {
      this.#fault(this.#doubt);
      return;
    }
    if (this.#askedFor !== JSON.stringify(this.#form?.typed())) {
      this.#readAgain(); // the browser changed a box without a word
      return;
    }
    this.#errors?.clear();
    this.dataset["answerState"] = "answered";
    this.dataset["answerFor"] = this.#mode === "example" ? "example" : "reader";
    this.toggleAttribute("data-complete", view.complete);
    this.#view?.show(view);
    this.#errors?.echo(view.understood);
    this.#understood = view.understood;
    this.#writeDays(null);
    this.#note("");
    this.#speak(view.spoken);
    this.#coded();
  }

  /** The text that brings these numbers back, once they have stood for a moment. The example has none. */
  #coded() {
    clearTimeout(this.#coding);
    this.#writeCode([]);
    const asked = this.answered;
    if (!asked) return;
    const { edition, code: made_by } = linkwrightBuild;
    this.#coding = setTimeout(async () => {
      const code = { worksheet: asked.worksheet, inputs: asked.inputs, edition, made_by };
      const answer = await /** @type {any} */ (python).answer({ ...asked, code }).catch(() => null);
      const now = this.answered;
      if (answer?.ok && now && JSON.stringify(now) === JSON.stringify(asked)) this.#writeCode(answer.nodes);
    }, CODE_AFTER_MS);
  }

  /** @param {TreeNode[]} nodes */
  #writeCode(nodes) {
    for (const place of this.querySelectorAll("[data-code]")) {
      place.replaceChildren(...nodes.map((node) => built(node)));
      place.toggleAttribute("hidden", nodes.length === 0);
    }
  }

  /**
   * A day written as `today` means another day tomorrow: once the reader has left its box, the day stands there that it was
   * read as, and it is this day that is kept.
   * @param {EventTarget | null} left  the box that is being left
   */
  #writeDays(left) {
    const form = this.#form;
    const days = form?.days() ?? [];
    if (!form || days.length === 0 || this.#mode !== "own" || this.dataset["answerState"] !== "answered") return;
    for (const box of days) {
      const day = this.#understood[box.name];
      if (day && (box === left || box !== document.activeElement)) box.value = day;
    }
    this.#askedFor = JSON.stringify(form.typed());
    remember(form, this.dataset["sheet"] ?? "", true, this.#path);
  }

  /** @param {InputError[]} errors */
  #refuse(errors) {
    const missing = errors.filter((error) => error.code === "missing");
    const wrong = errors.filter((error) => error.code !== "missing");
    if (wrong.length === 0) {
      this.#unfinished(missing);
      return;
    }
    const named = this.#form?.labelOf(wrong[0]?.input ?? "") ?? "";
    this.#empty("errors", "", say("bar-errors", { boxes: named }));
    const elsewhere = this.#errors?.show(wrong) ?? "";
    const note = say("no-answer", { count: wrong.length });
    this.#note([note, elsewhere].filter(Boolean).join(" "));
    this.#speak([note, ...wrong.map((error) => error.said)].join(" "));
  }

  /** Boxes that are still empty are no fault: they are named, not scolded. @param {InputError[]} missing */
  #unfinished(missing) {
    this.#errors?.clear();
    const names = [...new Set(missing.map((error) => this.#form?.labelOf(error.input) ?? error.input))];
    const boxes = names.slice(0, MOST_NAMED).join(", ");
    const note = say("unfinished", { boxes, more: Math.max(0, names.length - MOST_NAMED) });
    this.#empty("unfinished", note, say("bar-unfinished", { count: missing.length }));
  }

  /**
   * Takes the answer off the page.
   * @param {"empty" | "working" | "unfinished" | "errors" | "cleared"} state
   * @param {string} note
   * @param {string} bar  what the bar at the foot says in the answer's place
   */
  #empty(state, note, bar) {
    clearTimeout(this.#clearing);
    clearTimeout(this.#coding);
    clearTimeout(this.#speaking);
    this.dataset["answerState"] = state;
    delete this.dataset["answerFor"];
    this.removeAttribute("data-complete");
    this.#view?.empty(bar);
    this.#errors?.echo({});
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
    this.#speaking = setTimeout(() => this.#write("[data-live]", text), SPEAK_AFTER_MS);
  }
}

// Where early.js did not run or found the browser too old, the page stays as it was built.
if (document.documentElement.classList.contains("js") && !customElements.get("calc-sheet")) customElements.define("calc-sheet", CalcSheet);
