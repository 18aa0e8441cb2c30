import type { Point } from '../shared/geometry';

/** One number for a cell: a yard reaches a few hundred cells either way (`limits.reach`). */
const keyOf = (column: number, row: number): number => column * 65_536 + row;

/** Points kept by square cells, so that "what is near here" does not look at them all. */
export class PointGrid<T> {
	readonly #cells = new Map<number, { at: Point; value: T }[]>();
	readonly #size: number;

	/** `size`: side of a cell, metres. */
	constructor(size: number) {
		this.#size = size;
	}
	add(at: Point, value: T): void {
		const key = keyOf(Math.floor(at.x / this.#size), Math.floor(at.y / this.#size));
		const cell = this.#cells.get(key);
		if (cell) cell.push({ at, value });
		else this.#cells.set(key, [{ at, value }]);
	}
	/** Whether any point kept within `reach` metres passes the test. */
	some(p: Point, reach: number, test: (value: T, distance: number, at: Point) => boolean): boolean {
		if (this.#cells.size === 0) return false;
		const size = this.#size;
		const lastColumn = Math.floor((p.x + reach) / size);
		const lastRow = Math.floor((p.y + reach) / size);
		for (let column = Math.floor((p.x - reach) / size); column <= lastColumn; column++) {
			for (let row = Math.floor((p.y - reach) / size); row <= lastRow; row++) {
				const cell = this.#cells.get(keyOf(column, row));
				if (!cell) continue;
				for (const { at, value } of cell) {
					const distance = Math.hypot(at.x - p.x, at.y - p.y);
					if (distance <= reach && test(value, distance, at)) return true;
				}
			}
		}
		return false;
	}
}
