// @ts-check
// Which boxes of a worksheet a question fills: what was typed, in the reader's own unit, and never anything else. What could be
// meant otherwise fills nothing: the box is then left to the reader, who is asked for it.

/** @import { SearchData, Reading, Amount } from "./types.mjs" */

/** An angle is one of sling legs only where they are named: a shackle is pulled at 45 degrees too. */
const OF_SLINGS = /\b(?:legs?|\dlegs?|legged|slings?|bridle|spreader)\b/;
/** After one of these the number is not the load, or not all of it. */
const PART_OF_IT = /\b(?:two|three|four|five|six|seven|eight|nine|ten|both|pairs?|couple|dozen|each|every|per|half|plus|another|extra|\d+ ?x)\b/;
const AT_LEAST = /\b(?:over|above|exceeds?|more than|at least|minimum|min|up to|under|below|less than|about|around|between)\s*(?:about\s*)?\d/;
const RATED = /\b(?:rated|rating|wll|swl|capacity|limit|good for|working load|stamped|marked|tag|says)\b/;
/** An angle that is taken from somewhere else than the level load. */
const OTHER_ANGLE = /\b(?:vertical|between|included|apart|plumb|spread|tilt|tilted|slope|ramp|incline|choke|choked|choker)\b/;
/** A length is a bore only right beside its name. */
const BORE = /(?:\d|in|inch|inches|mm|cm|")\s*(?:bore|piston|cyl[a-z]*|ram)\b|\b(?:bore|piston)\s+(?:of\s+|is\s+)?\d/;
const FALL = /\b(?:drop|drops|dropped|droped|dropping|fall|falls|fell|falling|free ?fall)\b/;
const HOW_MANY = /\bhow many ([a-z]+)\b.*\d/;
const TO = /\b(?:to|in|into|as)\s+(?:how many\s+)?([a-z]+(?:\s+tons?)?)\s*\??\s*$/;

/** @param {Amount[]} amounts @param {string} kind @returns {Amount | null} the only one of its kind */
function only(amounts, kind) {
  const found = amounts.filter((one) => one.kind === kind);
  return found.length === 1 ? (found[0] ?? null) : null;
}

/**
 * What was typed, by the kinds that boxes ask for; a kind that is not sure is not there.
 * @param {Reading} reading @param {string} part the part that was named @param {SearchData} data
 * @returns {Record<string, string>}
 */
export function givenBy(reading, part, data) {
  const { amounts, asked } = reading;
  /** @type {Record<string, string>} */
  const given = {};
  if (reading.open.length || reading.unknown.some((one) => /\d/.test(one))) return given;
  const put = (/** @type {string} */ kind, /** @type {string | undefined} */ text) => {
    if (text) given[kind] = text;
  };
  const weight = only(amounts, "weight");
  if (weight && !weight.ofPart && !PART_OF_IT.test(reading.left) && !AT_LEAST.test(asked) && !RATED.test(asked)) put("weight", weight.text);
  const angle = only(amounts, "angle");
  if (angle && OF_SLINGS.test(asked) && !OTHER_ANGLE.test(asked)) put("angle", angle.text);
  put("legs", only(amounts, "legs")?.text);
  put("pressure", AT_LEAST.test(asked) ? "" : only(amounts, "pressure")?.text);
  put("temperature", only(amounts, "temperature")?.text);
  const length = only(amounts, "length");
  if (length && BORE.test(asked)) put("bore", length.text);
  // Where a part is named, a length can be its size.
  const ofNoPart = !reading.grades.length && reading.words.every((one) => !["part", "thing", "absent"].some((kind) => one.kinds.has(/** @type {any} */ (kind))));
  if (length && ofNoPart && FALL.test(asked) && !AT_LEAST.test(asked)) put("fall", length.text);
  if (part === "chain") {
    const names = [...new Set(reading.grades.flatMap((one) => data.grades[one]?.chain ?? []))];
    if (names.length === 1) put("grade", names[0]);
    if (length?.ofPart) put("size", length.text);
  }
  const hitches = ["choker", "basket"].filter((one) => new RegExp(`\\b${one}`).test(asked));
  if (hitches.length === 1) put("hitch", hitches[0]);
  const colours = data.colours.filter((one) => asked.includes(one.replaceAll("-", " ")));
  if (colours.length === 1) put("colour", colours[0]);
  if (amounts.length === 1) put("any", amounts[0]?.text);
  put("unit", (TO.exec(asked) ?? HOW_MANY.exec(asked))?.[1]);
  return given;
}

/**
 * The fields of the address with which a worksheet opens, and what they hold in words; null where it takes nothing of it.
 * @param {Record<string, string>} given @param {SearchData["fills"][string] | undefined} boxes
 * @returns {{fields: string, said: [kind: string, text: string][]} | null}
 */
export function filled(given, boxes) {
  if (!boxes) return null;
  const fields = new URLSearchParams();
  /** @type {[string, string][]} */
  const said = [];
  for (const [kind, of] of Object.entries(boxes)) {
    const text = given[kind];
    if (!text || (kind === "unit" && !given["any"])) continue;
    said.push([kind, text]);
    for (const [box, value] of Object.entries(of)) fields.set(box, value === "{}" ? text : value);
  }
  return said.length ? { fields: fields.toString(), said } : null;
}
