// @ts-check
/**
 * The page "My kit": the address says which view is shown (`#part=ID`, `#add`, ...), Python makes it, the store keeps what
 * is saved. What another tab changes is shown at once; a form that is open keeps what was typed, and is refused when the part
 * was changed meanwhile.
 */
import { ask, built, say, today } from "./asking.mjs";
import { shrunk } from "./photo.mjs";
import { Changed, KitStore } from "./store.mjs";

/** So many parts are shown at once. */
const PAGE = 60;
/** So many are sorted anew at once. */
const AT_ONCE = 200;
/** With so many parts the list has a box to search it. */
const MANY = 6;
/** What of a part is searched. */
const SEARCHED = ["number", "name", "mark", "size", "other_marks", "tag"];
/** What the list is sorted by begins so for a part out of use. */
const OUT = "9999";
const channel = typeof BroadcastChannel === "function" ? new BroadcastChannel("linkwright-kit") : null;

/** @typedef {import("./asking.mjs").Answer} Answer */

class KitPage {
  /** @type {HTMLElement} */
  #place;
  /** @type {Promise<KitStore> | null} */
  #store = null;
  /** Of the part whose form is open. */
  #revision = 0;
  /** The text of the file that is being looked at. */
  #file = "";
  /** Of each part, when the file was held against it. @type {Map<string, number>} */
  #revisions = new Map();
  #turn = 0;
  /** What each kind of part is called. @type {Record<string, string> | null} */
  #kinds = null;

  /** @param {HTMLElement} place @param {AbortSignal} signal */
  constructor(place, signal) {
    this.#place = place;
    place.addEventListener("submit", (event) => this.#submitted(event), { signal });
    place.addEventListener("click", (event) => this.#clicked(event), { signal });
    place.addEventListener("input", (event) => this.#searched(event), { signal });
    place.addEventListener("change", (event) => this.#changed(event), { signal });
    addEventListener("hashchange", () => void this.show(true), { signal });
    document.addEventListener("linkwright-units", () => void this.#showAgain(), { signal });
    channel?.addEventListener("message", () => void this.#showAgain(), { signal });
  }

  /** @param {string} name */
  #part(name) {
    const found = this.#place.querySelector(`[data-kit-${name}]`);
    if (!(found instanceof HTMLElement)) throw new Error(name);
    return found;
  }

  /** @returns {Promise<KitStore>} */
  #open() {
    this.#store ??= KitStore.open().then(async (store) => {
      await this.#sortAnew(store);
      return store;
    });
    this.#store.catch(() => (this.#store = null)); // the next view tries again
    return this.#store;
  }

  /** Another edition may sort parts otherwise. @param {KitStore} store */
  async #sortAnew(store) {
    const { code } = /** @type {any} */ (globalThis).linkwright;
    if ((await store.note("sorted-by")) === code) return;
    const { count } = await store.counts(today());
    for (let from = 0; from < count; from += AT_ONCE) {
      const { orders } = await ask("orders", { parts: await store.list(from, AT_ONCE) });
      await store.reorder(orders);
    }
    await store.writeNote("sorted-by", code);
  }

  /** What another tab or the reader's units changed; an open form stays. */
  async #showAgain() {
    if (!this.#place.querySelector("form")) await this.show(false);
  }

  /** Shows what the address names. @param {boolean} turned  whether the reader turned to it */
  async show(turned) {
    const turn = ++this.#turn;
    this.#file = "";
    const [view = "", id = ""] = location.hash.slice(1).split("=");
    this.#part("note").textContent = say("kit-opening");
    try {
      const store = await this.#open();
      const answer = await this.#answer(store, view, id);
      if (turn !== this.#turn) return;
      this.#put(answer, !answer["title"], turned);
    } catch (error) {
      if (turn === this.#turn) this.#fault(error);
    }
  }

  /** @param {KitStore} store @param {string} view @param {string} id @returns {Promise<Answer>} */
  async #answer(store, view, id) {
    if (view === "add") {
      this.#revision = 0;
      return ask("form", { part: null });
    }
    const kinds = { part: "part", edit: "form", look: "look-form", out: "out-form" };
    const kind = kinds[/** @type {keyof typeof kinds} */ (view)];
    const found = kind ? await store.get(id) : null;
    if (kind && found) {
      this.#revision = found.revision;
      return ask(kind, { part: found.part });
    }
    const counts = await store.counts(today());
    this.#part("search").hidden = counts.count < MANY;
    if (this.#isSearched()) return ask("list", { ...counts, ...(await this.#found(store)) });
    return ask("list", { parts: await store.list(0, PAGE), ...counts });
  }

  /** @returns {[string, string]} what is searched for, and of which parts */
  #wanted() {
    const [box, only] = [this.#part("find-all"), this.#part("only")];
    const isShown = !this.#part("search").hidden;
    return [isShown && box instanceof HTMLInputElement ? box.value : "", isShown && only instanceof HTMLSelectElement ? only.value : ""];
  }

  #isSearched() {
    return this.#wanted().some((one) => one.trim() !== "");
  }

  /** The parts that are like what is searched for. @param {KitStore} store */
  async #found(store) {
    const [text, only] = this.#wanted();
    const ranges = { due: IDBKeyRange.upperBound(today()), out: IDBKeyRange.lowerBound(OUT) };
    this.#kinds ??= (await ask("kinds", {}))["kinds"];
    const line = (/** @type {Record<string, string>} */ part) => [this.#kinds?.[part["kind"] ?? ""], ...SEARCHED.map((name) => part[name])].join(" ");
    return store.find(text.toLowerCase().split(/\s+/), ranges[/** @type {"due" | "out"} */ (only)] ?? null, line, PAGE);
  }

  /** @param {Answer} answer @param {boolean} isList @param {boolean} turned */
  #put(answer, isList, turned) {
    const region = this.#part("view");
    region.replaceChildren(...built(answer["nodes"]));
    this.#part("note").textContent = "";
    this.#part("tools").hidden = !isList;
    this.#part("title").textContent = answer["title"] ?? "";
    this.#part("title").hidden = isList;
    this.#part("home").hidden = isList;
    this.#part("files").hidden = !isList;
    this.#part("more").hidden = !isList || this.#isSearched() || region.querySelectorAll("[data-kit-rows] > li").length < PAGE;
    this.#place.dataset["kit"] = "shown";
    this.#forKind();
    if (!turned) return;
    region.focus({ preventScroll: true });
    this.#place.scrollIntoView({ block: "start" });
  }

  /** Boxes of sizes stand there for the kinds that have them. */
  #forKind() {
    const kind = this.#place.querySelector("select[name=kind]");
    if (!(kind instanceof HTMLSelectElement)) return;
    for (const one of this.#place.querySelectorAll("[data-kit-of]")) {
      const of = one.getAttribute("data-kit-of") ?? "";
      one.toggleAttribute("hidden", !of.split(" ").includes(kind.value));
    }
  }

