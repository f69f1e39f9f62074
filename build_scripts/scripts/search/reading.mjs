// @ts-check
// Reads what was typed: sizes, grades, legs and loads by the rules that the build hands over, then the words of the trade,
// the longest that fits. A word that is one slip away from a known one is read as that, and the answer says so.
import { stem } from "porter2";

/** @import { SearchData, Lexicon, Reading, Word, Concept } from "./types.mjs" */

const LONGEST_PHRASE = 6;
const LEAST_CORRECTED = 4;
const LONG = 8;
/** Angles that tables print: beside a number of legs a bare one of these is an angle. */
const ANGLES = [30, 45, 60, 90];
const WEIGHTS = { part: 1.5, thing: 1.5, absent: 1.5, term: 1.6, harmless: 0.35 };
const TEXT_WEIGHT = 1;
const GRADE_WEIGHT = 0.8;
const LIGHT_WEIGHT = 0.6;

/** Numbers with a unit, as the rules leave them, and how a box takes the unit where it is spelled otherwise. */
const AMOUNTS = /** @type {[RegExp, import("./types.mjs").Amount["kind"], Record<string, string>][]} */ ([
  [/^(\d+(?:\.\d+)?)(lb|kg|tonne|shortton|ton)$/, "weight", { shortton: "short tons", tonne: "tonnes", ton: "tons" }],
  [/^(\d+(?:\.\d+)?)(kn)$/, "force", { kn: "kN" }],
  [/^(\d+(?:\.\d+)?)(psi|bar)$/, "pressure", {}],
  [/^(\d+)temp([fc])$/, "temperature", { f: "°F", c: "°C" }],
  [/^(\d+)(deg)$/, "angle", {}],
  [/^((?:\d+-)?\d+\/\d+)(in)?$/, "length", {}],
  [/^(\d+(?:\.\d+)?)(in|mm|cm|ft)$/, "length", {}],
]);

/** British spelling, each with the American one that this book writes: both are one word to the search. */
const SPELLINGS = /** @type {[RegExp, string][]} */ ([
  [/colour/, "color"], [/fibre/, "fiber"], [/centre/, "center"], [/^metre/, "meter"], [/litre/, "liter"], [/aluminium/, "aluminum"],
  [/sulphur/, "sulfur"], [/grey/, "gray"], [/galvanis/, "galvaniz"], [/authoris/, "authoriz"], [/ageing/, "aging"],
  [/tyre/, "tire"], [/mould/, "mold"], [/levell/, "level"], [/labell/, "label"], [/travell/, "travel"], [/plough/, "plow"],
]);

/** @param {string} word */
const american = (word) => SPELLINGS.reduce((spelled, [british, ours]) => spelled.replace(british, ours), word);

/** @type {Map<string, string>} */
const stems = new Map();

/** @param {string} word */
export function stemmed(word) {
  let found = stems.get(word);
  if (found === undefined) {
    found = /^[a-z]{3,}$/.test(word) ? stem(american(word)) : word;
    stems.set(word, found);
  }
  return found;
}

