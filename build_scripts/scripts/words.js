// @ts-check
/**
 * The words that the scripts of worksheets show. They stand in docs/words/LANG/page/live.ftl; the build puts them before
 * these scripts, and early.js puts in their facts.
 * @param {string} code
 * @param {Record<string, string | number>} [facts]
 * @returns {string}
 */
function say(code, facts = {}) {
  return globalThis.linkwrightFilled(linkwrightBuild.words[code] ?? code, facts);
}
