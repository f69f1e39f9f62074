// @ts-check
// Answers what was read. A number stands only where every word was understood, one part is named, and its size is printed;
// everything else leads to pages, to a sentence, or back to the box with a part to choose.
import { filled, givenBy } from "./fills.mjs";
import { openTexts } from "./index-pages.mjs";
import { makeReader, stemmed } from "./reading.mjs";

/** @import { SearchData, Card, Line, Reading, Result, Word, Answer } from "./types.mjs" */
/** @typedef {(key: string, facts?: Record<string, string | number>) => string} Say */

const FIRST = 3;
const MOST_PAGES = 8;
const LEAST_SCORE = 0.16;
const TEXT_SHARE = 0.45;
const UNSAID = 0.4;
const EXACT = 0.1;
const ALL_SAID = 0.95;
const UNMET_HARMLESS = 0.1;
const ANY_PART = 0.97;
const BOOST = { title: 4, lead: 2, heads: 2, text: 1 };
const SAME = 1e-6;
const SURE = 0.85;
const TELLING = 1;

/** A size in inches as a shop writes it. @param {number} inches */
export function fraction(inches) {
  for (const parts of [1, 2, 4, 8, 16, 32]) {
    const over = inches * parts;
    if (Math.abs(over - Math.round(over)) > SAME) continue;
    const whole = Math.floor(Math.round(over) / parts);
    const rest = Math.round(over) - whole * parts;
    if (!rest) return String(whole);
    return `${whole ? `${whole}-` : ""}${rest}/${parts}`;
  }
  return String(inches);
}

/**
 * @param {SearchData} data
 * @param {() => any} index reads the index of the pages, which is done when it is first asked
 * @param {Say} say
 */
