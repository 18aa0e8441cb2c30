import { lineLength, nearestOnLine, pointAt, type Line } from '../../shared/geometry';

/** Half of a spade's width: a cable that lies this near to another lies in its trench, metres. */
const inTrench = 0.06;
const places = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1] as const;

/** Trenches dug and ways under paving made so far, over all runs in the order of the cards. */
export class Trenches {
	private readonly dug = new Map<string, Line[]>();
	private readonly made = new Set<string>();
	/** Name of the run whose trench takes the whole of a stretch; null: it has to be dug. */
	holding(path: Line): string | null {
		const length = lineLength(path);
		const points = places.map((share) => pointAt(path, share * length));
		for (const [run, lines] of this.dug) {
			const held = points.every((p) => lines.some((line) => nearestOnLine(p, line)!.distance <= inTrench));
			if (held) return run;
		}
		return null;
	}
	dig(run: string, path: Line): void {
		const lines = this.dug.get(run);
		if (lines) lines.push(path);
		else this.dug.set(run, [path]);
	}
	/** Whether a declared crossing was taken before; from now on it is. */
	take(strip: string, crossing: string): boolean {
		const key = `${strip}/${crossing}`;
		const before = this.made.has(key);
		this.made.add(key);
		return before;
	}
}
