/** What was last chosen for printing, kept in the browser: paper and the plan's scale. */
import { browser } from '$app/environment';
import { readChoice, type Paper, type ScaleChoice } from '$lib/print';

const keys = { paper: 'duskwright/paper', scale: 'duskwright/plan-scale' } as const;

function read(key: string): string | null {
	if (!browser) return null;
	try {
		return localStorage.getItem(key);
	} catch {
		// Storage is shut off: what was chosen lasts as long as the page.
		return null;
	}
}
const readPaper = (text: string | null): Paper | null => (text === 'a4' || text === 'letter' ? text : null);

export class KeptChoices {
	/** Null until one is chosen: the paper then follows the units. */
	paper = $state<Paper | null>(readPaper(read(keys.paper)));
	scale = $state<ScaleChoice>(readChoice(read(keys.scale)) ?? 'fit');
	/** The browser would not keep the last choice. */
	forgotten = $state(false);

	choosePaper(value: string): void {
		this.paper = readPaper(value) ?? this.paper;
		this.#keep(keys.paper, value);
	}
	chooseScale(value: string): void {
		this.scale = readChoice(value) ?? this.scale;
		this.#keep(keys.scale, value);
	}
	#keep(key: string, value: string): void {
		try {
			localStorage.setItem(key, value);
		} catch {
			this.forgotten = true;
		}
	}
}
