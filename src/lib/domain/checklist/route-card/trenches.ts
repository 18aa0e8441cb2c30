import { lineLength, nearestOnLine, pointAt, type Line } from '../../shared/geometry';

/** A spade's width: a cable that lies this near to another lies in its trench, metres. */
const inTrench = 0.1;
const places = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1] as const;

/** Trenches dug and ways under paving made so far, over all runs in the order of the cards. */
export class Trenches {
	private readonly dug = new Map<string, Line[]>();
	private readonly made = new Set<string>();
	/**
	 * Name of the run whose trench takes a stretch, the first of them where it lies partly in that of one and partly in
	 * another's; null: some of it has to be dug.
	 */
	holding(path: Line): string | null {
		const length = lineLength(path);
		let left = places.map((share) => pointAt(path, share * length));
		let first: string | null = null;
		for (const [run, lines] of this.dug) {
			const outside = left.filter((p) => !lines.some((line) => nearestOnLine(p, line)!.distance <= inTrench));
			if (outside.length === left.length) continue;
			first ??= run;
			left = outside;
		}
		return left.length === 0 ? first : null;
	}
	dig(run: string, path: Line): void {
		const lines = this.dug.get(run);
		if (lines) lines.push(path);
		else this.dug.set(run, [path]);
	}
	/** Whether a way under paving was made before, by its place; from now on it is. */
	take(place: string): boolean {
		const before = this.made.has(place);
		this.made.add(place);
		return before;
	}
}
