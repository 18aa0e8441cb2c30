/** What may wait until the answer to a tap is on the screen. */
import { untrack } from 'svelte';

/** Runs once the frame that is being made has been shown; in a page that is not in sight, at once after this turn. Returns what calls it off. */
export function afterPaint(run: () => void): () => void {
	let timer: ReturnType<typeof setTimeout>;
	// No frame is made for a page in the background.
	if (document.hidden) {
		timer = setTimeout(run);
		return () => clearTimeout(timer);
	}
	const frame = requestAnimationFrame(() => {
		timer = setTimeout(run);
	});
	return () => {
		cancelAnimationFrame(frame);
		clearTimeout(timer);
	};
}
/** Follows a value one frame behind: the small sign that a tap was taken is shown before the large part that it opens. Made within a component. */
export class AfterPaint<Value> {
	value: Value = $state.raw() as Value;

	constructor(of: () => Value) {
		this.value = untrack(of);
		$effect(() => {
			const next = of();
			if (next === untrack(() => this.value)) return;
			return afterPaint(() => {
				this.value = next;
			});
		});
	}
}
