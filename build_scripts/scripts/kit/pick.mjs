// @ts-check
/** Fills the row of a worksheet from a part of the kit: a list under the row's button, and a tap on one of its parts. */
import { ask, built, say } from "./asking.mjs";
import { KitStore } from "./store.mjs";

/** @param {Element} place @param {string} name @returns {HTMLElement} */
function piece(place, name) {
  const found = place.querySelector(`[${name}]`);
  if (!(found instanceof HTMLElement)) throw new Error(name);
  return found;
}

/** The kind that the row names already. @param {HTMLElement} place @returns {string} */
function chosenKind(place) {
  const prefix = place.dataset["ownPart"] ?? "";
  const boxes = place.closest("form")?.elements;
  for (const name of ["kind", "leg_kind", "sling_kind"]) {
    const box = boxes?.namedItem(prefix + name);
    if (box instanceof HTMLSelectElement || box instanceof RadioNodeList) return box.value;
  }
  return "";
}

/** @param {HTMLElement} place */
function close(place) {
  piece(place, "data-kit-list").replaceChildren();
  piece(place, "data-kit-find-in").hidden = true;
  piece(place, "data-kit-pick").setAttribute("aria-expanded", "false");
}

let turn = 0;

/** @param {HTMLElement} place @param {string} find */
async function offer(place, find) {
  const mine = ++turn;
  const worksheet = place.closest("calc-sheet")?.getAttribute("data-sheet") ?? "";
  const store = await KitStore.open();
  const { count } = await store.counts("");
  const { nodes, many } = await ask("pick", { worksheet, find, chosen: chosenKind(place), parts: await store.list(0, count) });
  if (!place.isConnected || mine !== turn) return;
  piece(place, "data-kit-list").replaceChildren(...built(nodes));
  if (many) piece(place, "data-kit-find-in").hidden = false;
  piece(place, "data-kit-pick").setAttribute("aria-expanded", "true");
}

/** @param {HTMLElement} place @param {HTMLElement} chosen */
function take(place, chosen) {
  const sheet = /** @type {any} */ (place.closest("calc-sheet"));
  /** @type {Record<string, string>} */
  const fields = JSON.parse(chosen.dataset["fields"] ?? "{}");
  const prefix = place.dataset["ownPart"] ?? "";
  sheet.take(Object.fromEntries(Object.entries(fields).map(([name, value]) => [prefix + name, value])));
  piece(place, "data-kit-taken").textContent = say("kit-taken", { number: chosen.dataset["kitTake"] ?? "" });
  close(place);
  piece(place, "data-kit-pick").focus();
}

/** @param {HTMLElement} place @param {unknown} error */
function fault(place, error) {
  const reason = error instanceof Error ? error.message || error.name : "?";
  piece(place, "data-kit-taken").textContent = say("kit-not-allowed", { reason });
}

/** @param {Event} event */
function clicked(event) {
  const target = event.target instanceof Element ? event.target : null;
  const place = target?.closest("[data-own-part]");
  if (!(place instanceof HTMLElement)) return;
  const chosen = target?.closest("[data-kit-take]");
  if (chosen instanceof HTMLElement) take(place, chosen);
  else if (!target?.closest("[data-kit-pick]")) return;
  else if (piece(place, "data-kit-pick").getAttribute("aria-expanded") === "true") close(place);
  else void offer(place, "").catch((error) => fault(place, error));
}

/** @param {Event} event */
function typed(event) {
  const box = event.target;
  const place = box instanceof HTMLInputElement && box.dataset["kitFind"] !== undefined ? box.closest("[data-own-part]") : null;
  if (place instanceof HTMLElement && box instanceof HTMLInputElement) void offer(place, box.value).catch((error) => fault(place, error));
}

/** Listens on every page: a worksheet may come and go. */
export function listenForPicks() {
  document.addEventListener("click", clicked);
  document.addEventListener("input", typed);
}
