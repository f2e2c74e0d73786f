/**
 * Work done one after another, by all tabs together. Where the browser refuses its locks, as it does where a site may
 * store nothing, or has none, as on a page without HTTPS, the work of this tab still takes its turns.
 * @param {string} name the same for all that takes turns
 * @returns {<Answer>(work: () => Promise<Answer>) => Promise<Answer>}
 */
export function turnsOf(name) {
  /** @type {Promise<any>} whatever the last one came to */
  let own = Promise.resolve();

  function alone(work) {
    const done = own.then(work);
    own = done.catch(() => {});
    return done;
  }

  return async (work) => {
    let begun = false;
    try {
      return await navigator.locks.request(name, () => {
        begun = true;
        return work();
      });
    } catch (error) {
      if (begun) throw error;
      return alone(work);
    }
  };
}
