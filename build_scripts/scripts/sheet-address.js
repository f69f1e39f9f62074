// @ts-check
/** The reader's inputs in the page's address, so that an answer can be bookmarked and sent, and kept while the tab is open. */

/** Browsers and mail programs cut long addresses; what is longer than this (a pasted log) stays out of them. */
const LONGEST_IN_ADDRESS = 2000;
/** An address must not ask for more rows than this. */
const MOST_ROWS_IN_ADDRESS = 200;
/** The address of a worksheet with its example shown. */
const EXAMPLE_ADDRESS = "example";
/** The field of an address that names the worksheet from which its numbers come. */
const FROM = "from";
/** The field that names the tables and code which printed the numbers of an address. */
const BACK = "back";

/** A day that means the same at every time: `today` and `26 Nov`, kept in a bookmark, would be a later day a year on. */
const CALENDAR_DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Takes out the days that are not written as a calendar has them.
 * @param {SheetForm} form
 * @param {URLSearchParams} fields
 */
function leaveOutLooseDays(form, fields) {
  for (const box of form.days()) {
    if (!CALENDAR_DAY.test(fields.get(box.name) ?? "")) fields.delete(box.name);
  }
}

/** @param {SheetForm} form @param {number} longest @returns {URLSearchParams} the boxes that hold something */
function fieldsOf(form, longest) {
  const filled = form.typed().filter(([, value]) => value !== "");
  const fields = new URLSearchParams(filled.map(([name, value]) => [name, value.length > longest ? "" : value]));
  leaveOutLooseDays(form, fields);
  fields.set("units", chosenUnits());
  return fields;
}

/**
 * Writes the reader's inputs into the address and keeps them; the example and an empty form leave no trace.
 * @param {SheetForm} form
 * @param {string} sheet
 * @param {boolean} own
 * @param {string} path  of the worksheet's page: the address of another one, that is on its way, is left alone
 */
function remember(form, sheet, own, path) {
  keptTyped.set(sheet, own ? fieldsOf(form, Infinity).toString() : "");
  if (location.pathname !== path) return;
  try {
    history.replaceState(history.state, "", own ? `#${fieldsOf(form, LONGEST_IN_ADDRESS)}` : location.pathname + location.search);
  } catch {
    // Some browsers limit how often; the next change writes it.
  }
}

/** The fields that the address gives, or null. @returns {URLSearchParams | null} */
function fieldsOfAddress() {
  const fragment = location.hash.slice(1);
  return fragment.includes("=") ? new URLSearchParams(fragment) : null;
}

/**
 * What a worksheet opens with: what the address gives, else what was typed here before. Numbers handed over by another
 * worksheet go in among what was typed.
 * @param {string} sheet
 * @returns {URLSearchParams}
 */
function fieldsToOpen(sheet) {
  const given = fieldsOfAddress();
  const typed = new URLSearchParams(keptTyped.get(sheet));
  if (!given?.has(FROM)) return given ?? typed;
  for (const [name, value] of given) typed.set(inNextRow(name, typed), value);
  return typed;
}

/** The next row for what is to stand in one of its own (`items[+].kind`), however many are filled. @param {string} name @param {URLSearchParams} typed */
function inNextRow(name, typed) {
  const rows = name.match(/^(\w+)\[\+\]/)?.[1];
  return rows ? name.replace("+", String(rowsBefore(rows, typed))) : name;
}

/** How many rows were filled before numbers were handed over. @param {string} rows @param {URLSearchParams} typed */
function rowsBefore(rows, typed) {
  const marked = typed.get(`${rows}[+]`);
  if (marked !== null) return Number(marked);
  const count = rowsIn(typed, rows);
  typed.set(`${rows}[+]`, String(count));
  return count;
}

/**
 * Puts fields into the boxes, with as many rows as they need.
 * @param {SheetForm} form
 * @param {URLSearchParams} fields
 * @returns {boolean} whether any box was filled
 */
function fillFrom(form, fields) {
  form.clear();
  for (const rows of form.rows()) {
    const count = rowsIn(fields, rows.dataset["rows"] ?? "");
    if (count > 0) makeRows(rows, count);
  }
  const given = fields.get("units");
  if (isUnits(given)) chooseUnits(given, false);
  const filled = form.fill(fields);
  form.showConditional();
  return filled;
}

/** What the reader typed before the scripts were there; early.js marks it. @param {SheetForm} form @returns {URLSearchParams} */
function typedEarly(form) {
  const marked = form.boxes().filter((box) => "typed" in box.dataset);
  const early = new URLSearchParams();
  for (const box of marked) {
    delete box.dataset["typed"];
    if (!(box instanceof HTMLInputElement)) early.set(box.name, box.value);
    else if (box.type === "checkbox") early.set(box.name, box.checked ? "yes" : "no");
    else if (box.type !== "file" && (box.type !== "radio" || box.checked)) early.set(box.name, box.value);
  }
  return early;
}

/** How many rows of a name the fields fill. @param {URLSearchParams} fields @param {string} name */
function rowsIn(fields, name) {
  let count = 0;
  for (const key of fields.keys()) {
    const [rows, index] = nameSteps(key);
    if (rows === name && typeof index === "number") count = Math.max(count, Math.min(index + 1, MOST_ROWS_IN_ADDRESS));
  }
  return count;
}
