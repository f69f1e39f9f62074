// @ts-check
/** Prints the scripts, of those given after their targets, that hold syntax newer than these: newer_syntax.mjs TARGETS FILE... */
import { readFileSync } from "node:fs";
import { transform } from "esbuild";

const [targets = "", ...files] = process.argv.slice(2);
for (const file of files) {
  const code = readFileSync(file, "utf8");
  const [asItIs, lowered] = await Promise.all([transform(code, { target: "esnext" }), transform(code, { target: targets.split(",") })]);
  if (asItIs.code !== lowered.code) console.log(file);
}
