// @ts-check
/**
 * The worker of a served page: small, so that the parts are asked for before the engine's code has come. One that is called
 * "early" was made where this device keeps the book (early.js), and does not wait to be told what to bring.
 */
import { serve } from "./python-serving.js";

const base = String(new URL(".", location.href));
serve((plan) => import(`${plan.base}python-engine.mjs`), /** @type {{name?: string}} */ (globalThis).name === "early" ? base : "");
