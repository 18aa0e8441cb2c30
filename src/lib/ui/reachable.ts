import type { Attachment } from 'svelte/attachments';

/**
 * What scrolls sideways can be reached and scrolled by keyboard; what fits is no stop on the way. With a selector: the
 * parts inside that it names, else the element itself.
 */
export const reachable =
	(selector?: string): Attachment<HTMLElement> =>
	(node) => {
		const parts = selector ? [...node.querySelectorAll<HTMLElement>(selector)] : [node];
		const update = () => {
			for (const part of parts) {
				if (part.scrollWidth > part.clientWidth + 1) part.tabIndex = 0;
				else part.removeAttribute('tabindex');
			}
		};
		const observer = new ResizeObserver(update);
		for (const part of parts) observer.observe(part);
		return () => observer.disconnect();
	};
