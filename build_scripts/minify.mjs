// @ts-check
/** Packs style sheets and classic scripts in place: node build_scripts/minify.mjs FILE... */
import { readFileSync, writeFileSync } from "node:fs";
import { transform } from "esbuild";

for (const file of process.argv.slice(2)) {
  const loader = file.endsWith(".css") ? "css" : "js";
  const packed = await transform(readFileSync(file, "utf8"), { loader, minify: true, legalComments: "none", target: "es2022" });
  writeFileSync(file, packed.code);
}
