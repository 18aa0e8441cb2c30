/** What a key asks of a lesson on the projector: a presenter's remote sends Page Up and Page Down. */
export type Move = { to: 'back' | 'on' | 'first' | 'last' } | { choose: number };

export interface Pressed {
	key: string;
	/** With Alt, Ctrl, Meta or Shift a key belongs to the browser. */
	isHeld: boolean;
	/** What has the focus: a field for words, something that arrows move, or anything else. */
	on: 'words' | 'moved' | 'other';
	/** The page is longer than the window: then Page Up, Page Down, Home and End scroll it. */
	scrolls: boolean;
}

/** Null: the key is the browser's, or that of what has the focus. */
export function moveOf({ key, isHeld, on, scrolls }: Pressed): Move | null {
	if (isHeld) return null;
	if (key === 'PageUp' || key === 'PageDown') return scrolls ? null : { to: key === 'PageUp' ? 'back' : 'on' };
	if (on === 'words') return null;
	if (/^[1-9]$/.test(key)) return { choose: Number(key) };
	if (on === 'moved') return null;
	if (key === 'ArrowLeft') return { to: 'back' };
	if (key === 'ArrowRight') return { to: 'on' };
	if ((key === 'Home' || key === 'End') && !scrolls) return { to: key === 'Home' ? 'first' : 'last' };
	return null;
}

/** What the focus is on, for `moveOf`. */
export function focusOn(target: EventTarget | null): Pressed['on'] {
	if (!(target instanceof Element)) return 'other';
	if (target.matches('input[type="range"], input[type="radio"], select, [role="tab"]')) return 'moved';
	return target.matches('input:not([type="checkbox"]), textarea, [contenteditable]') ? 'words' : 'other';
}
