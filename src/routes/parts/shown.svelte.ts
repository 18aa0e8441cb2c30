/** Parts of a page that are loaded once it stands, so that the first question comes quickly. */
import { session } from '$lib/state';

class Late<Parts> {
	parts = $state.raw<Parts | null>(null);
	/** They were asked for and did not come. */
	failed = $state(false);
	private asked = false;

	constructor(private readonly fetchParts: () => Promise<Parts>) {}

	/** Safe to call often; tries again after a failure. */
	load(): void {
		if (this.asked) return;
		this.asked = true;
		this.fetchParts().then(
			(parts) => {
				this.parts = parts;
				this.failed = false;
			},
			() => {
				this.failed = true;
				this.asked = false;
			}
		);
	}
}
/** What shows a plan. */
export const shown = new Late(() => {
	void session.loadEngine();
	return import('./plan-parts');
});
/** Answers of every kind but the plainest. */
export const later = new Late(async () => {
	const parts = await import('./answers/later');
	parts.readTyped();
	return parts;
});
