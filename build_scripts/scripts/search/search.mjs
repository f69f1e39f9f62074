// @ts-check
// What the box loads when it is first used: the search and, from search-data.js, all that it knows.
import { makeSearch } from "./answers.mjs";

const given = /** @type {any} */ (globalThis);
given.linkwrightMakeSearch = () => {
  /** @type {import("./types.mjs").SearchData} */
  const data = JSON.parse(given.linkwrightSearchData);
  given.linkwrightSearchData = "";
  return makeSearch(data, (key, facts = {}) => given.linkwrightFilled(data.words[key] ?? key, facts));
};
