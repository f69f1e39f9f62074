// @ts-check
/** The worker of a served page: small, so that the parts are asked for before the engine's code has come. */
import { serve } from "./python-serving.js";

serve((plan) => import(`${plan.base}python-engine.mjs`));
