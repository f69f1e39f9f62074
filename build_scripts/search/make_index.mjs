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

const { indexed } = await import(pathToFileURL(join(scripts, "index-pages.mjs")).href);
const { index, cards, ...data } = indexed(JSON.parse(readFileSync(0, "utf8")));
// Parsing a text is faster than running a literal of this size. The ratings and the index are texts of their own, so that a
// slow phone takes each when it is first asked for, and draws in between.
// In single quotes nearly nothing of it must be marked, which makes the text shorter and quicker to read.
const texts = [data, cards, index].map((one) => `'${JSON.stringify(one).replace(/['\\]/g, "\\$&").replace(/[\u2028\u2029]/g, " ")}'`);
writeFileSync(join(site, "scripts", "search-data.js"), `globalThis.linkwrightSearchData=[${texts.join(",")}];\n`);

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
