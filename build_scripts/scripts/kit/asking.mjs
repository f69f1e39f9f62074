// @ts-check
/** Asks Python what is to be thought about parts, and makes elements of what it shows. */

const book = /** @type {any} */ (globalThis).linkwright;

/** @typedef {{ok: boolean, errors?: {input: string, said: string}[], [name: string]: any}} Answer */

/** Resolves when Python runs; rejects with the reason where it cannot. */
function running() {
  const { python } = book;
  return new Promise((resolve, reject) => {
    const look = () => {
      if (python.state !== "live" && python.state !== "failed") return;
      python.removeEventListener("state", look);
      if (python.state === "live") resolve(undefined);
      else reject(new Error(python.reason));
    };
    python.addEventListener("state", look);
    python.start();
    look();
  });
}

/** @param {string} kit  what is wanted @param {Record<string, unknown>} data @returns {Promise<Answer>} */
export async function ask(kit, data) {
  await running();
  const { edition, code } = book;
  return book.python.answer({ kit, units: book.units(), language: document.documentElement.lang, edition, tables: code, root: "../", ...data });
}

/** A message of page/live.ftl. @param {string} code @param {Record<string, string | number>} [facts] @returns {string} */
export const say = (code, facts = {}) => book.say(code, facts);

/** Trees as elements. @param {any[]} nodes @returns {Node[]} */
export const built = (nodes) => nodes.map((node) => book.built(node));

/** The day on this device. */
export function today() {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;
}
