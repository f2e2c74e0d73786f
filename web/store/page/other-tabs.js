/**
 * The way to the other tabs. Where the browser keeps a page from them, as some do where a site may store nothing,
 * there is nobody to tell.
 * @param {string} name the same in all tabs
 * @param {(news: any) => void} onNews hears what another tab tells
 * @returns {(news: any) => void} tells the others
 */
export function otherTabs(name, onNews) {
  try {
    const channel = new BroadcastChannel(name);
    channel.onmessage = ({ data }) => onNews(data);
    return (news) => channel.postMessage(news);
  } catch {
    return () => {};
  }
}
