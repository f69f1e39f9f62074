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
