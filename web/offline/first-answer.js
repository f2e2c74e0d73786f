/** Resolve once the core has answered for the first time, as web/python/ marks it. */
export function firstAnswer() {
  return new Promise((resolve) => {
    const observer = new PerformanceObserver((list) => {
      if (!list.getEntriesByName("sawside:first-answer").length) return;
      observer.disconnect();
      resolve();
    });
    observer.observe({ type: "mark", buffered: true });
  });
}
