/**
 * The fragment of the page's own address, where a page keeps what it shows. Straight to the browser: the router's own functions for it weigh
 * three kilobytes on every page. An entry keeps the router's mark of the page it belongs to, so that Back from elsewhere opens that page. In a browser only.
 */

/** In place of the one that is there; an empty text takes it away. */
export const replaceFragment = (fragment: string): void =>
	history.replaceState(history.state, '', fragment || location.pathname + location.search);
/** A step of the browser's Back button: the page listens to `popstate`. */
export const pushFragment = (fragment: string): void =>
	history.pushState(history.state, '', fragment || location.pathname + location.search);
