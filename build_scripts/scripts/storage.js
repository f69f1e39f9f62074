// @ts-check
/** Storage may be forbidden; the page works without it. */
const kept = {
  /** @param {string} key @returns {string | null} */
  get(key) {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  /** @param {string} key @param {string} value */
  set(key, value) {
    try {
      localStorage.setItem(key, value);
    } catch {
      // Forbidden or full: the choice lasts for this page.
    }
  },
};

/** What was typed in each worksheet, for as long as this tab is open: leaving a page never loses it. */
const keptTyped = {
  /** @param {string} sheet @returns {string} */
  get(sheet) {
    try {
      return sessionStorage.getItem(`linkwright-typed-${sheet}`) ?? "";
    } catch {
      return "";
    }
  },
  /** @param {string} sheet @param {string} fields */
  set(sheet, fields) {
    try {
      if (fields) sessionStorage.setItem(`linkwright-typed-${sheet}`, fields);
      else sessionStorage.removeItem(`linkwright-typed-${sheet}`);
    } catch {
      // Forbidden or full: what was typed lasts for this page.
    }
  },
};
