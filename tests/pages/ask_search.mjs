// @ts-check
/**
 * Asks the search of a built site, with the very scripts that the page loads: node tests/pages/ask_search.mjs SITE < QUESTIONS
 * A question is a text in a list; the answer to each is what the page would show.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";

const site = process.argv[2] ?? "";
const globals = /** @type {any} */ (globalThis);
/** @param {any} pattern @param {Record<string, string | number>} facts @returns {string} */
globals.linkwrightFilled = (pattern, facts) => {
  if (typeof pattern === "string") return pattern;
  return pattern.map((/** @type {any} */ piece) => {
    if (typeof piece === "string") return piece;
    if (piece[0] === "f") return piece[1];
    const fact = facts[piece[1]] ?? "";
    if (piece[0] === "v") return String(fact);
    const plural = typeof fact === "number" ? new Intl.PluralRules("en").select(fact) : "";
    return globals.linkwrightFilled(piece[2][String(fact)] ?? piece[2][plural] ?? piece[2][piece[3]] ?? "", facts);
  }).join("");
};
for (const name of ["search-data.js", "search.js"]) runInThisContext(readFileSync(join(site, "scripts", name), "utf8"));
const { ask } = globals.linkwrightMakeSearch();
const questions = /** @type {string[]} */ (JSON.parse(readFileSync(0, "utf8")));
console.log(JSON.stringify(questions.map((one) => ask(one))));
