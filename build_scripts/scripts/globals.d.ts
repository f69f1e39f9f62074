/** What the build puts before the page's scripts, and what scripts share through the global object. */
declare const linkwrightBuild: {
  edition: string;
  /** Of all tables and code: pages and scripts of one build have the same. */
  code: string;
  runtime: string;
  /** SHA-256 of the runtime's parts by name, as `sha256-BASE64`. */
  sums: Record<string, string>;
  words: Record<string, any>;
};

/** Addresses of scripts and texts of pages, passed by the page's policy where the host demands one (early.js). */
declare var linkwrightTrusted: { script: (address: string | URL) => string; page: (text: string) => string };
/** Loads a script of the book, held against its checksum where the page names one (early.js). */
declare var linkwrightScript: (address: string | URL) => Promise<void>;

/** The worker of a worksheet, made before the page's script is there (early.js). */
declare var linkwrightEarly: { base: string; worker: Worker; hasFailed: boolean } | undefined;

/** Shorter limits of time, which a test sets before the page's scripts run. */
declare var linkwrightLimits: Record<string, number> | undefined;

/** The `info` of the lock file that Pyodide's release comes with; put in by the bundler. */
declare const LINKWRIGHT_RELEASE: { abi_version: string; arch: string; platform: string; python: string };

/** A pattern of the catalogue with its facts put in (early.js). */
declare var linkwrightFilled: (pattern: any, facts: Record<string, string | number>) => string;
declare var linkwright: { python: EventTarget; siteRoot: string; edition: string; code: string; runtime: string };
declare var linkwrightDiskPart: ((name: string, text: string) => void) | undefined;
declare var linkwrightMakeEngine: (() => unknown) | undefined;

declare module "pyodide/pyodide.asm.mjs" {
  const createPyodideModule: import("pyodide").CreatePyodideModuleFn;
  export default createPyodideModule;
}
