// The one search of the book, in the box of the home page and in the box of the head. What it knows comes when a box is
// first used, as two script files, so that the folder opened from disk has it too. The box is a combobox with a list of
// answers under it: arrow keys go through them, Enter opens one, Escape closes the list. It also keeps, on this device
// alone, which pages were used last, for the home page.
"use strict";
(() => {
  /**
   * @typedef {{type: string, title: string, value: string, text: string, address: string, sign: string, query: string}} Result
   * @typedef {{ask: (text: string) => {line: string, results: Result[], first: number}, say: (key: string, facts?: Record<string, string | number>) => string, warm: () => void}} Search
   * @typedef {{address: string, title: string}} Used
   */
  const given = /** @type {any} */ (window);
  const scope = /** @type {URL} */ (given.__md_scope);
  const say = /** @type {(key: string, facts?: Record<string, string | number>) => string} */ (given.linkwrightSay);
  const LAST = "linkwright.last";
  const MOST_KEPT = 4;
  const LATER = 1200;

  /** @param {string} name */
  const script = (name) => globalThis.linkwrightScript(new URL(`scripts/${name}`, scope));

  /** @type {Promise<Search> | null} */
  let loading = null;
  const search = () => (loading ??= Promise.all([script("search.js"), script("search-data.js")]).then(
    () => {
      const made = /** @type {Search} */ (given.linkwrightMakeSearch());
      setTimeout(made.warm);
      return made;
    },
    (why) => {
      loading = null; // another try may find the signal back
      throw why;
    },
  ));

  // ---- the list under a box

  /** @param {string} kind @param {string} name @param {string} text */
  function piece(kind, name, text) {
    const made = document.createElement(kind);
    made.className = name;
    made.textContent = text;
    return made;
  }

  /** @param {Result} result @param {string} id */
  function option(result, id) {
    const link = document.createElement("a");
    link.id = id;
    link.className = "found";
    link.dataset.type = result.type;
    if (result.sign) link.dataset.sign = result.sign;
    link.setAttribute("role", "option");
    link.setAttribute("aria-selected", "false");
    link.tabIndex = -1;
    link.href = String(new URL(result.address || "look-up/every-rating.html", scope));
    if (result.query) link.dataset.query = result.query;
    link.append(piece("span", "found-name", result.title));
    if (result.type === "said") link.append(piece("b", "found-said", result.value));
    else if (result.value) {
      const [, large = "", beside = ""] = /^(.*?)( \(.*\))?$/.exec(result.value) ?? [];
      const value = piece("b", "found-value", large);
      if (beside) value.append(piece("small", "", beside));
      link.append(value);
    }
    if (result.text) link.append(piece("span", result.sign ? "found-use" : "found-text", result.text));
    return link;
  }

  /** @param {HTMLInputElement} box @param {HTMLElement} panel */
  function bindBox(box, panel) {
    if (box.dataset.bound) return;
    box.dataset.bound = "yes";
    const line = piece("p", "found-line", "");
    line.setAttribute("role", "status");
    const list = piece("div", "found-list", "");
    list.id = `${box.id}-list`;
    list.setAttribute("role", "listbox");
    list.setAttribute("aria-label", panel.dataset.name ?? "");
    const more = /** @type {HTMLButtonElement} */ (piece("button", "found-more", ""));
    more.type = "button";
    panel.append(line, list, more);
    box.setAttribute("role", "combobox");
    box.setAttribute("aria-autocomplete", "list");
    box.setAttribute("aria-controls", list.id);
    box.setAttribute("aria-expanded", "false");
    let asked = "";

    const options = () => /** @type {HTMLElement[]} */ ([...list.children]).filter((one) => !one.hidden);
    const current = () => options().findIndex((one) => one.id === box.getAttribute("aria-activedescendant"));

    /** @param {boolean} open */
    function open(open) {
      panel.hidden = !open;
      box.setAttribute("aria-expanded", String(open && list.children.length > 0));
      if (!open) point(-1);
    }

    /** @param {number} place */
    function point(place) {
      const all = options();
      for (const one of list.children) one.setAttribute("aria-selected", "false");
      const chosen = all[place];
      if (!chosen) {
        box.removeAttribute("aria-activedescendant");
        return;
      }
      chosen.setAttribute("aria-selected", "true");
      chosen.scrollIntoView({ block: "nearest" });
      box.setAttribute("aria-activedescendant", chosen.id);
    }

    async function answer() {
      const text = box.value;
      asked = text;
      if (text.trim().length < 2) {
        open(false);
        list.replaceChildren();
        return;
      }
      /** @type {Search} */
      let known;
      try {
        known = await search();
      } catch {
        line.textContent = say("search-failed");
        list.replaceChildren();
        more.hidden = true;
        open(true);
        return;
      }
      if (asked !== text) return; // something newer was typed while the search was on its way
      const found = known.ask(text);
      list.replaceChildren(...found.results.map((result, place) => {
        const made = option(result, `${list.id}-${place}`);
        made.hidden = place >= found.first && result.type !== "part";
        return made;
      }));
      const hidden = [...list.children].filter((one) => /** @type {HTMLElement} */ (one).hidden).length;
      more.hidden = hidden === 0;
      more.textContent = known.say("more", { count: hidden });
      line.replaceChildren(found.line, piece("span", "unseen", ` ${known.say("found", { count: found.results.length - hidden })}`));
      open(true);
      point(-1);
    }

    /** @param {HTMLElement | undefined} chosen */
    function take(chosen) {
      if (!chosen) return;
      if (chosen.dataset.query) {
        box.value = chosen.dataset.query;
        box.focus();
        void answer();
      } else chosen.click();
    }

    const warm = () => void search().catch(() => undefined);
    box.addEventListener("focus", () => {
      warm();
      if (panel.hidden && box.value.trim()) void answer();
    });
    box.addEventListener("input", () => void answer());
    box.addEventListener("keydown", (event) => {
      const count = options().length;
      if (event.key === "ArrowDown" || event.key === "ArrowUp") {
        if (!count || panel.hidden) return;
        event.preventDefault();
        const step = event.key === "ArrowDown" ? 1 : -1;
        const from = current();
        point(from < 0 && step < 0 ? count - 1 : (from + step + count) % count);
      } else if (event.key === "Escape" && !panel.hidden) {
        event.preventDefault();
        open(false);
      }
    });
    box.form?.addEventListener("submit", (event) => {
      event.preventDefault();
      if (panel.hidden && box.value.trim()) void answer();
      else take(options()[Math.max(current(), 0)]);
    });
    box.form?.addEventListener("reset", () => setTimeout(() => {
      void answer();
      box.focus();
    }));
    list.addEventListener("click", (event) => {
      const chosen = /** @type {HTMLElement | null} */ (/** @type {Element} */ (event.target).closest("[data-query]"));
      if (!chosen) return;
      event.preventDefault();
      event.stopPropagation();
      take(chosen);
    });
    more.addEventListener("click", () => {
      const first = [...list.children].findIndex((one) => /** @type {HTMLElement} */ (one).hidden);
      for (const one of list.children) /** @type {HTMLElement} */ (one).hidden = false;
      more.hidden = true;
      box.focus();
      point(first);
    });
    if (panel.classList.contains("find-panel")) {
      document.addEventListener("pointerdown", (event) => {
        if (!/** @type {Element} */ (event.target).closest(".find")) open(false);
      });
      document.addEventListener("focusin", (event) => {
        if (!/** @type {Element} */ (event.target).closest(".find")) open(false);
      });
      document.addEventListener("linkwright-page", () => {
        box.value = "";
        asked = "";
        open(false);
      });
    } else if ("requestIdleCallback" in window) requestIdleCallback(warm, { timeout: LATER });
    else setTimeout(warm, LATER);
    if (box.value.trim()) void answer();
  }

  function bindBoxes() {
    for (const found of document.querySelectorAll("[data-answers-for]")) {
      const panel = /** @type {HTMLElement} */ (found);
      const box = document.getElementById(panel.dataset.answersFor ?? "");
      if (box instanceof HTMLInputElement) bindBox(box, panel);
    }
  }

  // ---- what was used last

  /** @returns {Used[]} */
  function kept() {
    try {
      const list = JSON.parse(localStorage.getItem(LAST) ?? "[]");
      if (!Array.isArray(list)) return [];
      return list.filter((one) => typeof one?.title === "string" && /^[a-z][a-z0-9/-]*\.html$/.test(one?.address));
    } catch {
      return [];
    }
  }

  function keepUsed() {
    const home = document.querySelector(".page-home");
    const address = location.href.replace(/[?#].*$/, "").slice(String(scope).length);
    const title = document.querySelector("main h1")?.textContent?.trim();
    if (home || !title || !/^(look-up|work-out|judge|understand)\/(?!index)[a-z0-9-]+\.html$/.test(address)) return;
    try {
      const others = kept().filter((one) => one.address !== address);
      localStorage.setItem(LAST, JSON.stringify([{ address, title }, ...others].slice(0, MOST_KEPT)));
    } catch {
      // Storage full or forbidden: nothing is kept.
    }
  }

  function showUsed() {
    const place = /** @type {HTMLElement | null} */ (document.querySelector("[data-last-used]"));
    const list = place?.querySelector("ul");
    const used = kept();
    if (!place || !list || !used.length) return;
    list.replaceChildren(...used.map(({ address, title }) => {
      const item = document.createElement("li");
      const link = document.createElement("a");
      link.href = String(new URL(address, scope));
      link.textContent = title;
      item.append(link);
      return item;
    }));
    place.hidden = false;
  }

  function arrived() {
    bindBoxes();
    keepUsed();
    showUsed();
  }

  document.addEventListener("linkwright-page", arrived);
  arrived();
})();