export function makeSearch(data, index, say) {
  /** @type {ReturnType<typeof openTexts> | null} */
  let loaded = null;
  const texts = () => (loaded ??= openTexts(index()));
  const lexicon = data.lexicon ?? { phrases: [], gradeWords: [], plain: [], known: [] };
  const { read, conceptOf, namesOf } = makeReader(data, lexicon, (one) => texts().has(`t${one}`));
  const partAt = data.cardFields.indexOf("part");
  /** @type {Map<string, Card[]>} */
  const made = new Map();

  /** The ratings of a part. @param {string} part */
  function cardsOf(part) {
    let found = made.get(part);
    if (!found) {
      found = [];
      for (const row of data.cards) {
        if (row[partAt] !== part) continue;
        /** @type {any} */
        const card = {};
        for (const [i, name] of data.cardFields.entries()) card[name] = row[i];
        found.push(card);
      }
      made.set(part, found);
    }
    return found;
  }

  const idOf = new Map(data.concepts.map((concept, place) => [`${concept.kind}:${concept.say}`, `c${place}`]));
  const idsOf = (/** @type {string[]} */ names) => new Set(names.flatMap((name) =>
    ["term", "harmless", "thing"].map((kind) => idOf.get(`${kind}:${name}`) ?? "").filter(Boolean)));
  const allowed = idsOf(data.allowed.terms);
  const lifting = idsOf(data.allowed.lift);
  const hauling = idsOf(data.allowed.haul);

  // ---- numbers

  /** The part that a question is of; a grade of chain that nothing else could bear names chain. @param {Reading} reading */
  function partOf(reading) {
    const named = new Set(reading.words.filter((one) => !one.begun && one.kinds.has("part"))
      .map((one) => one.ids.map(conceptOf).find((concept) => concept?.kind === "part")?.say ?? ""));
    if (named.size > 1) return { part: "", many: true };
    const [only = ""] = named;
    if (reading.words.some((one) => one.kinds.has("absent"))) return { part: "", many: false };
    if (reading.words.some((one) => one.kinds.has("thing"))) return { part: "", many: only !== "" };
    if (only) return { part: only, many: false };
    const sure = reading.grades.some((one) => !/^g(\d|[a-z])$/.test(one)) || (reading.grades.length && reading.millimetres.length);
    return { part: sure && !reading.grades.includes("alloy") ? "chain" : "", many: false };
  }

  /** Whether nothing that was typed can change what a part may carry. @param {Reading} reading */
  function plainQuestion(reading) {
    return !reading.unknown.length && !reading.unfinished && !reading.open.length && reading.words.every((one) =>
      one.kinds.has("part") || one.kinds.has("harmless") || one.ids.some((id) => allowed.has(id) || id.startsWith("grade:")));
  }

  /** @param {Reading} reading @param {Set<string>} ids */
  const says = (reading, ids) => reading.words.some((one) => !one.begun && one.ids.some((id) => ids.has(id)));

  /** @param {Reading} reading @param {string} name */
  const saysTerm = (reading, name) => says(reading, idsOf([name]));

  /** The grades that were named, as this part has them; null where one is not known. @param {Reading} reading @param {string} part */
  function gradesOf(reading, part) {
    /** @type {string[] | null} */
    let names = null;
    for (const spelled of reading.grades) {
      const meant = data.grades[spelled]?.[part === "shackle" ? "shackle" : "chain"] ?? [];
      names = names === null ? meant : names.filter((one) => meant.includes(one));
      if (!names.length) return null;
    }
    return names ?? [];
  }

  /** @param {Reading} reading @param {Card} card */
  function ofSize(reading, card) {
    if (reading.threads.length) return reading.threads.includes(card.thread);
    if (reading.inches.length) return reading.inches.some((one) => card.inch > 0 && Math.abs(one - card.inch) < 0.0006);
    if (reading.millimetres.length) return reading.millimetres.some((one) => card.mm > 0 && Math.abs(one - card.mm) < SAME);
    return reading.shortTons !== null && Math.abs(card.short_tons - reading.shortTons) < SAME;
  }

  /** @param {Reading} reading @param {Card} card */
  function asHeld(reading, card) {
    if (reading.legs && !card.legs.split("-").includes(reading.legs)) return false;
    if (reading.angle !== null && (reading.angle < card.flattest || reading.angle > card.steepest)) return false;
    for (const hitch of ["choker", "basket"]) if (saysTerm(reading, `${hitch} hitch`) && card.hitch !== hitch) return false;
    return true;
  }

  /** The ratings that were asked for, the likeliest first. @param {Reading} reading @param {string} part @param {string[]} grades */
  function rated(reading, part, grades) {
    const sized = reading.millimetres.length > 0 || reading.threads.length > 0;
    const order = (/** @type {Card} */ card) => [
      Number(card.metric !== sized),
      grades.length ? Math.max(grades.indexOf(card.grade), 0) : 0,
      card.legs === "" || card.legs === "1" || reading.legs ? 0 : 1,
      card.hitch === "straight" || asHeldBy(reading) ? 0 : 1,
      card.rank,
      -card.steepest,
    ];
    return cardsOf(part).filter((card) => ofSize(reading, card) && asHeld(reading, card)
      && (!grades.length || !card.grade || grades.includes(card.grade)))
      .map((card) => ({ card, order: order(card) }))
      .sort((a, b) => a.order.map((one, i) => one - (b.order[i] ?? 0)).find((off) => off) ?? 0)
      .map(({ card }) => card);
  }

  /** @param {Reading} reading */
  const asHeldBy = (reading) => saysTerm(reading, "choker hitch") || saysTerm(reading, "basket hitch");

  /** @param {string} part */
  const nameOf = (part) => data.concepts.find((one) => one.kind === "part" && one.say === part)?.name ?? part;

  /** @param {string} text */
  const smaller = (text) => text.replace(/(^|, )(\p{Lu})(?=\p{Ll})/gu, (_, before, letter) => before + letter.toLowerCase());

  /** @param {Card} card @returns {Result} */
  const cardResult = (card) => ({
    type: "card",
    title: say("named", { part: nameOf(card.part), label: withName(card) }),
    value: card.answer, text: card.use_words, address: card.address, query: "",
    sign: card.use === "tie_down" ? "tie-down" : card.use === "lift" ? "lift" : "stop",
  });

  /** @param {Card} card */
  function withName(card) {
    const name = card.part === "chain" && data.gradeNames[card.grade];
    const label = smaller(card.label);
    return name && !label.includes(name) ? label.replace(`grade ${card.grade}`, say("grade-named", { grade: card.grade, name })) : label;
  }

  /** The answer for chain that never lifts, where lifting was asked for. @param {Reading} reading @param {string[]} grades @returns {Result} */
  function neverLifts(reading, grades) {
    const down = reading.inches.length + reading.millimetres.length ? rated(reading, "chain", grades).find((card) => card.use === "tie_down") : undefined;
    const grade = grades[0] ?? "";
    const name = data.gradeNames[grade] ?? "";
    return {
      type: "never",
      title: say("named", { part: nameOf("chain"), label: down ? withName(down) : say("grade-named", { grade, name }) }),
      value: say("never-lifts"), sign: "stop", query: "",
      text: down ? say("ties-down", { answer: down.answer }) : say("only-ties-down"),
      address: down?.address ?? data.pages.find(([, address]) => address.endsWith("which-chain-may-lift.html"))?.[1] ?? "",
    };
  }

  /** Numbers, and what is said about them. @param {Reading} reading @returns {{results: Result[], note: string}} */
  function numbers(reading) {
    const { part, many } = partOf(reading);
    const sizes = reading.inches.length + reading.millimetres.length + reading.threads.length;
    const sized = sizes || (reading.shortTons !== null && part === "shackle");
    const ofParts = reading.words.every((one) => one.kinds.has("part") || one.kinds.has("thing") || one.kinds.has("harmless") || one.ids.some((id) => allowed.has(id) || id.startsWith("grade:")));
    if (many && sizes) return { results: [], note: ofParts ? say("two-parts") : "" };
    if (reading.open.length && part && !sizes && !reading.unknown.length) return { results: [], note: say("open-number", { number: reading.open[0] ?? "" }) };
    if (reading.unknown.length && !part && !many && sizes && !reading.grades.length && reading.words.every((one) => one.kinds.has("harmless"))) return { ...partsOf(reading), note: "" };
    if (!plainQuestion(reading)) return { results: [], note: "" };
    if (!part) return sized && reading.words.every((one) => one.kinds.has("harmless") || one.ids.some((id) => allowed.has(id) || id.startsWith("grade:"))) ? partsOf(reading) : { results: [], note: "" };
    const grades = gradesOf(reading, part);
    if (grades === null) return { results: [], note: say("unknown-grade", { grade: reading.grades.map((one) => one.replace(/^g/, "")).join(", ") }) };
    const lift = says(reading, lifting);
    const haul = says(reading, hauling);
    if (part === "chain" && lift && !haul && grades.length && grades.every((one) => data.lifts[one] === false)) {
      return { results: [neverLifts(reading, grades)], note: "" };
    }
    if (!sized || sizes > 1) return { results: [], note: sizes > 1 ? say("two-parts") : "" };
    let found = rated(reading, part, grades);
    if (lift && !haul) found = found.filter((card) => card.use !== "tie_down");
    if (haul && !lift) found = found.filter((card) => card.use === "tie_down" || cardsOf(part).every((one) => one.use !== "tie_down"));
    if (found.length) return { results: found.map(cardResult), note: "" };
    return { results: [], note: noSuch(reading, part, grades) };
  }

  /** @param {Reading} reading @param {string} part @param {string[]} grades */
  function noSuch(reading, part, grades) {
    const what = [smaller(nameOf(part)), ...read2words(reading).slice(1)].join(", ");
    const inches = [...new Set(cardsOf(part).filter((card) => card.inch && (!grades.length || grades.includes(card.grade))).map((card) => card.inch))];
    if (!inches.length || reading.inches.some((size) => inches.some((one) => Math.abs(one - size) < 0.0006)) || reading.millimetres.length || reading.threads.length) return say("no-rating", { what });
    return say("no-rating-sizes", { what, sizes: say("inches", { size: inches.sort((a, b) => a - b).map(fraction).join(", ") }) });
  }

  /** The parts that have a size, where no part was named. @param {Reading} reading @returns {{results: Result[], note: string}} */
  function partsOf(reading) {
    const size = sizeWords(reading)[0] ?? "";
    const parts = [...new Set(data.cards.map((row) => /** @type {string} */ (row[partAt])))].filter((part) => cardsOf(part).some((card) => ofSize(reading, card)));
    const graded = reading.grades.length ? parts.filter((part) => part === "chain" || part === "shackle") : parts;
    const kept = reading.grades.length ? graded.filter((part) => rated(reading, part, gradesOf(reading, part) ?? ["-"]).length) : graded;
    return {
      note: kept.length ? say("which-part", { size }) : "",
      results: kept.map((part) => ({
        type: "part", title: say("part-of-size", { part: nameOf(part), size }), value: "", text: say("see-rating"), address: "", sign: "",
        query: [part, ...reading.grades.map((one) => one.replace(/^g/, "grade ")), size].join(" "),
      })),
    };
  }

  // ---- pages

  /** How well an asked line fits, from 0 to 1. @param {Word[]} words @param {Line} line */
  function fit(words, [, , line]) {
    let total = 0;
    let met = 0;
    let wild = 0;
    let named = 0;
    /** @type {Set<number>} */
    const used = new Set();
    for (const one of words) {
      let place = line.findIndex(([ids], i) => !used.has(i) && ids.split(" ").some((id) => one.ids.includes(id)));
      let share = one.begun ? 0.8 : 1;
      if (place >= 0) named += 1;
      if (place < 0 && (one.kinds.has("part") || one.kinds.has("thing") || one.kinds.has("absent"))) {
        place = line.findIndex(([ids], i) => !used.has(i) && !ids);
        share = ANY_PART;
        if (place >= 0) wild += 1;
      }
      // A word that changes nothing, and is not met, takes little away.
      total += place < 0 && one.kinds.has("harmless") ? UNMET_HARMLESS : one.weight;
      if (place < 0) continue;
      used.add(place);
      met += one.weight * share;
    }
    if (wild && !named) return 0; // "weld any part" does not answer for a part alone
    const unsaid = line.reduce((sum, [, weight], i) => sum + (used.has(i) ? 0 : weight), 0);
    return total ? met / (total + UNSAID * unsaid) : 0;
  }

  /** @param {Reading} reading @returns {{page: number, score: number, said: string, best: number}[]} */
  function pagesFor(reading) {
    const words = reading.words.filter((one) => one.weight > 0);
    if (!words.length) return [];
    /** @type {Map<number, {page: number, score: number, said: string, best: number}>} */
    const found = new Map();
    const at = (/** @type {number} */ page) => {
      const old = found.get(page) ?? { page, score: 0, said: "", best: 0 };
      found.set(page, old);
      return old;
    };
    const near = new Set(words.flatMap((one) => one.ids).flatMap((id) => data.linesOf?.[id] ?? []));
    for (const place of [...near].sort((a, b) => a - b)) {
      const line = /** @type {Line} */ (data.lines?.[place]);
      const score = fit(words, line);
      if (score < 0.3) continue;
      const here = at(line[0]);
      if (score > here.best + SAME) Object.assign(here, { best: score, said: score > 0.85 ? line[1] : "" });
    }
    const total = words.reduce((sum, one) => sum + one.weight, 0);
    const terms = words.flatMap((one) => one.ids.filter((id) => !id.startsWith("grade:g")).map((id) => ({ id, one })));
    const hits = texts().search(terms.map(({ id }) => id), { boost: BOOST, combineWith: "OR" });
    const top = hits[0]?.score ?? 1;
    for (const hit of hits) {
      const met = new Set(terms.filter(({ id }) => hit.queryTerms.includes(id)).map(({ one }) => one));
      const share = [...met].reduce((sum, one) => sum + one.weight, 0) / total;
      at(Number(hit.id)).score += TEXT_SHARE * share * share * Math.sqrt(hit.score / top);
    }
    // A line that says all that was asked, and no more, goes before a page whose text only has the words more often.
    for (const one of found.values()) one.score += one.best * one.best + (one.best > ALL_SAID ? EXACT : 0);
    const sorted = [...found.values()].sort((a, b) => b.score - a.score);
    const good = sorted.filter((one) => one.score >= LEAST_SCORE);
    return good.length >= FIRST ? good : sorted.slice(0, FIRST);
  }

  /** The part of a page that has more of the words than its title. @param {Reading} reading @param {number} page */
  function sectionOf(reading, page) {
    const title = new Set(data.titles?.[page]);
    const wanted = reading.words.flatMap((one) => one.ids).filter((id) => !title.has(id));
    let best = { count: 0, heading: "", anchor: "" };
    /** @type {import("./types.mjs").Sections} */
    const sections = wanted.length ? JSON.parse(data.sections?.[page] ?? "[]") : [];
    for (const [heading, anchor, here] of sections) {
      const count = wanted.filter((id) => here.includes(id)).length;
      if (count > best.count) best = { count, heading, anchor };
    }
    return best;
  }

  /** The row of a table that was named, by its size or by the words of its material. @param {Reading} reading @param {string} address */
  function rowOf(reading, address) {
    const [size] = reading.inches;
    const sized = size === undefined ? undefined : data.rowsBySize[address]?.find(([inches]) => Math.abs(inches - size) < 0.0006);
    if (sized) return { cell: sized[1], label: say("inches", { size: fraction(sized[0]) }) };
    const stems = reading.words.flatMap((one) => one.stems);
    let best = { met: 0, spare: 0, cell: "", label: "" };
    for (const [label, cell] of data.rowsByName[address] ?? []) {
      const words = label.split(" ").map(stemmed);
      const met = words.filter((one) => stems.includes(one)).length;
      const spare = words.length - met;
      if (met > best.met || (met && met === best.met && spare < best.spare)) best = { met, spare, cell, label };
    }
    return best.met ? best : null;
  }

  /** @param {Reading} reading @param {number} page @param {string} said @returns {Result} */
  function pageResult(reading, page, said) {
    const [title, address, kind, description] = data.pages[page] ?? ["", "", "", ""];
    const opens = filled(givenBy(reading, partOf(reading).part, data), data.fills[address]);
    if (opens) return { type: said ? "said" : "page", title, value: said, text: say("opens-with", { boxes: opens.said.map(inWords).join(", ") }), address: `${address}#${opens.fields}`, sign: said ? "stop" : "", query: "" };
    const row = said ? null : rowOf(reading, address);
    if (row) return { type: "page", title, value: "", text: say("row", { row: row.label }), address: `${address}#${row.cell}`, sign: "", query: "" };
    const { heading, anchor } = said ? { heading: "", anchor: "" } : sectionOf(reading, page);
    const known = ["table", "sheet", "list"].includes(kind) ? kind : "text";
    return {
      type: said ? "said" : "page", title, value: said,
      text: said ? "" : heading || description || say(`kind-${known}`), address: anchor ? `${address}#${anchor}` : address,
      sign: said ? "stop" : "", query: "",
    };
  }

  /** What a box is filled with, as the reader is told. @param {[kind: string, text: string]} filling */
  function inWords([kind, text]) {
    if (kind === "legs") return say("legs", { count: Number(text) });
    if (kind === "angle") return say("from-the-horizontal", { angle: text.replace(" deg", "°") });
    if (kind === "grade") return say("grade", { grade: text });
    if (kind === "unit") return say("unit-wanted", { unit: text });
    return text.replaceAll("-", kind === "colour" ? " " : "-");
  }

  // ---- how it was read

  /** @param {Reading} reading */
  function sizeWords(reading) {
    return [
      ...reading.inches.map((one) => say("inches", { size: fraction(one) })),
      ...reading.millimetres.map((one) => say("millimetres", { size: one })),
      ...reading.threads.map((one) => one.toUpperCase()),
    ];
  }

  /** What was understood, in the words of the trade: the part first, then grade and size, then the rest. @param {Reading} reading */
  function read2words(reading) {
    const { part } = partOf(reading);
    const named = (/** @type {Word} */ one) => {
      const concept = one.ids.filter((id) => /^c\d/.test(id)).map(conceptOf).find((it) => it.kind !== "harmless") ?? (one.ids[0]?.[0] === "c" ? conceptOf(one.ids[0]) : null);
      const text = concept && concept.kind !== "harmless" ? concept.say : one.typed;
      return one.readAs ? say("typed", { word: text, typed: one.readAs }) : text;
    };
    const parts = reading.words.filter((one) => !one.begun && (one.kinds.has("part") || one.kinds.has("thing") || one.kinds.has("absent"))).map(named);
    const rest = reading.words.filter((one) => !one.begun && one.weight > 0.35 && one.kinds.size && !one.kinds.has("part") && !one.kinds.has("thing") && !one.kinds.has("absent")
      && !one.ids.some((id) => allowed.has(id) && (one.kinds.has("harmless") || reading.legs || reading.angle !== null))).map(named);
    const loose = reading.words.filter((one) => one.readAs && !one.kinds.size).map(named);
    const grades = reading.grades.map((one) => {
      const meant = data.grades[one]?.[part === "shackle" ? "shackle" : "chain"] ?? namesOf(one);
      const [first = one.replace(/^g/, ""), second] = meant;
      if (second) return say("grade", { grade: say("grade-or", { one: first, other: second }) });
      return data.gradeNames[first] && part !== "shackle" ? say("grade-named", { grade: first, name: data.gradeNames[first] ?? "" }) : say("grade", { grade: first });
    });
    return [...new Set([
      ...(parts.length || !part ? parts : [part]), ...grades, ...sizeWords(reading),
      ...(reading.legs ? [reading.legs === "3" ? say("three-or-four-legs") : say("legs", { count: Number(reading.legs) })] : []),
      ...(reading.angle === null ? [] : [say("angle", { degrees: reading.angle })]),
      ...(reading.shortTons === null ? [] : [say("tons", { tons: reading.shortTons })]),
      ...rest, ...loose,
    ])];
  }

  /** @param {string} text @returns {Answer} */
  function ask(text) {
    const reading = read(text);
    const { results: rates, note } = numbers(reading);
    const lines = [];
    const said = read2words(reading);
    if (said.length) lines.push(say("read-as", { words: said.join(", ") }));
    // Where a number was asked for it is said why there is none.
    const number = partOf(reading).part || reading.inches.length + reading.millimetres.length + reading.threads.length;
    if (reading.unknown.length) lines.push(say(number ? "unknown" : "left-out", { words: reading.unknown.join("”, “") }));
    if (note) lines.push(note);
    const pages = pagesFor(reading).slice(0, MOST_PAGES);
    /** @type {Result[]} */
    const found = [];
    const absent = reading.words.filter((one) => !one.begun && one.kinds.has("absent")).map((one) => one.ids.map(conceptOf).find((it) => it.kind === "absent")?.say);
    // In the order in which they were typed: a clamp for a hoist is asked for, and not the hoist.
    const lacking = data.absent.filter(([name]) => absent.includes(name)).sort(([a], [b]) => absent.indexOf(a) - absent.indexOf(b));
    /** @param {{page: number, said: string}} one */
    const addPage = (one) => found.push(pageResult(reading, one.page, one.said));
    const telling = reading.words.filter((one) => !one.begun && one.weight >= TELLING).length;
    const sure = pages[0] && pages[0].best >= SURE && telling > 1 ? pages.shift() : undefined;
    if (rates.length) {
      const many = rates.length > 2 && !reading.grades.length ? 2 : 1;
      found.push(...rates.slice(0, rates[0]?.type === "part" ? rates.length : many));
      if (sure) pages.unshift(sure);
      pages.slice(0, rates.length > many ? 1 : 2).forEach(addPage);
      if (rates[0]?.type !== "part") found.push(...rates.slice(many));
      pages.slice(rates.length > many ? 1 : 2).forEach(addPage);
    } else {
      if (sure) addPage(sure);
      for (const [, sentence, page] of lacking) if (page >= 0) found.push({ ...pageResult(reading, page, sentence), sign: "stop" });
      pages.forEach(addPage);
    }
    const unique = found.filter((one, place) => found.findIndex((other) => other.title === one.title && other.address === one.address && other.query === one.query) === place);
    if (!unique.length && text.trim() && !reading.unfinished) lines.push(say("nothing"));
    return { line: lines.join(" "), results: unique, first: FIRST };
  }

  /** Reads the index before it is asked. */
  const warm = () => void texts();

  return { ask, read, say, warm };
}
