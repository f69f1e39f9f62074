// @ts-check
/** The kit's script: loaded by site.js on the pages that need it, and once a visit. */
import { listen } from "./judged.mjs";
import { takeOver } from "./page.mjs";
import { listenForPicks } from "./pick.mjs";

document.addEventListener("linkwright-page", takeOver);
takeOver();
listen();
listenForPicks();
