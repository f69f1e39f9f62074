// @ts-check
/** The kit's script: loaded by site.js on the pages that need it, and once a visit. */
import { listen } from "./judged.mjs";
import { takeOver } from "./page.mjs";
import { listenForPicks } from "./pick.mjs";
import { KitStore } from "./store.mjs";

const book = /** @type {any} */ (globalThis).linkwright;

/** The parts that this device keeps under one of some numbers, for the page of a job. @param {string[]} numbers */
async function ownParts(numbers) {
  const store = await KitStore.open();
  return store.numbered(numbers);
}

// The page of a job loads this too: whoever comes second finds it done.
if (!book.ownParts) {
  book.ownParts = ownParts;
  document.addEventListener("linkwright-page", takeOver);
  takeOver();
  listen();
  listenForPicks();
}
