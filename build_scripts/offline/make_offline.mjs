// @ts-check
/**
 * Writes the service worker with the list of the edition's files, and the icons.
 *
 *   node build_scripts/offline/make_offline.mjs SITE MARK.svg
 */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Resvg } from "@resvg/resvg-js";
import { build } from "esbuild";
import { injectManifest } from "workbox-build";
import { oldestBrowsers } from "../browsers.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const [site = "", mark = ""] = process.argv.slice(2);
if (!site || !mark) throw new Error("usage: make_offline.mjs SITE MARK.svg");

mkdirSync(join(site, "icons"), { recursive: true });
for (const width of [180, 192, 512]) {
  const drawing = new Resvg(readFileSync(mark, "utf8"), { fitTo: { mode: "width", value: width } });
  writeFileSync(join(site, "icons", `icon-${width}.png`), drawing.render().asPng());
}

const bundled = join(site, "offline-worker.bundle.js");
await build({
  entryPoints: [join(here, "offline-worker.js")],
  outfile: bundled,
  bundle: true,
  minify: true,
  format: "iife",
  target: oldestBrowsers(),
  legalComments: "none",
  logLevel: "error",
  define: { "process.env.NODE_ENV": '"production"' },
});

const made = await injectManifest({
  swSrc: bundled,
  swDest: join(site, "offline-worker.js"),
  globDirectory: site,
  globPatterns: ["**/*"],
  globIgnores: [
    "offline-worker*.js",
    "**/*.map",
    "**/*.gz",
    "sitemap.xml",
    // All tables at once, for other programs: too large for a phone. The archive of the same is small, and is kept.
    "look-up/datapackage.json",
    "look-up/linkwright-tables.json",
    "look-up/linkwright-tables.sqlite",
    // For the folder opened from disk, and for the road that is taken when all others fail (needs the network).
    "runtime/*/disk/**",
    "runtime/*/python_stdlib.zip",
    "runtime/*/pyodide-lock.json",
    "runtime/*/*.whl",
  ],
  maximumFileSizeToCacheInBytes: 40_000_000,
  // The name of the runtime's folder is a hash of its content: no second download under another address.
  dontCacheBustURLsMatching: /^runtime\/[0-9a-f]{16}\//,
  manifestTransforms: [
    (entries) => ({
      manifest: entries.map((entry) => ({
        ...entry,
        bytes: entry.size, // the worker tells how much it keeps
        integrity: `sha256-${createHash("sha256").update(readFileSync(join(site, entry.url))).digest("base64")}`,
      })),
      warnings: [],
    }),
  ],
});
rmSync(bundled);
for (const warning of made.warnings) console.error(warning);
console.log(JSON.stringify({ files: made.count, bytes: made.size }));
