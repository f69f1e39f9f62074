// @ts-check
/** US or SI, for every page: one choice, remembered, that the switches of the head and of all worksheets show. Until a reader
 * chooses, the language of the browser says which: American English reads pounds and inches. */

const UNITS_KEY = "linkwright-units";

/** @typedef {"us" | "si"} Units */

/** @type {Units} */
let units = firstUnits(kept.get(UNITS_KEY));

/** @param {string | null} chosen @returns {Units} */
function firstUnits(chosen) {
  if (isUnits(chosen)) return chosen;
  return /^en(-US)?$/i.test(navigator.language || "en") ? "us" : "si";
}

/** @returns {Units} */
function chosenUnits() {
  return units;
}

/**
 * @param {string | null | undefined} value
 * @returns {value is Units}
 */
function isUnits(value) {
  return value === "us" || value === "si";
}

/**
 * @param {Units} chosen
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
  for (const one of document.querySelectorAll("[data-choose-units]")) {
    one.setAttribute("aria-pressed", String(one.getAttribute("data-choose-units") === units));
  }
  for (const box of document.querySelectorAll('input[name="units"]')) {
    if (box instanceof HTMLInputElement && box.type === "radio") box.checked = box.value === units;
  }
}

/**
 * A bare number means the unit beside its box. Before the switch changes that unit, the number takes it in writing.
 * @param {Box[]} boxes
 * @param {Units} was
 */
function writeUnitsBeside(boxes, was) {
  for (const box of boxes) {
    const beside = box.closest(".field-row");
    const words = ["us", "si"].map((system) => beside?.querySelector(`.${system}-only`)?.textContent?.trim() ?? "");
    const unit = words[was === "us" ? 0 : 1];
    if (!unit || words[0] === words[1] || box instanceof HTMLSelectElement) continue;
    box.value = box.value.replace(/[^;\n]+/g, (item) => (/^[\s\d.,/+-]*\d[\s\d.,/+-]*$/.test(item) ? `${item.trimEnd()} ${unit}` : item));
  }
}

document.addEventListener("change", (event) => {
  const box = event.target;
  if (box instanceof HTMLInputElement && box.name === "units" && isUnits(box.value)) chooseUnits(box.value);
});

document.addEventListener("click", (event) => {
  const button = event.target instanceof Element ? event.target.closest("[data-choose-units]") : null;
  const chosen = button?.getAttribute("data-choose-units");
  if (isUnits(chosen)) chooseUnits(chosen);
});

showUnits();
// A page that comes by instant navigation brings its own switch.
document.addEventListener("linkwright-page", () => showUnits());
