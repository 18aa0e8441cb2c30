/** When what is typed in a group of fields counts: on leaving the group, or on Enter within it. */
import type { Attachment } from 'svelte/attachments';

/** Calls `take` when the focus goes out of the element, and on Enter in one of its inputs. */
export const leaving =
	(take: () => void): Attachment<HTMLElement> =>
	(element) => {
		const out = ({ relatedTarget }: FocusEvent) => {
			if (!(relatedTarget instanceof Node && element.contains(relatedTarget))) take();
		};
		const enter = (event: KeyboardEvent) => {
			if (event.key !== 'Enter' || event.isComposing || !(event.target instanceof HTMLInputElement)) return;
			event.preventDefault();
			take();
		};
		element.addEventListener('focusout', out);
		element.addEventListener('keydown', enter);
		return () => {
			element.removeEventListener('focusout', out);
			element.removeEventListener('keydown', enter);
		};
	};
