// @ts-check
// The index of the pages: made at build with the words as the reader of the search knows them, loaded as it is in the page.
import MiniSearch from "minisearch";

import { lexiconOf, makeReader } from "./reading.mjs";

/** @import { SearchData, Line } from "./types.mjs" */

const MOST_OF_ONE_WORD = 3;
const ANY_PART_WEIGHT = 1.5;

export const OPTIONS = {
  fields: ["title", "lead", "heads", "text"],
  idField: "id",
  tokenize: (/** @type {string} */ text) => text.split(" ").filter(Boolean),
  processTerm: (/** @type {string} */ term) => term,
};

/** Pairs as one text, a line each: a slow phone cuts it into lines much faster than it parses as many lists. @param {[string, string][]} pairs */
export const asLines = (pairs) => pairs.map((pair) => pair.join("\t")).join("\n");

/** The pairs of such a text. @param {string} text @returns {[string, string][]} */
export const fromLines = (text) => text.split("\n").map((line) => {
  const cut = line.indexOf("\t");
  return [line.slice(0, cut), line.slice(cut + 1)];
});

/**
 * The index as the page keeps it: what stands of each word apart, so that a word is taken into MiniSearch when it is first
 * asked for. To read all of them at once would take a slow phone longer than all else that the search does at its start.
 * @param {any} index what MiniSearch writes of itself
 */
export function apart({ index, ...rest }) {
  return { rest, words: asLines(index.map((/** @type {[string, any]} */ [word, where]) => [word, JSON.stringify(where)])) };
}

/** The words of the pages, of an index that was set apart. @param {{rest: any, words: string}} kept */
export function openTexts({ rest, words }) {
  const kept = new Map(fromLines(words));
  /** @type {Map<string, [string, any]>} */
  const taken = new Map();
  /** @type {MiniSearch | null} */
  let made = null;
  const has = (/** @type {string} */ word) => kept.has(word);
  /** @param {string[]} terms @param {import("minisearch").SearchOptions} options */
  function search(terms, options) {
    for (const term of terms.filter((one) => has(one) && !taken.has(one))) {
      taken.set(term, [term, JSON.parse(kept.get(term) ?? "{}")]);
      made = null;
    }
    made ??= MiniSearch.loadJS(/** @type {any} */ ({ ...rest, index: [...taken.values()] }), OPTIONS);
    return made.search(terms.join(" "), options);
  }
  return { has, search };
}

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
  const lexicon = lexiconOf(data);
  const { tokens } = makeReader(data, lexicon, () => false);
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
  const { read } = makeReader(data, lexicon, (one) => made.search(`t${one}`).length > 0);
  const lines = data.asked.map(([line, page, said]) => {
    const words = line.split(/(\{part\})/).filter((piece) => piece.trim()).flatMap((piece) => {
      if (piece === "{part}") return [/** @type {[string, number]} */ (["", ANY_PART_WEIGHT])];
      return read(`${piece.trim()} `).words.map((one) => /** @type {[string, number]} */ ([one.ids.join(" "), one.weight]));
    });
    return /** @type {Line} */ ([page, said, words]);
  });
  /** @type {Record<string, number[]>} */
  const linesOf = {};
  lines.forEach((line, place) => {
    for (const id of new Set(line[2].flatMap(([ids]) => ids.split(" ").filter(Boolean)))) (linesOf[id] ??= []).push(place);
  });
  const sections = (data.texts ?? []).map((parts) => parts.slice(1).filter(([heading, anchor]) => heading && anchor)
    .map(([heading, anchor]) => /** @type {[string, string, string[]]} */ ([heading, anchor, [...new Set(tokens(heading))]])))
    .map((one) => JSON.stringify(one));
  const titles = data.pages.map(([title]) => [...new Set(tokens(title))]);
  const { texts: _, concepts, ...rest } = data;
  return {
    ...rest, concepts: concepts.map((one) => ({ ...one, words: [] })), asked: [], plain: [],
    lexicon, lines, linesOf, sections, titles, index: apart(made.toJSON()),
  };
}
