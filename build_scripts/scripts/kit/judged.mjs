// @ts-check
/** Saves the answer of a judging sheet as one more inspection of a part of the kit. */
import { ask, built, say } from "./asking.mjs";
import { Changed, KitStore } from "./store.mjs";

/** @param {Element} sheet @param {any[]} nodes */
function show(sheet, nodes) {
  sheet.querySelector("[data-kit-place]")?.replaceChildren(...built(nodes));
}

/** @param {Element} sheet @param {string} text */
function tell(sheet, text) {
  show(sheet, [["p", { class: "kit-note" }, text]]);
}

/** @param {Element} sheet @param {unknown} error */
function fault(sheet, error) {
  const name = error instanceof Error ? error.name : "?";
  if (error instanceof Changed) tell(sheet, say("kit-changed-elsewhere"));
  else tell(sheet, name === "QuotaExceededError" ? say("kit-no-room") : say("kit-not-allowed", { reason: name }));
}

/** @param {Element} sheet */
async function choose(sheet) {
  const asked = /** @type {any} */ (sheet).answered;
  if (!asked) return;
  const store = await KitStore.open();
  const { count } = await store.counts("");
  const { nodes } = await ask("choose", { worksheet: asked.worksheet, parts: await store.list(0, count) });
  show(sheet, nodes);
}

/** @param {Element} sheet @param {HTMLFormElement} form */
async function save(sheet, form) {
  const asked = /** @type {any} */ (sheet).answered;
  const id = new FormData(form).get("save_to");
  if (!asked || typeof id !== "string" || id === "") return;
  const store = await KitStore.open();
  const found = await store.get(id);
  if (!found) return;
  const answer = await ask("save-judged", { worksheet: asked.worksheet, inputs: asked.inputs, part: found.part });
  if (!answer.ok) {
    tell(sheet, answer.errors?.[0]?.said ?? "");
    return;
  }
  await store.put([{ part: answer["part"], order: answer["order"] }], () => found.revision);
  show(sheet, answer["nodes"]);
}

/** Listens on every page: a worksheet may come and go. */
export function listen() {
  document.addEventListener("click", (event) => {
    const button = event.target instanceof Element ? event.target.closest("[data-kit-save-judged]") : null;
    const sheet = button?.closest("calc-sheet");
    if (sheet) void choose(sheet).catch((error) => fault(sheet, error));
  });
  document.addEventListener("submit", (event) => {
    const form = event.target;
    const sheet = form instanceof HTMLFormElement && form.closest("[data-kit-place]") ? form.closest("calc-sheet") : null;
    if (!sheet || !(form instanceof HTMLFormElement)) return;
    event.preventDefault();
    void save(sheet, form).catch((error) => fault(sheet, error));
  });
}
