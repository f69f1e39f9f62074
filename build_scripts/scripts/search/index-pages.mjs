// @ts-check
// The index of the pages: made at build with the words as the reader of the search knows them, loaded as it is in the page.
import MiniSearch from "minisearch";

import { makeReader } from "./reading.mjs";

/** @import { SearchData } from "./types.mjs" */

const MOST_OF_ONE_WORD = 3;

export const OPTIONS = {
  fields: ["title", "lead", "heads", "text"],
  idField: "id",
  tokenize: (/** @type {string} */ text) => text.split(" ").filter(Boolean),
  processTerm: (/** @type {string} */ term) => term,
};

/** Words that come often count three times at most: a long table of one word is no better answer. @param {string[]} tokens */
function thinned(tokens) {
  /** @type {Map<string, number>} */
  const counts = new Map();
  return tokens.filter((one) => {
    const count = (counts.get(one) ?? 0) + 1;
    counts.set(one, count);
    return count <= MOST_OF_ONE_WORD;
  }).join(" ");
}

/** The data with the index of its texts in place of the texts. @param {SearchData} data @returns {SearchData} */
export function indexed(data) {
  const { tokens } = makeReader(data, () => false);
  const made = new MiniSearch(OPTIONS);
  (data.texts ?? []).forEach((sections, id) => {
    const [title, , , description] = data.pages[id] ?? ["", "", "", ""];
    made.add({
      id,
      title: thinned(tokens(title)),
      lead: thinned(tokens(description)),
      heads: thinned(sections.slice(1).flatMap(([heading]) => tokens(heading))),
      text: thinned(sections.flatMap(([, , text]) => tokens(text))),
    });
  });
  const sections = (data.texts ?? []).map((parts) => parts.slice(1).filter(([heading, anchor]) => heading && anchor)
    .map(([heading, anchor]) => /** @type {[string, string]} */ ([heading, anchor])));
  const { texts: _, ...rest } = data;
  return { ...rest, sections, index: made.toJSON() };
}
