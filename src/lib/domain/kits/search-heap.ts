/** Binary heap: the entry that comes first by `before` is taken first. The order must be total, so that what is taken does not hang on how it was put. */
export class Heap<T> {
	private readonly entries: T[] = [];
	constructor(private readonly before: (a: T, b: T) => boolean) {}

	push(entry: T): void {
		const { entries, before } = this;
		let at = entries.length;
		entries.push(entry);
		while (at > 0) {
			const above = (at - 1) >> 1;
			if (!before(entry, entries[above]!)) break;
			entries[at] = entries[above]!;
			at = above;
		}
		entries[at] = entry;
	}

	/** The first, left in; undefined when there is none. */
	get first(): T | undefined {
		return this.entries[0];
	}

	/** The first, taken out; undefined when there is none. */
	pop(): T | undefined {
		const { entries } = this;
		const first = entries[0];
		const last = entries.pop();
		if (last !== undefined && entries.length > 0) this.sink(last);
		return first;
	}

	/** All that is left, in no order; the heap is empty after it. */
	drain(): T[] {
		return this.entries.splice(0);
	}

	private sink(entry: T): void {
		const { entries, before } = this;
		let at = 0;
		for (;;) {
			let below = 2 * at + 1;
			if (below >= entries.length) break;
			if (below + 1 < entries.length && before(entries[below + 1]!, entries[below]!)) below += 1;
			if (!before(entries[below]!, entry)) break;
			entries[at] = entries[below]!;
			at = below;
		}
		entries[at] = entry;
	}
}
