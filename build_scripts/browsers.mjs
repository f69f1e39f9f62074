// @ts-check
/** The oldest browsers that are built for, as esbuild names them: ["chrome111", ...]. */
import { readFileSync } from "node:fs";

/** @returns {string[]} */
export function oldestBrowsers() {
  /** @type {Record<string, string>} */
  const oldest = JSON.parse(readFileSync(new URL("browsers.json", import.meta.url), "utf8"));
  return Object.entries(oldest).map(([engine, version]) => (engine === "chromium" ? "chrome" : engine) + version);
}
