// @ts-check
// The data of the search as the build hands it over (build_scripts/search), and what the search answers.

/**
 * @typedef {"part" | "thing" | "absent" | "term" | "harmless"} ConceptKind
 * @typedef {{say: string, kind: ConceptKind, words: string[], name?: string}} Concept
 * @typedef {{part: string, label: string, answer: string, use: string, use_words: string, address: string, grade: string,
 *   inch: number, mm: number, thread: string, legs: string, flattest: number, steepest: number, hitch: string,
 *   short_tons: number, metric: boolean, rank: number}} Card
 * @typedef {[title: string, address: string, kind: string, description: string]} PageLine
 * @typedef {[line: string, page: number, said: string]} Asked
 * @typedef {[name: string, said: string, page: number]} Absent
 * @typedef {{
 *   rules: [pattern: string, put: string, counted: boolean][], counts: Record<string, string>, kinds: [string, string, string][], grades: Record<string, {chain: string[], shackle: string[]}>,
 *   gradeNames: Record<string, string>, lifts: Record<string, boolean>, concepts: Concept[], plain: string[], own: string[], misspelt: Record<string, string>,
 *   fills: Record<string, Record<string, Record<string, string>>>, colours: string[],
 *   cardFields: string[], cards: any[][], pages: PageLine[], asked: Asked[], absent: Absent[],
 *   rowsBySize: Record<string, [inches: number, cell: string][]>, rowsByName: Record<string, [words: string, cell: string][]>, allowed: {terms: string[], lift: string[], haul: string[], light: string[]}, together: Record<string, string[][]>, words: Record<string, any>,
 *   texts?: [heading: string, anchor: string, text: string][][],
 *   index?: any, lexicon?: Lexicon, sections?: string[], titles?: string[][],
 *   lines?: Line[], linesOf?: Record<string, number[]>,
 * }} SearchData
 * @typedef {[heading: string, anchor: string, tokens: string[]][]} Sections those of one page, which `sections` keeps as a JSON text each
 * @typedef {[page: number, said: string, words: [ids: string, weight: number][]]} Line
 * @typedef {{phrases: [key: string, ids: string][], gradeWords: [key: string, spelled: string][], plain: string[],
 *   known: [word: string, letters: number, ids: string][]}} Lexicon
 * @typedef {{typed: string, ids: string[], stems: string[], kinds: Set<ConceptKind>, weight: number, readAs: string, begun: boolean}} Word
 * @typedef {{kind: "weight" | "length" | "force" | "pressure" | "temperature" | "angle" | "legs", text: string, ofPart: boolean}} Amount a number with its unit, and whether a part or a grade stands beside it that it can belong to
 * @typedef {{
 *   words: Word[], inches: number[], millimetres: number[], threads: string[], grades: string[], legs: string, angle: number | null,
 *   shortTons: number | null, open: string[], unknown: string[], unfinished: boolean,
 *   amounts: Amount[], asked: string, left: string,
 * }} Reading what was typed is `asked`, in small letters; `left` is what the rules left of it
 * @typedef {{type: "card" | "never" | "said" | "page" | "part", title: string, value: string, text: string, address: string, sign: "" | "stop" | "tie-down" | "lift", query: string}} Result
 * @typedef {{line: string, results: Result[], first: number}} Answer
 */

export {};
