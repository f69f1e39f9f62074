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

const [scripts = "", site = ""] = process.argv.slice(2);
if (!scripts || !site) throw new Error("usage: make_index.mjs SCRIPTS SITE < DATA");

const { indexed } = await import(pathToFileURL(join(scripts, "index-pages.mjs")).href);
const data = indexed(JSON.parse(readFileSync(0, "utf8")));
// Parsing a text is faster than running a literal of this size.
writeFileSync(join(site, "scripts", "search-data.js"), `globalThis.linkwrightSearchData=${JSON.stringify(JSON.stringify(data))};\n`);

await build({
  entryPoints: [join(scripts, "search.mjs")],
  outfile: join(site, "scripts", "search.js"),
  bundle: true,
  minify: true,
  format: "iife",
  target: ["es2022"],
  legalComments: "none",
  logLevel: "error",
  nodePaths: [join(process.cwd(), "node_modules")],
});