  /** @param {unknown} error */
  #fault(error) {
    const name = error instanceof Error ? error.name : "";
    if (error instanceof Changed) this.#tell(say("kit-changed-elsewhere"));
    else if (name === "QuotaExceededError") this.#tell(say("kit-no-room"));
    else if (name === "Error" && error instanceof Error) this.#tell(say("kit-cannot-run", { reason: error.message }));
    else this.#tell(say("kit-not-allowed", { reason: name || "?" }));
  }

  /** @param {string} text */
  #tell(text) {
    const note = this.#part("note");
    note.textContent = text;
    note.scrollIntoView({ block: "nearest" });
  }

  // ---- what the reader does

  /** @param {SubmitEvent} event */
  #submitted(event) {
    event.preventDefault();
    const form = event.target;
    if (form instanceof HTMLFormElement) void this.#save(form).catch((error) => this.#fault(error));
  }

  /** @param {HTMLFormElement} form */
  async #save(form) {
    const [view = "", id = ""] = location.hash.slice(1).split("=");
    if (this.#file) {
      await this.#takeIn(form);
      return;
    }
    const fields = Object.fromEntries([...new FormData(form)].filter(([, value]) => typeof value === "string"));
    const store = await this.#open();
    const before = view === "add" ? null : await store.get(id);
    if (before && before.revision !== this.#revision) throw new Changed();
    const kind = view === "look" ? "save-look" : view === "out" ? "save-out" : "save";
    const alike = kind === "save" ? await store.numbered([String(fields["number"] ?? "")]) : [];
    const taken = alike.some((part) => part["id"] !== id);
    const answer = await ask(kind, { fields, part: before?.part ?? null, id: before ? id : newId(), taken });
    this.#errors(form, answer.errors ?? []);
    if (!answer.ok) return;
    await store.put([{ part: answer["part"], order: answer["order"] }], () => this.#revision);
    this.#saved();
    location.hash = `part=${answer["part"]["id"]}`;
  }

  /** Other tabs hear of it; the browser is asked not to drop what is kept here. */
  #saved() {
    channel?.postMessage("changed");
    void navigator.storage?.persist?.().then((safe) => {
      this.#part("safe").textContent = say(safe ? "kit-kept-safe" : "kit-kept");
    }, () => undefined);
  }

  /** @param {HTMLFormElement} form @param {{input: string, said: string}[]} errors */
  #errors(form, errors) {
    for (const box of form.querySelectorAll("[aria-invalid]")) box.removeAttribute("aria-invalid");
    for (const place of form.querySelectorAll("[data-error]")) place.toggleAttribute("hidden", true);
    for (const { input, said } of errors) {
      const place = form.querySelector(`[data-error="${CSS.escape(input)}"]`) ?? form.querySelector('[data-error=""]');
      if (!place) continue;
      place.textContent = said;
      place.removeAttribute("hidden");
      const fold = place.closest("details");
      if (fold) fold.open = true;
      form.querySelector(`[name="${CSS.escape(input)}"]`)?.setAttribute("aria-invalid", "true");
    }
    const first = form.querySelector("[aria-invalid]");
    if (first instanceof HTMLElement) first.focus();
  }

  /** @param {Event} event */
  #clicked(event) {
    const button = event.target instanceof Element ? event.target.closest("[data-kit-export], [data-kit-show-more]") : null;
    if (!(button instanceof HTMLElement)) return;
    if (button.dataset["kitExport"]) void this.#export(button.dataset["kitExport"]).catch((error) => this.#fault(error));
    else void this.#more().catch((error) => this.#fault(error));
  }

  async #more() {
    const rows = this.#part("rows");
    const store = await this.#open();
    const parts = await store.list(rows.children.length, PAGE);
    const answer = await ask("list", { parts, more: true, count: 0, due: 0 });
    rows.append(...built(answer["nodes"]));
    this.#part("more").hidden = parts.length < PAGE;
  }

  /** @param {string} how */
  async #export(how) {
    const store = await this.#open();
    const { text, type } = await ask("export", { parts: (await store.all()).parts, how });
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type }));
    link.download = `linkwright-kit-${today()}.${how}`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  }

  /** @param {Event} event */
  #searched(event) {
    const box = event.target;
    if (box === this.#part("find-all") || box === this.#part("only")) void this.show(false);
  }

  /** @param {Event} event */
  #changed(event) {
    const box = event.target;
    if (box instanceof HTMLSelectElement && box.name === "kind") this.#forKind();
    const file = box instanceof HTMLInputElement ? box.files?.[0] : undefined;
    if (!(box instanceof HTMLInputElement) || !file) return;
    if (box.dataset["kitImport"] !== undefined) void this.#read(file, box).catch((error) => this.#fault(error));
    else void this.#photo(box, file);
  }

  /** @param {HTMLInputElement} box @param {File} file */
  async #photo(box, file) {
    const kept = box.form?.elements.namedItem("photo");
    const made = await shrunk(file);
    const place = box.form?.querySelector('[data-error="photo"]');
    place?.toggleAttribute("hidden", made !== "");
    if (place) place.textContent = made ? "" : say("kit-no-photo");
    if (kept instanceof HTMLInputElement && made) kept.value = made;
  }

  /** Shows what a file would change. @param {File} file @param {HTMLInputElement} box */
  async #read(file, box) {
    const text = await file.text();
    box.value = "";
    const store = await this.#open();
    const { parts, revisions } = await store.all();
    const answer = await ask("read", { text, parts });
    if (!answer.ok) {
      this.#tell(answer.errors?.[0]?.said ?? "");
      return;
    }
    this.#turn += 1; // a view that is still on its way must not cover this one
    this.#put(answer, false, true);
    this.#file = text;
    this.#revisions = revisions;
    history.pushState(history.state, "", "#import"); // whence Back and "Leave" lead to the list
  }

  /** @param {HTMLFormElement} form */
  async #takeIn(form) {
    const take = [...new FormData(form).keys()];
    const store = await this.#open();
    const { parts } = await store.all();
    const { kept } = await ask("take", { text: this.#file, take, parts });
    await store.put(kept, (id) => this.#revisions.get(id) ?? 0);
    this.#file = "";
    this.#saved();
    location.hash = "list";
  }
}

/** A name that no other part has, on this device or another. */
function newId() {
  return [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** @type {AbortController | null} */
let leaving = null;

/** Takes over the page of the kit, if that is the page that is shown. */
export function takeOver() {
  leaving?.abort();
  leaving = null;
  const place = document.querySelector("[data-kit]");
  if (!(place instanceof HTMLElement)) return;
  leaving = new AbortController();
  void new KitPage(place, leaving.signal).show(false);
}