/** The plain words of a running text. @param {string} text */
export function wordsOf(text) {
  return text.toLowerCase().replace(/['’]s\b/g, " ").replace(/[^\p{L}\p{N}/.]+/gu, " ").split(" ")
    .map((word) => word.replace(/^[./]+|[./]+$/g, "")).filter(Boolean);
}

/** How far two words are apart: letters put in, left out, changed, or two beside each other changed about.
 * @param {string} a @param {string} b @param {number} most */
export function slips(a, b, most) {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  /** @type {number[]} */ let before = [];
  let last = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    before = last;
    last = row;
  }
  return last[b.length] ?? most + 1;
}

/** Which letters a word has, as bits: two words with too many letters apart need no closer look. @param {string} word */
export function lettersOf(word) {
  let bits = 0;
  for (const letter of word) bits |= 1 << (letter.charCodeAt(0) - 97);
  return bits;
}

/** @param {number} bits */
function count(bits) {
  let left = bits;
  let found = 0;
  for (; left; left &= left - 1) found += 1;
  return found;
}

/**
 * What the reader looks words up in, made once at build: phrases by the stems of their words, and the whole words that a
 * slip may be taken for.
 * @param {SearchData} data
 * @returns {Lexicon}
 */
export function lexiconOf(data) {
  /** @type {Map<string, string[]>} */
  const phrases = new Map();
  /** @type {[string, string][]} */
  const gradeWords = [];
  /** @type {Set<string>} */
  const known = new Set();
  data.concepts.forEach((concept, place) => {
    for (const typed of concept.words) {
      const words = wordsOf(typed);
      const keys = [words.map(stemmed).join(" ")];
      const joined = words.length === 2 ? stemmed(words.join("")) : "";
      if (joined.length > (words[0] ?? "").length + 1) keys.push(joined);
      for (const key of keys) phrases.set(key, [...new Set([...(phrases.get(key) ?? []), `c${place}`])]);
      for (const word of words) if (/^[a-z]{4,}$/.test(word)) known.add(word);
      if (words.length === 2 && /^[a-z]{6,}$/.test(words.join(""))) known.add(words.join(""));
    }
  });
  for (const spelled of Object.keys(data.grades)) {
    if (!/^g(\d+|[a-z])$/.test(spelled)) gradeWords.push([wordsOf(spelled).map(stemmed).join(" "), spelled]);
    for (const word of wordsOf(spelled)) if (/^[a-z]{5,}$/.test(word)) known.add(word);
  }
  for (const [line] of data.asked) for (const word of wordsOf(line)) if (/^[a-z]{4,}$/.test(word)) known.add(word);
  return {
    phrases: [...phrases].map(([key, ids]) => [key, ids.join(" ")]), gradeWords, plain: [...new Set(data.plain.map(stemmed))],
    known: [...known].map((word) => [word, lettersOf(word), (phrases.get(stemmed(word)) ?? []).join(" ")]),
  };
}

/** @typedef {ReturnType<typeof makeReader>} Reader */

/**
 * @param {SearchData} data
 * @param {Lexicon} lexicon
 * @param {(stemOfWord: string) => boolean} inTexts whether a word stands in the pages
 */
export function makeReader(data, lexicon, inTexts) {
  const rules = data.rules.map(([pattern, put, counted]) => ({ pattern: new RegExp(pattern, "gu"), put, counted }));
  const kinds = data.kinds.map(([kind, pattern, unit]) => ({ kind, unit, pattern: new RegExp(pattern, "u") }));
  const plain = new Set(lexicon.plain);
  const own = new Set(data.own);
  const termOf = (/** @type {string} */ name) => `c${data.concepts.findIndex((one) => (one.kind === "term" || one.kind === "absent") && one.say === name)}`;
  const light = new Set(data.allowed.light.map(termOf));
  const together = Object.entries(data.together).map(([name, lists]) => ({ id: termOf(name), lists: lists.map((list) => new Set(list)) }));
  const phrases = new Map(lexicon.phrases);
  const idsOf = (/** @type {string} */ key) => phrases.get(key)?.split(" ");
  const gradeWords = new Map(lexicon.gradeWords);

  /** @param {string} text */
  function normal(text) {
    let low = ` ${text.toLowerCase()} `;
    for (const { pattern, put, counted } of rules) {
      // A count in words is written in figures where the rule says that one stands there.
      if (counted) low = low.replace(pattern, (_, first, second = "") => put.replace("$1", data.counts[first] ?? first).replace("$2", second));
      else low = low.replace(pattern, put);
    }
    return low.split(/\s+/).filter(Boolean);
  }

  const conceptOf = (/** @type {string} */ id) => /** @type {Concept} */ (data.concepts[Number(id.slice(1))]);

  /** @param {string[]} typed @param {string[]} ids @param {boolean} begun @returns {Word} */
  function word(typed, ids, begun = false) {
    const found = new Set(ids.filter((id) => id[0] === "c").map((id) => conceptOf(id).kind));
    const weight = (found.has("harmless") && found.size > 1) || ids.some((id) => light.has(id)) ? LIGHT_WEIGHT : Math.max(...[...found].map((kind) => WEIGHTS[kind]), 0);
    return { typed: typed.join(" "), ids, stems: typed.map(stemmed), kinds: found, weight, readAs: "", begun };
  }

  /** The longest phrase that begins here. @param {string[]} typed @param {string[]} stems @param {number} from */
  function phraseAt(typed, stems, from) {
    for (let length = Math.min(LONGEST_PHRASE, stems.length - from); length > 0; length--) {
      const part = stems.slice(from, from + length);
      const key = part.join(" ");
      const grade = gradeWords.get(key);
      if (grade) return { length, ids: [`grade:${grade}`] };
      const ids = idsOf(key) ?? (length === 2 ? idsOf(stemmed(typed.slice(from, from + 2).join(""))) : undefined);
      if (ids) return { length, ids };
    }
    return null;
  }

  /** The known word that a mistyped one is read as; empty where none is near, or two are as near.
   * @param {string} typed */
  function corrected(typed) {
    if (typed.length < LEAST_CORRECTED || own.has(typed) || !/^[a-z]+$/.test(typed)) return "";
    const most = typed.length < LONG ? 1 : 2;
    let best = most + 1;
    /** @type {string[]} */ let near = [];
    const letters = lettersOf(typed);
    for (const [one, bits, named] of lexicon.known) {
      if (!named || Math.abs(one.length - typed.length) > most || count(bits ^ letters) > 2 * most) continue;
      if (one.length < 5 && typed.length < 5) {
        // Of four letters only two changed about are a slip: hook and book are two words.
        if (one.length !== typed.length || [...one].sort().join("") !== [...typed].sort().join("")) continue;
      }
      const off = slips(typed, one, Math.min(best, most));
      if (off === 2 && one[0] !== typed[0]) continue;
      if (off < best) {
        best = off;
        near = [one];
      } else if (off === best && best <= most) near.push(one);
    }
    const meant = new Map(near.map((one) => [phrases.get(stemmed(one)) ?? stemmed(one), one]));
    if (meant.size === 1) return near[0] ?? "";
    // As near to two: the one that begins and ends as what was typed.
    const alike = [...meant.values()].filter((one) => one[0] === typed[0] && one.at(-1) === typed.at(-1));
    return alike.length === 1 ? alike[0] ?? "" : "";
  }

  /** The same for a word that is known only beside others: it must make one of their phrases.
   * @param {string[]} typed @param {string[]} stems @param {number} place */
  function correctedInPhrase(typed, stems, place) {
    const here = typed[place] ?? "";
    if (here.length < LEAST_CORRECTED || own.has(here) || !/^[a-z]+$/.test(here)) return "";
    const letters = lettersOf(here);
    for (const [one, bits, named] of lexicon.known) {
      if (named || one[0] !== here[0] || Math.abs(one.length - here.length) > 1 || count(bits ^ letters) > 2) continue;
      if (slips(here, one, 1) > 1) continue;
      const said = typed.map((word, i) => (i === place ? one : word));
      const meant = stems.map((word, i) => (i === place ? stemmed(one) : word));
      if ((phraseAt(said, meant, place)?.length ?? 0) > 1 || inPhrase(said, meant, place)) return one;
    }
    return "";
  }

  /** What a word that is only begun can become. @param {string} typed */
  function completed(typed) {
    if (typed.length < 2 || !/^[a-z]+$/.test(typed)) return [];
    const ids = new Set();
    for (const [one, , named] of lexicon.known) if (named && one.startsWith(typed)) for (const id of named.split(" ")) ids.add(id);
    return [...ids];
  }

  /** @param {string} text @returns {Reading} */
  function read(text) {
    const typed = normal(text);
    const stillTyping = !/\s$/.test(text);
    /** @type {Reading} */
    const found = {
      words: [], inches: [], millimetres: [], threads: [], grades: [], legs: "", angle: null, shortTons: null, open: [],
      unknown: [], unfinished: false, amounts: [], asked: text.toLowerCase().replace(/\s+/g, " "), left: typed.join(" "),
    };
    /** @type {Map<number, string>} */
    const slipped = new Map();
    const first = typed.map(stemmed);
    typed.forEach((one, place) => {
      const last = place === typed.length - 1 && stillTyping;
      if (!data.misspelt[one] && (/\d/.test(one) || plain.has(first[place] ?? "") || phraseAt(typed, first, place) || inPhrase(typed, first, place))) return;
      if (!data.misspelt[one] && (inTexts(stemmed(one)) || (last && completed(one).length))) return;
      const meant = data.misspelt[one] ?? (corrected(one) || correctedInPhrase(typed, first, place));
      if (meant) slipped.set(place, one);
      if (meant) {
        typed[place] = meant;
        first[place] = stemmed(meant);
      }
    });
    const stems = typed.map(stemmed);
    let partEnds = -1;
    for (let place = 0; place < typed.length; ) {
      const here = typed[place] ?? "";
      if (/^\dleg$/.test(here) && takeFigure(found, here)) {
        found.amounts.push({ kind: "legs", text: here[0] ?? "", ofPart: false });
        place += 1;
        continue;
      }
      const phrase = phraseAt(typed, stems, place);
      const grade = phrase?.ids[0]?.startsWith("grade:") ? phrase.ids[0].slice(6) : "";
      if (phrase && !(plain.has(here) && phrase.length === 1)) {
        const said = typed.slice(place, place + phrase.length);
        if (grade) takeGrade(found, grade, said);
        else {
          const made = word(said, phrase.ids);
          made.readAs = said.map((_, i) => slipped.get(place + i) ?? "").filter(Boolean).join(" ");
          found.words.push(made);
        }
        place += phrase.length;
        if (isPart(phrase.ids)) partEnds = place;
        continue;
      }
      place += 1;
      if (/\d/.test(here) && takeFigure(found, here)) {
        const beside = [typed[place - 2] ?? "", typed[place] ?? ""].some((one) => /^g(\d+|[a-z])$/.test(one));
        takeAmount(found, here, beside || partEnds === place - 1 || isPart(phraseAt(typed, stems, place)?.ids ?? []));
        continue;
      }
      if (plain.has(stemmed(here)) || here.length < 2) continue;
      if (inTexts(stemmed(here))) {
        found.words.push({ ...word([here], [`t${stemmed(here)}`]), weight: TEXT_WEIGHT, readAs: slipped.get(place - 1) ?? "" });
        continue;
      }
      const begun = place === typed.length && stillTyping ? completed(here) : [];
      if (begun.length) {
        const made = word([here], begun, true);
        const parts = begun.filter((id) => ["part", "thing", "absent"].includes(conceptOf(id).kind));
        // One part alone goes on like this: it counts as typed. Otherwise no number yet.
        if (begun.length === 1 && parts.length === 1) made.begun = false;
        else found.unfinished = true;
        found.words.push(made);
      } else found.unknown.push(slipped.get(place - 1) ?? here);
    }
    for (const { id, lists } of together) {
      if (lists.every((list) => typed.some((one) => list.has(one))) && !found.words.some((one) => one.ids.includes(id))) {
        // What made it up is said with it.
        found.words = found.words.filter((one) => !lists.some((list) => list.has(one.typed)));
        found.words.push(word([conceptOf(id).say], [id]));
      }
    }
    found.words = merged(found.words);
    return found;
  }

  /** One thing said twice counts once. @param {Word[]} words */
  function merged(words) {
    /** @type {Map<string, Word>} */
    const kept = new Map();
    for (const one of words) {
      const key = one.ids.join();
      const before = kept.get(key);
      if (!before) kept.set(key, one);
      else before.readAs ||= one.readAs;
    }
    return [...kept.values()];
  }

  /** Whether a word is the second or a later one of a phrase. @param {string[]} typed @param {string[]} stems @param {number} place */
  function inPhrase(typed, stems, place) {
    for (let from = Math.max(0, place - LONGEST_PHRASE + 1); from < place; from++) {
      const phrase = phraseAt(typed, stems, from);
      if (phrase && from + phrase.length > place) return true;
    }
    return false;
  }

  /** @param {Reading} found @param {string} spelled @param {string[]} typed */
  function takeGrade(found, spelled, typed) {
    found.grades.push(spelled);
    found.words.push({ ...word(typed, [`grade:${spelled}`, ...namesOf(spelled).map((name) => `grade:${name}`)]), weight: GRADE_WEIGHT });
  }

  /** @param {string} spelled */
  const namesOf = (spelled) => data.grades[spelled]?.chain ?? data.grades[spelled]?.shackle ?? [];

  /** @param {string[]} ids */
  const isPart = (ids) => ids.some((id) => id[0] === "c" && ["part", "thing", "absent"].includes(conceptOf(id).kind));

  /** A number with its unit, as boxes take it. @param {Reading} found @param {string} here @param {boolean} ofPart */
  function takeAmount(found, here, ofPart) {
    for (const [pattern, kind, units] of AMOUNTS) {
      const match = pattern.exec(here);
      if (!match || (kind === "angle" && Number(match[1]) > 90)) continue;
      const unit = units[match[2] ?? ""] ?? match[2] ?? "in";
      found.amounts.push({ kind, text: `${match[1]} ${unit}`, ofPart });
      return;
    }
  }

  /** A word with a figure in it; false where it is none that is known. @param {Reading} found @param {string} here */
  function takeFigure(found, here) {
    for (const { kind, unit, pattern } of kinds) {
      const match = pattern.exec(here);
      if (!match) continue;
      const value = Number(match[1]);
      if (kind === "size" && unit === "fraction") found.inches.push(Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]));
      else if (kind === "size" && unit === "inch") found.inches.push(value);
      else if (kind === "size") found.millimetres.push(unit === "cm" ? value * 10 : value);
      else if (kind === "thread") found.threads.push(here);
      else if (kind === "grade") takeGrade(found, here, [here]);
      else if (kind === "legs") {
        found.legs = match[1] === "4" ? "3" : match[1] ?? "";
        found.words.push(word([here], idsOf(here) ?? []));
      } else if (kind === "angle" && value <= 90) {
        found.angle = value;
        found.words.push({ ...word([here], [termOf("sling angle")]), weight: LIGHT_WEIGHT });
      } else if (kind === "temperature" || kind === "angle") found.words.push(word([here], [termOf("temperature")]));
      else if (kind === "psi") found.words.push(word([here], [termOf(kind)]));
      else if (kind === "load") {
        if (/ton$/.test(match[2] ?? "")) found.shortTons = value;
      } else if (inTexts(here)) {
        found.words.push({ ...word([here], [`t${here}`]), weight: TEXT_WEIGHT });
        found.open.push(here);
      } else if (found.legs && ANGLES.includes(value)) found.angle = value;
      else if (data.grades[`g${here}`] && value >= 30) takeGrade(found, `g${here}`, [here]);
      else found.open.push(here);
      return true;
    }
    return false;
  }

  /** The words of a running text as the index keeps them: its stems, and every phrase of the trade in it.
   * @param {string} text */
  function tokens(text) {
    const typed = wordsOf(text);
    const stems = typed.map(stemmed);
    /** @type {string[]} */
    const kept = [];
    stems.forEach((one, place) => {
      if (!/^[\d./]+$/.test(one) || /^\d{4}$/.test(one)) if (!plain.has(one) && one.length > 1) kept.push(`t${one}`);
      for (let length = Math.min(LONGEST_PHRASE, stems.length - place); length > 0; length--) {
        const key = stems.slice(place, place + length).join(" ");
        kept.push(...(idsOf(key) ?? []));
        const grade = gradeWords.get(key);
        if (grade) kept.push(...namesOf(grade).map((name) => `grade:${name}`));
      }
      const grade = /^grade$/.test(one) && stems[place + 1];
      if (grade) kept.push(...namesOf(`g${grade}`).map((name) => `grade:${name}`));
    });
    return kept;
  }

  return { read, tokens, conceptOf, namesOf };
}
