// Look-up pages: sift a table by grade and size, sort it, pin the cell you came for; and the box that answers ratings at
// once. Nothing here needs the Python runtime. With scripts off every row is shown and each value leads to its source.
"use strict";
(() => {
  /**
   * @typedef {[label: string, answer: string, use: string, address: string, table: number, words: number[], near: number[]]} RatingLine
   * @typedef {{rules: [string, string][], dropped: string[], words: string[], tables: string[], lines: RatingLine[], pages: [title: string, address: string, words: string[]][]}} Ratings
   */
  const scope = /** @type {URL} */ (/** @type {any} */ (window).__md_scope);
  const say = /** @type {(key: string, facts?: Record<string, string | number>) => string} */ (/** @type {any} */ (window).linkwrightSay);
  const MOST_HITS = 7;

  // ---- tables

  /** A cell's text as a number: 6,600 | 3/8 | 1-1/4; NaN for words. @param {string} text */
  function numberOf(text) {
    const plain = text.trim().replace(/,/g, "").replace(/^−/, "-");
    const parts = /^(?:(\d+)-)?(\d+)\/(\d+)/.exec(plain);
    if (parts) return Number(parts[1] || 0) + Number(parts[2]) / Number(parts[3]);
    return Number.parseFloat(plain);
  }

  /** @param {Element | undefined} cell */
  function lead(cell) {
    if (!cell) return "";
    const link = cell.querySelector("a") || cell;
    return [...link.childNodes].filter((n) => n.nodeName !== "SMALL").map((n) => n.textContent).join("");
  }

  /** @param {HTMLTableElement} table */
  function bindSort(table) {
    [...table.querySelectorAll("thead th")].forEach((head, column) => {
      if (head.querySelector("button")) return;
      const button = document.createElement("button");
      button.type = "button";
      button.append(...head.childNodes);
      head.append(button);
      button.addEventListener("click", () => {
        const upward = head.getAttribute("aria-sort") !== "ascending";
        for (const other of table.querySelectorAll("thead th")) other.removeAttribute("aria-sort");
        head.setAttribute("aria-sort", upward ? "ascending" : "descending");
        const body = table.tBodies[0];
        if (!body) return;
        const rows = [...body.rows].map((row) => {
          const text = lead(row.cells[column]);
          return { row, text, number: numberOf(text) };
        });
        rows.sort((a, b) => {
          const blank = Number(a.text === "–") - Number(b.text === "–");
          if (blank) return blank;
          const order = Number.isNaN(a.number) || Number.isNaN(b.number) ? a.text.localeCompare(b.text) : a.number - b.number;
          return upward ? order : -order;
        });
        body.append(...rows.map((one) => one.row));
      });
    });
  }

  /** @param {HTMLElement} look */
  function sift(look) {
    const chosen = [...look.querySelectorAll("select[data-sift]")]
      .map((s) => /** @type {HTMLSelectElement} */ (s))
      .filter((s) => s.value);
    let rowsShown = 0;
    let rowsAll = 0;
    for (const part of look.querySelectorAll(".table-part")) {
      const key = part.getAttribute("data-part-key");
      const wrong = chosen.some((s) => s.dataset.sift === key && s.value !== part.getAttribute("data-part-value"));
      const table = part.querySelector("table");
      if (!table) continue;
      const heads = [...table.querySelectorAll("thead th")];
      const hiddenColumns = new Set();
      heads.forEach((head, i) => {
        const off = chosen.some((s) => {
          const attribute = "data-k-" + (s.dataset.sift || "").replace(/_/g, "-");
          return head.hasAttribute(attribute) && head.getAttribute(attribute) !== s.value;
        });
        /** @type {HTMLElement} */ (head).hidden = off;
        if (off) hiddenColumns.add(i);
      });
      let here = 0;
      for (const row of table.tBodies[0]?.rows ?? []) {
        const off = chosen.some((s) => {
          const attribute = "data-k-" + (s.dataset.sift || "").replace(/_/g, "-");
          return row.hasAttribute(attribute) && row.getAttribute(attribute) !== s.value;
        });
        row.hidden = off;
        rowsAll += 1;
        if (!off) here += 1;
        [...row.cells].forEach((cell, i) => (cell.hidden = hiddenColumns.has(i)));
      }
      const values = heads.filter((h) => [...h.attributes].some((a) => a.name.startsWith("data-k-")));
      const empty = here === 0 || (values.length > 0 && values.every((h) => /** @type {HTMLElement} */ (h).hidden));
      /** @type {HTMLElement} */ (part).hidden = wrong || empty;
      if (!wrong && !empty) rowsShown += here;
    }
    const said = look.querySelector("[data-sift-said]");
    if (!said) return;
    if (!chosen.length) said.textContent = "";
    else if (rowsShown) said.textContent = say("rows-shown", { shown: rowsShown, all: rowsAll });
    else said.textContent = say("nothing-to-sift");
    dispatchEvent(new Event("resize"));
  }

  /** What a cell is: its column and row heads in words. @param {HTMLTableCellElement} cell */
  function cellName(cell) {
    const row = /** @type {HTMLTableRowElement} */ (cell.parentElement);
    const table = cell.closest("table");
    const head = table?.querySelectorAll("thead th")[cell.cellIndex];
    const part = cell.closest(".table-part")?.querySelector(".part-head")?.textContent;
    const rows = [...row.querySelectorAll("th, .head-cell")].map((h) => h.textContent?.trim());
    const column = head && lead(head.querySelector("button") || head);
    // In a list the column's head says nothing that the row does not.
    return [part, ...rows, table?.hasAttribute("data-list") && rows.length ? "" : column].filter(Boolean).join(", ");
  }

  /** @param {HTMLElement} look @param {HTMLTableCellElement} cell */
  function pin(look, cell) {
    const strip = /** @type {HTMLElement | null} */ (look.querySelector("[data-pin]"));
    if (!strip) return;
    for (const old of look.querySelectorAll("[data-pinned]")) old.removeAttribute("data-pinned");
    cell.setAttribute("data-pinned", "");
    const unit = cell.closest("table")?.querySelectorAll("thead th")[cell.cellIndex]?.querySelector("small")?.textContent?.split(", ")[0];
    const links = [...cell.querySelectorAll("a")];
    const value = links.map((link, i) => {
      const made = [...link.querySelectorAll("small:not(.choice)")].map((s) => s.textContent).join(", ");
      const choice = link.querySelector(".choice")?.textContent;
      const text = lead(link).trim() + (i === 0 && unit ? ` ${unit}` : "");
      return (made ? `${text} (${made})` : text) + (choice ? `, ${choice}` : "");
    });
    const more = /** @type {HTMLElement} */ (strip.querySelector("[data-pin-more]"));
    more.textContent = "";
    const seen = new Set();
    for (const link of links) {
      const claim = document.getElementById(link.hash.slice(1));
      if (!claim || seen.has(claim.id)) continue;
      seen.add(claim.id);
      const [source, place, how, note] = [.../** @type {HTMLTableRowElement} */ (claim).cells];
      const line = document.createElement("span");
      line.append(say("pin-source"), " ", ...(source ? [...source.childNodes].map((n) => n.cloneNode(true)) : []));
      const where = place?.textContent?.trim();
      if (where) line.append(`, ${where}`);
      for (const rest of [how, note]) {
        const text = rest?.textContent?.trim().replace(/\.$/, "");
        if (text) line.append(`. ${text.charAt(0).toUpperCase()}${text.slice(1)}`);
      }
      more.append(line, ". ");
    }
    const set = (/** @type {string} */ name, /** @type {string} */ text) => {
      const place = strip.querySelector(`[data-pin-${name}]`);
      if (place) place.textContent = text;
    };
    set("name", cellName(cell));
    set("value", value.join("; "));
    strip.toggleAttribute("data-long", value.join("").length > 60);
    strip.hidden = false;
  }

  /** @param {HTMLElement} look */
  function bindTable(look) {
    if (look.dataset.bound) return;
    look.dataset.bound = "yes";
    for (const table of look.querySelectorAll("table.data")) bindSort(/** @type {HTMLTableElement} */ (table));
    look.addEventListener("change", () => sift(look));
    look.addEventListener("click", (event) => {
      const target = /** @type {Element} */ (event.target);
      if (target.closest("[data-unpin]")) {
        const strip = /** @type {HTMLElement} */ (look.querySelector("[data-pin]"));
        strip.hidden = true;
        const cell = look.querySelector("[data-pinned]");
        cell?.removeAttribute("data-pinned");
        /** @type {HTMLElement | null | undefined} */ (cell?.querySelector("a"))?.focus();
        return;
      }
      const cell = target.closest("td");
      if (!cell?.closest("table.data") || !target.closest("a")) return;
      event.preventDefault();
      pin(look, /** @type {HTMLTableCellElement} */ (cell));
      if (cell.id) {
        try {
          history.replaceState(history.state, "", `#${cell.id}`);
        } catch {
          // Too many in a short time: the pin still stands.
        }
      }
    });
  }

  /** A cell named in the address is pinned. */
  function pinFromAddress() {
    const cell = /^#(t\d+-)?c-\d+$/.test(location.hash) && document.getElementById(location.hash.slice(1))?.closest("td");
    const look = cell && /** @type {HTMLElement | null} */ (cell.closest("[data-table]"));
    if (!look) return;
    pin(look, /** @type {HTMLTableCellElement} */ (cell));
    cell.scrollIntoView({ block: "center", inline: "center" });
  }

  // ---- ratings

  /** @type {Promise<Ratings> | null} */
  let loading = null;
  const index = () => (loading ??= new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = String(new URL("scripts/ratings.js", scope));
    script.onload = () => resolve(/** @type {any} */ (globalThis).linkwrightRatings);
    script.onerror = () => reject(new Error(script.src));
    document.head.append(script);
  }));

  /** The words that count in what was typed, by the rules the index brings. @param {Ratings} ratings @param {string} text */
  function boil(ratings, text) {
    let low = ` ${text.toLowerCase()} `;
    for (const [pattern, replacement] of ratings.rules) low = low.replace(new RegExp(pattern, "g"), replacement);
    return low.split(/\s+/).filter((word) => word && !ratings.dropped.includes(word));
  }

  /** Lines that hold every word; the last word may be half typed. @param {Ratings} ratings @param {string[]} asked */
  function find(ratings, asked) {
    const sets = asked.map((word, i) => {
      const exact = new Set();
      const begun = new Set();
      ratings.words.forEach((known, place) => {
        if (known === word) exact.add(place);
        else if ((i === asked.length - 1 || /^\p{Ll}{3,}$/u.test(word)) && known.startsWith(word)) begun.add(place);
      });
      return { exact, begun };
    });
    /** @type {{line: RatingLine, score: number}[]} */
    const hits = [];
    for (const line of ratings.lines) {
      let score = 0;
      const all = sets.every(({ exact, begun }) => {
        if (line[5].some((w) => exact.has(w))) {
          score += 3;
          return true;
        }
        if (line[6].some((w) => exact.has(w))) {
          score += 2;
          return true;
        }
        score += 1;
        return line[5].some((w) => begun.has(w));
      });
      if (all) hits.push({ line, score });
    }
    return hits.sort((a, b) => b.score - a.score);
  }

  /** Which word to leave out first where nothing has them all: one that no rating knows, then a size, then a kind.
   * @param {Ratings} ratings @param {string[]} asked */
  function leastTold(ratings, asked) {
    const rank = asked.map((word) => (ratings.words.some((known) => known.startsWith(word)) ? (/\d/.test(word) ? 1 : 2) : 0));
    return asked.map((_, i) => i).sort((a, b) => (rank[a] ?? 0) - (rank[b] ?? 0) || b - a);
  }

  /** Pages that have every plain word of what was asked; sizes and grades do not count. @param {Ratings} ratings @param {string[]} asked */
  function pagesOf(ratings, asked) {
    const plain = asked.filter((word) => /^\p{Ll}{3,}$/u.test(word));
    if (!plain.length) return [];
    return ratings.pages.filter(([, , words]) => plain.every((word) => words.some((known) => known.startsWith(word))));
  }

  /** One line of the answer. @param {string} address @param {string} name @param {string} value @param {string} said */
  function hitLine(address, name, value, said) {
    const item = document.createElement("li");
    const link = document.createElement("a");
    link.href = String(new URL(address, scope));
    for (const [kind, text] of [["span", name], ["b", value], ["small", said]]) {
      if (!text) continue;
      const part = document.createElement(String(kind));
      part.textContent = String(text);
      link.append(part);
    }
    item.append(link);
    return item;
  }

  /** @param {string} text */
  function hitNote(text) {
    const note = document.createElement("p");
    note.className = "hits-note";
    note.textContent = text;
    return note;
  }

  /** @param {HTMLElement} panel @param {string} text */
  async function answer(panel, text) {
    if (text.trim().length < 2) {
      panel.hidden = true;
      panel.textContent = "";
      return;
    }
    panel.dataset.asked = text;
    let ratings;
    try {
      ratings = await index();
    } catch {
      return;
    }
    if (panel.dataset.asked !== text) return;
    const asked = boil(ratings, text);
    let hits = asked.length ? find(ratings, asked) : [];
    let missing = "";
    const rated = asked.some((word) => /\d/.test(word));
    for (const drop of hits.length || !rated || asked.length < 2 ? [] : leastTold(ratings, asked)) {
      hits = find(ratings, asked.filter((_, i) => i !== drop));
      if (hits.length) {
        missing = asked[drop] || "";
        break;
      }
    }
    const whole = hits.length > 0 && !missing;
    const pages = whole ? [] : pagesOf(ratings, asked).slice(0, 3);
    if (pages.length && /^\p{Ll}{3,}$/u.test(missing)) hits = []; // ratings of another kind of thing are not near
    const own = panel.dataset.ratingsFor === "ask-box"; // the search box of the head has its own words for nothing
    panel.textContent = "";
    panel.hidden = !hits.length && !pages.length && !(own && asked.join("").length > 2);
    if (panel.hidden) return;
    /** @param {HTMLLIElement[]} lines */
    const show = (lines) => {
      const list = document.createElement("ul");
      list.className = "hits";
      list.append(...lines);
      panel.append(list);
    };
    if (pages.length) {
      panel.append(hitNote(say("no-rating-but-a-page")));
      show(pages.map(([title, address]) => hitLine(address, title, "", "")));
    }
    if (missing && hits.length) panel.append(hitNote(say("no-rating-with", { word: missing })));
    else if (!hits.length && !pages.length) {
      panel.append(hitNote(say("no-rating")));
    }
    if (hits.length) {
      show(hits.slice(0, MOST_HITS).map(({ line }) => hitLine(line[3], line[0], line[1], `${ratings.tables[line[4]]} ${line[2]}`)));
    }
    if (hits.length > MOST_HITS) panel.append(hitNote(say("more-ratings", { count: hits.length - MOST_HITS })));
  }

  /** No rating has these words: look for them in the pages. @param {string} text */
  function searchPages(text) {
    const box = document.getElementById("find-box");
    if (!(box instanceof HTMLInputElement) || box.value === text) return;
    box.value = text;
    box.focus();
    box.dispatchEvent(new KeyboardEvent("keyup", { bubbles: true }));
  }

  function bindRatings() {
    for (const found of document.querySelectorAll("[data-ratings-for]")) {
      const panel = /** @type {HTMLElement} */ (found);
      const box = /** @type {HTMLInputElement | null} */ (document.getElementById(panel.dataset.ratingsFor || ""));
      if (!box || box.dataset.bound) continue;
      box.dataset.bound = "yes";
      box.addEventListener("focus", () => void index().catch(() => undefined));
      box.addEventListener("input", () => void answer(panel, box.value));
      box.form?.addEventListener("reset", () => setTimeout(() => void answer(panel, "")));
      box.form?.addEventListener("submit", (event) => {
        event.preventDefault();
        const first = panel.querySelector("a");
        if (first instanceof HTMLElement) first.click();
        else searchPages(box.value);
      });
      if (box.value) void answer(panel, box.value);
    }
  }

  function bind() {
    for (const look of document.querySelectorAll("[data-table]")) bindTable(/** @type {HTMLElement} */ (look));
    bindRatings();
    pinFromAddress();
  }

  addEventListener("hashchange", pinFromAddress);
  document.addEventListener("linkwright-page", bind);
  bind();
})();
