// Look-up pages: sift a table by grade and size, sort it, pin the cell you came for. Nothing here needs the Python runtime. With scripts off every row is shown and each value leads to its source.
"use strict";
(() => {
  const say = /** @type {(key: string, facts?: Record<string, string | number>) => string} */ (/** @type {any} */ (window).linkwrightSay);

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
    const printed = cell.querySelector("a > .printed");
    if (printed) return printed.textContent ?? "";
    return [...cell.childNodes].filter((n) => n.nodeName !== "SMALL").map((n) => n.textContent).join("");
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
    if (chosen.length) {
      const all = document.createElement("button");
      all.type = "button";
      all.className = "plain-button";
      all.dataset["siftAll"] = "";
      all.textContent = say("show-all-rows");
      said.append(all);
    }
    dispatchEvent(new Event("resize"));
  }

  /** The lists of a table by what they sift: a size in inches on one page is a size in inches on all.
   * @param {HTMLElement} look */
  const lists = (look) => [.../** @type {NodeListOf<HTMLSelectElement>} */ (look.querySelectorAll("select[data-sift]"))];
  const KEPT = /** @type {Record<string, string>} */ ({ grade: "grade", size_inch: "size-in", size_inch_name: "size-in", size_metric: "size-mm", thread: "size-in" });

  /** The last grade and the last size that were chosen hold on every page that has them.
   * @param {EventTarget | null} target */
  function keepAsLast(target) {
    const key = target instanceof HTMLSelectElement && KEPT[target.dataset["role"] ?? ""];
    if (!key) return;
    try {
      localStorage.setItem(`linkwright-last-${key}`, target.value);
    } catch {
      // Storage full or forbidden: the choice lasts for this table.
    }
  }

  /** @param {HTMLElement} look */
  function chooseWhatWasLast(look) {
    for (const list of lists(look)) {
      const key = KEPT[list.dataset["role"] ?? ""];
      try {
        const last = key && localStorage.getItem(`linkwright-last-${key}`);
        if (last && [...list.options].some((option) => option.value === last)) list.value = last;
      } catch {
        return; // Storage forbidden: every row is shown.
      }
    }
    if (!lists(look).some((list) => list.value)) return;
    sift(look);
    // Two choices that were made on two pages may leave nothing here: then all rows are shown.
    if (![...look.querySelectorAll("tbody tr")].some((row) => row.getClientRects().length)) showAllRows(look, false);
  }

  /** @param {HTMLElement} look @param {boolean} forget  whether the choice is given up for the other pages too */
  function showAllRows(look, forget = true) {
    for (const list of lists(look)) {
      list.value = "";
      if (forget) keepAsLast(list);
    }
    sift(look);
    if (forget) lists(look)[0]?.focus();
  }

  /** Where sources differ, the rule of the reader's place stands first of those on the same thing.
   * @param {HTMLElement} look */
  function leadTheReadersPlace(look) {
    const place = document.documentElement.dataset["place"] ?? "";
    for (const body of look.querySelectorAll("tbody")) {
      if (!body.querySelector("[data-places]")) continue;
      const rows = /** @type {HTMLElement[]} */ ([...body.children]);
      rows.forEach((row, at) => (row.dataset["at"] ??= String(at)));
      rows.sort((a, b) => Number(a.dataset["at"]) - Number(b.dataset["at"]));
      /** @type {Map<string, HTMLElement[]>} */
      const groups = new Map();
      for (const row of rows) {
        const thing = [...row.querySelectorAll("th, .head-cell")].map((head) => head.textContent).join("|");
        groups.set(thing, [...(groups.get(thing) ?? []), row]);
      }
      for (const group of groups.values()) {
        const here = (/** @type {HTMLElement} */ row) => Number(Boolean(place) && (row.dataset["places"] ?? "").split(" ").includes(place));
        for (const row of group) row.toggleAttribute("data-leads", group.length > 1 && here(row) === 1);
        body.append(...group.sort((a, b) => here(b) - here(a)));
      }
    }
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
    const links = [...cell.querySelectorAll("a")];
    const value = links.map((link) => {
      const [first = "", ...rest] = [...link.querySelectorAll(".printed, .made")].map((one) => (one.textContent ?? "").trim());
      const choice = link.querySelector(".choice")?.textContent;
      return (rest.length ? `${first} (${rest.join(", ")})` : first) + (choice ? `, ${choice}` : "");
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
    leadTheReadersPlace(look);
    document.addEventListener("linkwright-place", () => look.isConnected && leadTheReadersPlace(look));
    chooseWhatWasLast(look);
    look.addEventListener("change", (event) => {
      keepAsLast(event.target);
      sift(look);
    });
    look.addEventListener("click", (event) => {
      const target = /** @type {Element} */ (event.target);
      if (target.closest("[data-sift-all]")) {
        showAllRows(look);
        return;
      }
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
    const cell = /^#([a-z\d-]+-)?c-\d+$/.test(location.hash) && document.getElementById(location.hash.slice(1))?.closest("td");
    const look = cell && /** @type {HTMLElement | null} */ (cell.closest("[data-table]"));
    if (!look) return;
    if (/** @type {HTMLElement} */ (cell).hidden || cell.closest("[hidden]")) showAllRows(look, false);
    pin(look, /** @type {HTMLTableCellElement} */ (cell));
    cell.scrollIntoView({ block: "center", inline: "center" });
  }

  function bind() {
    for (const look of document.querySelectorAll("[data-table]")) bindTable(/** @type {HTMLElement} */ (look));
    pinFromAddress();
  }

  addEventListener("hashchange", pinFromAddress);
  document.addEventListener("linkwright-page", bind);
  bind();
})();
