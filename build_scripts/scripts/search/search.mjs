// @ts-check
// What the box loads when it is first used: the search and, from search-data.js, all that it knows.
import { makeSearch } from "./answers.mjs";

const given = /** @type {any} */ (globalThis);
given.linkwrightMakeSearch = () => {
  const [known, index] = /** @type {[string, string]} */ (given.linkwrightSearchData);
  given.linkwrightSearchData = null;
  /** @type {import("./types.mjs").SearchData} */
  const data = JSON.parse(known);
  return makeSearch(data, () => JSON.parse(index), (key, facts = {}) => given.linkwrightFilled(data.words[key] ?? key, facts));
};
