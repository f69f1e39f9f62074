// @ts-check
/** The box that takes the text of a printed sheet and opens its worksheets with the numbers. What the text says is read in Python. */

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
    const answer = await /** @type {any} */ (python).answer({ back: box.value, units: chosenUnits(), language: document.documentElement.lang, root });
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
