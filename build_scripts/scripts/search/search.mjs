// @ts-check
// What the box loads when it is first used: the search and, from search-data.js, all that it knows.
import { makeSearch } from "./answers.mjs";

const given = /** @type {any} */ (globalThis);
given.linkwrightMakeSearch = () => {
  const [known, ratings, index] = /** @type {[string, string, string]} */ (given.linkwrightSearchData);
  given.linkwrightSearchData = null;
  /** @type {any[][] | null} */
  let cards = null;
  /** @type {import("./types.mjs").SearchData} */
  const data = { ...JSON.parse(known), get cards() { return (cards ??= JSON.parse(ratings)); } };
  return makeSearch(data, () => JSON.parse(index), (key, facts = {}) => given.linkwrightFilled(data.words[key] ?? key, facts));
};
