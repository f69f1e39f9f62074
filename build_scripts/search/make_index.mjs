// @ts-check
/**
 * Makes the index of the pages with the same scripts that search it, and packs those scripts.
 *
 *   node build_scripts/search/make_index.mjs SCRIPTS SITE < DATA
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { oldestBrowsers } from "../browsers.mjs";

const [scripts = "", site = ""] = process.argv.slice(2);
if (!scripts || !site) throw new Error("usage: make_index.mjs SCRIPTS SITE < DATA");

const { asLines, indexed } = await import(pathToFileURL(join(scripts, "index-pages.mjs")).href);
const { index, cards, sections, lexicon, ...data } = indexed(JSON.parse(readFileSync(0, "utf8")));
const { phrases, known, ...reading } = lexicon;
// Parsing a text is faster than running a literal of this size. What is not needed at once is a text of its own, so that a
// slow phone takes each when it is first asked for, and draws in between; lists of many words are lines, cut and not parsed.
// In single quotes nearly nothing of it must be marked, which makes the text shorter and quicker to read.
const texts = {
  data: JSON.stringify({ ...data, lexicon: reading }),
  cards: JSON.stringify(cards),
  index: JSON.stringify(index.rest),
  words: index.words,
  sections: sections.join("\n"),
  phrases: asLines(phrases),
  known: asLines(known.map((/** @type {[string, number, string]} */ [word, , ids]) => [word, ids])),
};
const quoted = (/** @type {string} */ text) => `'${text.replace(/['\\]/g, "\\$&").replace(/\n/g, "\\n").replace(/\t/g, "\\t").replace(/[\u2028\u2029]/g, " ")}'`;
const listed = Object.entries(texts).map(([name, text]) => `${name}:${quoted(text)}`);
writeFileSync(join(site, "scripts", "search-data.js"), `globalThis.linkwrightSearchData={${listed.join(",")}};\n`);

await build({
  entryPoints: [join(scripts, "search.mjs")],
  outfile: join(site, "scripts", "search.js"),
  bundle: true,
  minify: true,
  format: "iife",
  target: oldestBrowsers(),
  legalComments: "none",
  logLevel: "error",
  nodePaths: [join(process.cwd(), "node_modules")],
});
