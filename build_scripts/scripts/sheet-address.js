// @ts-check
/** The inputs in the page's address, so that an answer can be bookmarked and sent. */

/** Browsers and mail programs cut long addresses; what is longer than this (a pasted log) stays out of them. */
const LONGEST_IN_ADDRESS = 2000;
/** An address must not ask for more rows than this. */
const MOST_ROWS_IN_ADDRESS = 200;

/** Writes the inputs into the address; a long one as empty, to be given again. @param {SheetForm} form */
function rememberInAddress(form) {
  const fields = new URLSearchParams(form.typed().map(([name, value]) => [name, value.length > LONGEST_IN_ADDRESS ? "" : value]));
  fields.set("units", chosenUnits());
  try {
    history.replaceState(history.state, "", `#${fields}`);
  } catch {
    // Some browsers limit how often; the next change writes it.
  }
}

/** Puts the address's inputs into the boxes. @param {SheetForm} form @returns {boolean} whether there were any */
function restoreFromAddress(form) {
  const fragment = location.hash.slice(1);
  if (!fragment.includes("=")) return false;
  const fields = new URLSearchParams(fragment);
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

/** How many rows of a name the fields fill. @param {URLSearchParams} fields @param {string} name */
function rowsIn(fields, name) {
  let count = 0;
  for (const key of fields.keys()) {
    const [rows, index] = nameSteps(key);
    if (rows === name && typeof index === "number") count = Math.max(count, Math.min(index + 1, MOST_ROWS_IN_ADDRESS));
  }
  return count;
}
