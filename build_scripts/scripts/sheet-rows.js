// @ts-check
/** Rows of a worksheet's form: added from the template, taken out, numbered anew. */

const NUMBERED = ["name", "id", "for", "aria-describedby", "aria-labelledby", "data-error", "data-echo", "data-own-part"];

/** @param {HTMLElement} rows @returns {Element | null} the new row */
function addRow(rows) {
  const template = rows.querySelector("template");
  const made = template?.content.firstElementChild?.cloneNode(true);
  if (!template || !(made instanceof Element)) return null;
  const all = rows.querySelectorAll("[data-row]");
  const last = all[all.length - 1];
  if (last) last.after(made);
  else template.before(made);
  numberRows(rows);
  return made;
}

/**
 * As many rows as there are values for. A row made for values is folded to its name, all but the first.
 * @param {HTMLElement} rows
 * @param {number} count
 */
function makeRows(rows, count) {
  const all = rows.querySelectorAll("[data-row]");
  for (let i = all.length; i > count; i -= 1) all[i - 1]?.remove();
  for (let i = all.length; i < count; i += 1) {
    const fold = addRow(rows)?.querySelector(".row-fold");
    if (i > 0) fold?.removeAttribute("open");
  }
  numberRows(rows);
}

/** Numbers every row's names, ids and references anew. @param {HTMLElement} rows */
function numberRows(rows) {
  const name = rows.dataset["rows"] ?? "";
  const all = [...rows.querySelectorAll("[data-row]")];
  const most = Number(rows.dataset["maxRows"] || Infinity);
  const fewest = Number(rows.dataset["minRows"] ?? 0);
  const index = new RegExp(`(^|[^A-Za-z0-9_])(${name})(?:\\[[^\\]]*\\]|-(?:\\d+|__)(?=-|$))`, "g");
  all.forEach((row, i) => {
    for (const element of [row, ...row.querySelectorAll("*")]) numberElement(element, index, i);
    for (const number of row.querySelectorAll("[data-row-number]")) number.textContent = String(i + 1);
    for (const button of row.querySelectorAll("[data-remove-row]")) {
      if (button instanceof HTMLButtonElement) button.disabled = all.length <= fewest;
    }
  });
  for (const button of rows.querySelectorAll("[data-add-row]")) {
    if (button instanceof HTMLButtonElement) button.disabled = all.length >= most;
  }
}

/** @param {Element} element @param {RegExp} index @param {number} i */
function numberElement(element, index, i) {
  for (const attribute of NUMBERED) {
    const value = element.getAttribute(attribute);
    if (value === null) continue;
    const numbered = value.replace(index, (whole, before, rowsName) => `${before}${rowsName}${whole.includes("[") ? `[${i}]` : `-${i}`}`);
    if (numbered !== value) element.setAttribute(attribute, numbered);
  }
}

/**
 * Does what a row's button says, and sees to where the focus goes.
 * @param {Element} clicked
 * @returns {boolean} whether it was such a button
 */
function rowButton(clicked) {
  const button = clicked.closest("[data-add-row], [data-remove-row]");
  const rows = button?.closest("[data-rows]");
  if (!(button instanceof HTMLElement) || !(rows instanceof HTMLElement)) return false;
  if (button.hasAttribute("data-add-row")) {
    const boxes = addRow(rows)?.querySelectorAll("input, select, textarea") ?? [];
    focusOn([...boxes].find((box) => !box.closest("[hidden]")));
    return true;
  }
  const row = button.closest("[data-row]");
  const beside = row?.previousElementSibling?.closest("[data-row]") ?? row?.nextElementSibling?.closest("[data-row]");
  row?.remove();
  focusOn(beside?.querySelector("[data-remove-row]") ?? rows.querySelector("[data-add-row]"));
  numberRows(rows);
  return true;
}

/** @param {Element | null | undefined} element */
function focusOn(element) {
  if (element instanceof HTMLElement) element.focus();
}
