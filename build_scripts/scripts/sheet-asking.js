// @ts-check
/**
 * Asks Python one question at a time, always the newest. An answer to a question that is not the newest is stale and is
 * never told.
 */

/**
 * @typedef {{worksheet: string, inputs: Record<string, unknown>, units: string, language: string,
 *   root: string, example: boolean}} Question
 * @typedef {{ok: false, errors: InputError[]}} Refusal
 * @typedef {{question: () => Question, wanted: () => boolean, answered: (view: View) => void,
 *   refused: (errors: InputError[]) => void, stopped: (error: unknown) => void}} Asker
 */

class Asking {
  #asked = 0;
  #answered = 0;
  #busy = false;
  /** @type {Asker} */
  #asker;

  /** @param {Asker} asker */
  constructor(asker) {
    this.#asker = asker;
  }

  /** The inputs changed: what is under way is stale, and a new question waits. */
  change() {
    this.#asked += 1;
  }

  /** What is under way is stale, and nothing is to be asked in its place. */
  drop() {
    this.#asked += 1;
    this.#answered = this.#asked;
  }

  /** Asks until the newest question is answered. */
  async run() {
    if (this.#busy) return; // the newest inputs are asked when this answer is in
    this.#busy = true;
    try {
      while (this.#answered < this.#asked && this.#asker.wanted()) await this.#once();
    } catch (error) {
      this.#asker.stopped(error);
    } finally {
      this.#busy = false;
    }
  }

  async #once() {
    const asking = this.#asked;
    const response = await python.answer(this.#asker.question());
    if (asking !== this.#asked) return; // a newer question waits: this answer is stale already
    this.#answered = asking;
    if (response.ok) this.#asker.answered(response);
    else this.#asker.refused(response.errors);
  }
}
