/** What the build puts before the page's scripts, and what scripts share through the global object. */
declare const linkwrightBuild: { edition: string; runtime: string; words: Record<string, any> };

/** The `info` of the lock file that Pyodide's release comes with; put in by the bundler. */
declare const LINKWRIGHT_RELEASE: { abi_version: string; arch: string; platform: string; python: string };

/** A pattern of the catalogue with its facts put in (early.js). */
declare var linkwrightFilled: (pattern: any, facts: Record<string, string | number>) => string;
declare var linkwright: { python: EventTarget; siteRoot: string; edition: string };
declare var linkwrightDiskPart: ((name: string, text: string) => void) | undefined;
declare var linkwrightMakeEngine: (() => unknown) | undefined;

declare module "pyodide/pyodide.asm.mjs" {
  const createPyodideModule: import("pyodide").CreatePyodideModuleFn;
  export default createPyodideModule;
}
