// @ts-check
/**
 * The answer on the page. build_scripts/answer_view.py makes a tree of each region, at build and live; here the live ones
 * become elements. A region is the element with its name in `data-view`.
 */

/**
 * @typedef {string | [string, Record<string, string>, ...any[]]} TreeNode  text, or tag, attributes and children
 * @typedef {{ok: true, verdict: string, runtime: string, spoken: string, understood: Record<string, string>, complete: boolean, regions: Record<string, [string, Record<string, string>, ...TreeNode[]]>}} View
 */

const SVG = "http://www.w3.org/2000/svg";
/** The single places whose text is the answer's. */
const ANSWER_PLACES = "[data-verdict-word], [data-headline], [data-big], [data-big-label], [data-result]";
/** The regions that are nothing but the answer's. */
const ANSWER_LISTS = "[data-figure], [data-steps], [data-cautions], [data-sources], [data-inputs], [data-next], [data-code]";
/** What marks an answer as the example's. */
const EXAMPLE_MARKS = ".example-mark";

/**
 * @param {TreeNode} node
 * @param {boolean} [drawn]  inside a drawing
 * @returns {Node}
 */
function built(node, drawn = false) {
  if (typeof node === "string") return document.createTextNode(node);
  const [tag, attributes] = node;
  const inDrawing = drawn || tag === "svg";
  const made = inDrawing ? document.createElementNS(SVG, tag) : document.createElement(tag);
  for (const name in attributes) made.setAttribute(name, attributes[name] ?? "");
  for (let i = 2; i < node.length; i += 1) made.append(built(node[i], inDrawing));
  return made;
}

/**
 * Makes an element that stands on the page that of a tree.
 * @param {Element} place
 * @param {[string, Record<string, string>, ...TreeNode[]]} region
 */
function becomes(place, [, attributes, ...children]) {
  for (const name of place.getAttributeNames()) if (!(name in attributes)) place.removeAttribute(name);
  for (const name in attributes) place.setAttribute(name, attributes[name] ?? "");
  place.replaceChildren(...children.map((child) => built(child)));
}

const NUMBER = /-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/gi;
/** Sines and powers of two C libraries may differ in the last digits; nothing that a page shows does. */
const SAME_WITHIN = 1e-9;

/** Whether two written values are the same but for the last digits of their numbers. @param {string} one @param {string} other */
function sameValue(one, other) {
  if (one === other) return true;
  const [ours, theirs] = [one.match(NUMBER) ?? [], other.match(NUMBER) ?? []];
  if (ours.length !== theirs.length || one.replace(NUMBER, "") !== other.replace(NUMBER, "")) return false;
  return ours.every((text, i) => Math.abs(Number(text) - Number(theirs[i])) <= SAME_WITHIN * Math.abs(Number(text)));
}

/** The values of the results in a tree, by name. @param {TreeNode} node @param {Map<string, string>} values */
function gatherValues(node, values) {
  if (typeof node === "string") return;
  const [, attributes, ...children] = node;
  if (attributes["data-result"]) values.set(attributes["data-result"], `${attributes["data-value"]} ${attributes["data-unit"]}`);
  for (const child of children) gatherValues(child, values);
}

/** The answer to the example as the page was built with it. It is read before anything else has touched it. */
class BuiltAnswer {
  /** @type {Map<string, string>} */
  #values = new Map();
  #verdict;

  /** @param {Element} sheet */
  constructor(sheet) {
    this.#verdict = sheet.querySelector("[data-answer]")?.getAttribute("data-verdict") ?? "";
    for (const place of sheet.querySelectorAll("[data-result]")) {
      this.#values.set(place.getAttribute("data-result") ?? "", `${place.getAttribute("data-value")} ${place.getAttribute("data-unit")}`);
    }
  }

  /** Whether a live answer to the same example says the same. @param {View} view */
  isLike(view) {
    /** @type {Map<string, string>} */
    const live = new Map();
    for (const region of Object.values(view.regions)) gatherValues(region, live);
    if (view.verdict !== this.#verdict || live.size !== this.#values.size) return false;
    return [...this.#values].every(([name, value]) => sameValue(value, live.get(name) ?? ""));
  }
}

class AnswerView {
  /** @type {Element} */
  #sheet;
  /** What each region shows, as text: one that stays the same is left alone. @type {Map<Element, string>} */
  #shown = new Map();

  /** @param {Element} sheet */
  constructor(sheet) {
    this.#sheet = sheet;
  }

  #regions() {
    return this.#sheet.querySelectorAll("[data-view]");
  }

  /** @param {View} view */
  show(view) {
    for (const place of this.#regions()) {
      const region = view.regions[place.getAttribute("data-view") ?? ""];
      if (!region) continue;
      const text = JSON.stringify(region);
      if (this.#shown.get(place) === text) continue;
      becomes(place, region);
      this.#shown.set(place, text);
    }
    this.#judge(view.verdict);
  }

  /** Takes the answer off the page; the names of its parts stay. @param {string} bar  what the bar says in its place */
  empty(bar) {
    this.#shown.clear();
    for (const mark of this.#sheet.querySelectorAll(EXAMPLE_MARKS)) mark.remove();
    for (const place of this.#sheet.querySelectorAll("[data-answer], [data-foot]")) place.removeAttribute("data-verdict");
    for (const place of this.#sheet.querySelectorAll(ANSWER_PLACES)) {
      place.replaceChildren();
      place.removeAttribute("data-value");
      place.removeAttribute("data-unit");
    }
    for (const place of this.#sheet.querySelectorAll("[data-bar-note]")) place.textContent = bar;
    for (const place of this.#sheet.querySelectorAll(ANSWER_LISTS)) {
      place.replaceChildren();
      if (place.matches("[data-figure], [data-next], [data-code]")) place.setAttribute("hidden", "");
    }
  }

  /** @param {string} verdict */
  #judge(verdict) {
    for (const place of this.#sheet.querySelectorAll("[data-answer]")) place.setAttribute("data-verdict", verdict);
  }
}
