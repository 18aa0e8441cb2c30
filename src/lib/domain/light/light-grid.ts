/**
 * The light on the ground, cell by cell, each source's own share kept: where one fixture moves only its share is worked
 * out again. A share stops where it falls below `leastShare`: the map is short by less than that for each source.
 */
import type { Box } from '../shared/geometry';
import { candelaAlong, emitterOf, type Emitter } from './emitter';
import { offSurface } from './field';
import { isBlocked, type Shadows } from './shadows';
import type { LightMap, LightSource } from './types';

/** Lux below which a source's share of a cell is left out. */
export const leastShare = 0.01;

/** Cells that one source reaches, and what it gives each, row by row. `lux` may be longer than the window needs. */
interface Share {
	column: number;
	row: number;
	columns: number;
	rows: number;
	lux: Float32Array;
}
const empty = (): Share => ({ column: 0, row: 0, columns: 0, rows: 0, lux: new Float32Array(0) });

/**
 * Metres along the ground beyond which a source gives less than `leastShare`: I·h/d³ with the most it sends anywhere below
 * the horizontal; for one under a shade not past the rim of its light either.
 */
function reachOf(emitter: Emitter): number {
	if (!(emitter.z > 0) || emitter.most === 0) return 0;
	const byLight = Math.cbrt((belowHorizon(emitter) * emitter.z) / leastShare);
	// Straight down: the rim of the light is a circle.
	const byRim =
		emitter.az < -1 + 1e-9 && emitter.least > 0
			? (emitter.z * Math.sqrt(1 - emitter.least ** 2)) / emitter.least
			: Infinity;
	return Math.min(byLight, byRim);
}
/** Most candela that a source sends below the horizontal: of an upward beam what its lower edge still has. */
function belowHorizon(emitter: Emitter): number {
	if (emitter.az <= 0 || !emitter.table) return emitter.most;
	// The direction below the horizontal nearest to an axis that rises: level, straight under the axis. Every law here falls off its axis.
	const level = Math.hypot(emitter.ax, emitter.ay);
	if (level < 1e-9) return maxBeyond(emitter, 0);
	return maxBeyond(emitter, level);
}
/** Highest candela at any angle off the axis whose cosine is at most so much. */
function maxBeyond(emitter: Emitter, cosine: number): number {
	const table = emitter.table!;
	const steps = table.length - 2;
	let most = 0;
	if (cosine < emitter.least) return 0;
	for (let k = Math.floor(steps * Math.sqrt(Math.max(0, (1 - cosine) / 2))); k <= steps; k++) {
		if (table[k]! > most && 1 - 2 * (Math.max(0, k - 1) / steps) ** 2 >= emitter.least) most = table[k]!;
	}
	return most * emitter.scale;
}

export class LightGrid {
	readonly map: LightMap;
	readonly #shadows: Shadows;
	readonly #line: Float64Array;
	readonly #shares: Share[] = [];

	/** A grid over a box, `step` metres from cell to cell. */
	constructor(shadows: Shadows, box: Box, step: number) {
		this.#shadows = shadows;
		const columns = Math.max(1, Math.ceil((box.maxX - box.minX) / step - 1e-9));
		const rows = Math.max(1, Math.ceil((box.maxY - box.minY) / step - 1e-9));
		this.#line = new Float64Array(columns);
		this.map = {
			x: box.minX + step / 2,
			y: box.minY + step / 2,
			step,
			columns,
			rows,
			lux: new Float32Array(columns * rows)
		};
	}
	/** Horizontal lux by cell, all sources together. */
	get lux(): Float32Array {
		return this.map.lux;
	}
	/** Takes these sources in place of what was there. */
	set(sources: readonly LightSource[]): void {
		this.#shares.length = Math.min(this.#shares.length, sources.length);
		sources.forEach((source, i) => {
			this.#shares[i] ??= empty();
			this.#cast(this.#shares[i], emitterOf(source));
		});
		this.#sum(0, 0, this.map.columns, this.map.rows);
	}
	/** One source moved, turned or changed: only its share is worked out anew. RangeError where there is no such source. */
	move(index: number, source: LightSource): void {
		const share = this.#shares[index];
		if (!share) throw new RangeError(`The light map has ${this.#shares.length} sources, none is number ${index}.`);
		const { column, row, columns, rows } = share;
		this.#cast(share, emitterOf(source));
		this.#sum(column, row, columns, rows);
		this.#sum(share.column, share.row, share.columns, share.rows);
	}
	/** Horizontal lux of one source in a cell. */
	shareAt(index: number, column: number, row: number): number {
		const share = this.#shares[index];
		if (!share) return 0;
		const [x, y] = [column - share.column, row - share.row];
		return x >= 0 && y >= 0 && x < share.columns && y < share.rows ? share.lux[y * share.columns + x]! : 0;
	}

	#cast(share: Share, emitter: Emitter): void {
		const { x, y, step, columns, rows } = this.map;
		const reach = reachOf(emitter);
		const first = (from: number, low: number): number => Math.max(0, Math.ceil((from - reach - low) / step));
		const last = (from: number, low: number, most: number): number =>
			Math.min(most - 1, Math.floor((from + reach - low) / step));
		share.column = first(emitter.x, x);
		share.row = first(emitter.y, y);
		share.columns = Math.max(0, last(emitter.x, x, columns) - share.column + 1);
		share.rows = Math.max(0, last(emitter.y, y, rows) - share.row + 1);
		const size = share.columns * share.rows;
		// A buffer that is large enough is used again: dragging a light about takes no new memory.
		if (share.lux.length < size) share.lux = new Float32Array(2 ** Math.ceil(Math.log2(size)));
		let cell = 0;
		for (let row = 0; row < share.rows; row++) {
			const dy = y + (share.row + row) * step - emitter.y;
			for (let column = 0; column < share.columns; column++) {
				const dx = x + (share.column + column) * step - emitter.x;
				share.lux[cell++] = this.#ground(emitter, dx, dy, reach);
			}
		}
	}
	/** Lux on the ground so far from a source: E = I(γ)·h/d³. */
	#ground(emitter: Emitter, dx: number, dy: number, reach: number): number {
		const flat = dx * dx + dy * dy;
		if (flat > reach * reach) return 0;
		const { z } = emitter;
		const square = flat + z * z;
		const distance = Math.sqrt(square);
		const candela = candelaAlong(emitter, dx / distance, dy / distance, -z / distance);
		const lux = (candela * z) / (square * distance);
		if (lux < leastShare) return 0;
		const { x, y } = emitter;
		return isBlocked(this.#shadows, x + dx, y + dy, offSurface, x, y, z) ? 0 : lux;
	}
	/** Adds up all shares in a window, in the order of the sources: the same sum however the map came about. */
	#sum(column: number, row: number, columns: number, rows: number): void {
		const { map } = this;
		const line = this.#line.subarray(0, columns);
		for (let r = row; r < row + rows; r++) {
			line.fill(0);
			for (const share of this.#shares) addRow(line, column, share, r - share.row);
			map.lux.set(line, r * map.columns + column);
		}
	}
}
function addRow(line: Float64Array, column: number, share: Share, row: number): void {
	if (row < 0 || row >= share.rows) return;
	const from = Math.max(column, share.column);
	const to = Math.min(column + line.length, share.column + share.columns);
	const own = row * share.columns - share.column;
	for (let c = from; c < to; c++) line[c - column]! += share.lux[own + c]!;
}
