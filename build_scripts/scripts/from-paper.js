// @ts-check
/**
 * From paper and to paper: the box that takes the text of a printed sheet and opens its worksheets with the numbers, and the
 * page of a job, made of what was typed in its worksheets in this window. Python reads the text and makes the page. site.js
 * loads this on the pages that need it, once a visit.
 */
(() => {
  const book = /** @type {any} */ (globalThis).linkwright;
  const { python, keptTyped, say, built, inWords } = book;

  /** Resolves when Python runs; rejects with the reason where it cannot. @returns {Promise<void>} */
  function pythonRuns() {
    return new Promise((resolve, reject) => {
      const look = () => {
        if (python.state !== "live" && python.state !== "failed") return;
        python.removeEventListener("state", look);
        if (python.state === "live") resolve();
        else reject(new Error(python.reason));
      };
      python.addEventListener("state", look);
      python.start();
      look();
    });
  }

  /** @param {HTMLFormElement} form */
  async function bringBack(form) {
    const box = form.querySelector("textarea");
    const place = form.querySelector("[data-back-said]");
    if (!box || !place) return;
    place.textContent = say("back-working");
    try {
      await pythonRuns();
      const { root = "" } = form.dataset;
      const answer = await python.answer({ back: box.value, units: book.units(), language: document.documentElement.lang, root });
      if (!answer.ok) {
        place.textContent = answer.errors[0]?.said ?? "";
        box.setAttribute("aria-invalid", "true");
        box.focus();
        return;
      }
      for (const [sheet, fields] of Object.entries(answer.kept)) keptTyped.set(sheet, String(fields));
      place.textContent = "";
      // A click, so that the page is turned to as by any link.
      const link = document.createElement("a");
      link.href = answer.address;
      form.append(link);
      link.click();
      link.remove();
    } catch (error) {
      place.textContent = say("back-cannot-run", { reason: inWords(error) });
    }
  }

  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!(form instanceof HTMLFormElement) || form.dataset["back"] === undefined) return;
    event.preventDefault();
    void bringBack(form);
  });

  /** @param {HTMLElement} place @returns {Record<string, string[]>} the worksheets of each job */
  const jobsOf = (place) => JSON.parse(place.dataset["job"] ?? "{}");

  /**
   * What the kit of this device keeps of the parts that worksheets name; nothing where it may keep none.
   * @param {unknown[]} typed  as addresses hold it
   * @param {string} root
   * @returns {Promise<unknown[]>}
   */
  async function ownPartsIn(typed, root) {
    const numbers = typed.flatMap((fields) => [...new URLSearchParams(String(fields))].filter(([path]) => /(^|\.)own_number$/.test(path)).map(([, number]) => number));
    if (numbers.length === 0) return [];
    try {
      if (!book.ownParts) await /** @type {any} */ (globalThis).linkwrightScript(new URL(`${root}scripts/kit.js`, location.href));
      return await book.ownParts(numbers);
    } catch {
      return [];
    }
  }

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
      const job = { name, typed, made_by: book.code, kit: await ownPartsIn(Object.values(typed), root) };
      const answer = await python.answer({ job, language: document.documentElement.lang, root });
      if (turn !== jobTurns) return; // another job was chosen meanwhile
      if (!answer.ok) throw new Error(answer.errors[0]?.said ?? "");
      place.replaceChildren(...answer.nodes.map((/** @type {any} */ node) => built(node)), printButton(Object.keys(typed).length > 0));
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
})();
