// @ts-check
// What the box loads when it is first used: the search and, from search-data.js, all that it knows.
import { makeSearch } from "./answers.mjs";
import { fromLines } from "./index-pages.mjs";
import { lettersOf } from "./reading.mjs";

const given = /** @type {any} */ (globalThis);
given.linkwrightMakeSearch = () => {
  /** @type {Record<"data" | "cards" | "index" | "words" | "sections" | "phrases" | "known", string>} */
  const texts = given.linkwrightSearchData;
  given.linkwrightSearchData = null;
  const first = JSON.parse(texts.data);
  /** @type {any[][] | null} */
  let cards = null;
  /** @type {string[] | null} */
  let sections = null;
  /** @type {[string, number, string][] | null} */
  let known = null;
  /** @type {import("./types.mjs").Lexicon} */
  const lexicon = {
    ...first.lexicon,
    phrases: fromLines(texts.phrases),
    get known() { return (known ??= fromLines(texts.known).map(([word, ids]) => [word, lettersOf(word), ids])); },
  };
  /** @type {import("./types.mjs").SearchData} */
  const data = {
    ...first,
    lexicon,
    get cards() { return (cards ??= JSON.parse(texts.cards)); },
    get sections() { return (sections ??= texts.sections.split("\n")); },
  };
  const index = () => ({ rest: JSON.parse(texts.index), words: texts.words });
  return makeSearch(data, index, (key, facts = {}) => given.linkwrightFilled(data.words[key] ?? key, facts));
};
