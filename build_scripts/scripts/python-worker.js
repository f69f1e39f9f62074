// @ts-check
/** The worker of a served page: Python apart from the page. */
import { serve } from "./python-serving.js";

serve();
