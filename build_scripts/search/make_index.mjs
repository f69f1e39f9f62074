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
const { index, ...data } = indexed(JSON.parse(readFileSync(0, "utf8")));
// Parsing a text is faster than running a literal of this size. The index is a text of its own, so that a slow phone can
// take what the search knows and the index one after the other, and draw in between.
const texts = [data, index].map((one) => JSON.stringify(JSON.stringify(one)));
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
