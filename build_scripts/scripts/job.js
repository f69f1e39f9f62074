// @ts-check
/** The page of a job: it gathers what was typed in the job's worksheets in this window, and shows the page that Python makes of it. */

/** @param {HTMLElement} place @returns {Record<string, string[]>} the worksheets of each job */
const jobsOf = (place) => JSON.parse(place.dataset["job"] ?? "{}");

let jobTurns = 0;

async function showJob() {
  const place = document.querySelector("[data-job]");
  if (!(place instanceof HTMLElement)) return;
  const name = location.hash.slice(1);
  const sheets = jobsOf(place)[name];
  const chosen = sheets !== undefined;
  const turn = ++jobTurns;
  for (const one of document.querySelectorAll("[data-job-choice]")) one.toggleAttribute("hidden", chosen);
  place.toggleAttribute("hidden", !chosen);
  place.replaceChildren();
  delete place.dataset["verdict"];
  if (!chosen) return;
  const tell = (/** @type {string} */ text) => {
    const note = document.createElement("p");
    note.className = "state-note";
    note.textContent = text;
    place.replaceChildren(note);
  };
  tell(say("working"));
  try {
    await pythonRuns();
    const typed = Object.fromEntries(sheets.map((sheet) => [sheet, keptTyped.get(sheet)]).filter(([, fields]) => fields));
    const { root = "" } = place.dataset;
    const job = { name, typed, made_by: linkwrightBuild.code };
    const answer = await /** @type {any} */ (python).answer({ job, language: document.documentElement.lang, root });
    if (turn !== jobTurns) return; // another job was chosen meanwhile
    if (!answer.ok) throw new Error(answer.errors[0]?.said ?? "");
    place.replaceChildren(...answer.nodes.map((/** @type {TreeNode} */ node) => built(node)), printButton(Object.keys(typed).length > 0));
    place.dataset["verdict"] = answer.verdict;
  } catch (error) {
    if (turn === jobTurns) tell(say("stopped", { reason: inWords(error) }));
  }
}

/** @param {boolean} worth  whether there is anything to print */
function printButton(worth) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "plain-button script-only";
  button.hidden = !worth;
  button.textContent = say("job-print");
  button.addEventListener("click", () => print());
  return button;
}

addEventListener("hashchange", () => void showJob());
addEventListener("pageshow", (event) => event.persisted && void showJob());
document.addEventListener("linkwright-page", () => void showJob());
void showJob();
