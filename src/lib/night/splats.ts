/**
 * Small soft-edged pieces laid over the picture from far to near: leaves as ellipses, thin round things as tapered bands. Each
 * carries its luminance (lamps and sky) and its depth; walls and ground nearer to the eye hide it.
 */
import { noise2 } from './noise';

export interface Target {
	width: number;
	height: number;
	lamps: Float32Array;
	sky: Float32Array;
	surface: Uint16Array;
	lux: Float32Array;
	depth: Float32Array;
}
/** Numbers that a piece takes: kind and place, then light. See `Splats.leaf` and `Splats.band`. */
const size = 33;
const [isLeaf, isBand] = [0, 1];

export class Splats {
	private data = new Float32Array(size * 4096);
	private surfaces = new Uint16Array(4096);
	/** By strip of rows: the pieces that touch it, the farthest first. */
	private strips: Uint32Array[] = [];
	count = 0;

	/** Room for one more; returns where its numbers begin. */
	private next(surface: number): number {
		if (this.count === this.surfaces.length) {
			const [data, surfaces] = [new Float32Array(this.data.length * 2), new Uint16Array(this.surfaces.length * 2)];
			data.set(this.data);
			surfaces.set(this.surfaces);
			[this.data, this.surfaces] = [data, surfaces];
		}
		this.surfaces[this.count] = surface;
		return this.count++ * size;
	}
	/**
	 * An ellipse: middle, half length along the unit direction (cx, cy), half width, pixels; depth, metres; lux, and luminance by lamps
	 * and by the sky: `light` of six.
	 */
	leaf(
		column: number,
		row: number,
		long: number,
		wide: number,
		cx: number,
		cy: number,
		depth: number,
		lux: number,
		light: readonly number[],
		surface: number
	): void {
		const at = this.next(surface);
		const d = this.data;
		d[at] = isLeaf;
		d[at + 1] = depth;
		d[at + 2] = row - Math.abs(cy) * long - wide - 1;
		d[at + 3] = row + Math.abs(cy) * long + wide + 1;
		d[at + 4] = column;
		d[at + 5] = row;
		d[at + 6] = long;
		d[at + 7] = wide;
		d[at + 8] = cx;
		d[at + 9] = cy;
		d[at + 10] = lux;
		for (let i = 0; i < 6; i++) d[at + 11 + i] = light[i]!;
	}
	/**
	 * A band from one end to the other with its half widths, pixels. `light`: by lamps at the first end's left, middle and right, looking
	 * towards the second, then at the second end, then by the sky: 21. `rough`: with the grain of bark.
	 */
	band(
		ends: readonly [number, number, number, number],
		halves: readonly [number, number],
		depth: number,
		lux: number,
		light: readonly number[],
		surface: number,
		rough: boolean
	): void {
		const at = this.next(surface);
		const d = this.data;
		const most = Math.max(halves[0], halves[1]) + 1;
		d[at] = isBand;
		d[at + 1] = depth;
		d[at + 2] = Math.min(ends[1], ends[3]) - most;
		d[at + 3] = Math.max(ends[1], ends[3]) + most;
		for (let i = 0; i < 4; i++) d[at + 4 + i] = ends[i]!;
		d[at + 8] = halves[0];
		d[at + 9] = halves[1];
		d[at + 10] = lux;
		for (let i = 0; i < 21; i++) d[at + 11 + i] = light[i]!;
		d[at + 32] = rough ? 1 : 0;
	}
	/** Puts the pieces in order, the farthest first, for a picture of so many rows (counting sort by depth; equal ones keep their order). */
	sort(height: number): void {
		const { count, data } = this;
		let [near, far] = [Infinity, -Infinity];
		for (let i = 0; i < count; i++) {
			near = Math.min(near, data[i * size + 1]!);
			far = Math.max(far, data[i * size + 1]!);
		}
		const slots = 8192;
		const starts = new Uint32Array(slots + 1);
		const slotOf = (i: number): number =>
			far > near ? Math.floor(((far - data[i * size + 1]!) / (far - near)) * (slots - 1)) : 0;
		for (let i = 0; i < count; i++) starts[slotOf(i) + 1]!++;
		for (let i = 0; i < slots; i++) starts[i + 1]! += starts[i]!;
		const order = new Uint32Array(count);
		for (let i = 0; i < count; i++) order[starts[slotOf(i)]!++] = i;
		this.strips = stripsOf(data, order, height);
	}
	/** Lays those that touch the strip of rows over it: rows `strip` × `stripRows` and on. */
	draw(target: Target, strip: number): void {
		const { data } = this;
		const from = strip * stripRows;
		const to = Math.min(target.height, from + stripRows);
		const pieces = this.strips[strip] ?? new Uint32Array(0);
		for (let k = 0; k < pieces.length; k++) {
			const i = pieces[k]!;
			const at = i * size;
			if (data[at] === isLeaf) drawLeaf(target, data, at, this.surfaces[i]!, from, to);
			else drawBand(target, data, at, this.surfaces[i]!, from, to);
		}
	}
}
/** Rows that are laid over at a time. */
export const stripRows = 24;

/** The pieces by strip, in order. */
function stripsOf(data: Float32Array, order: Uint32Array, height: number): Uint32Array[] {
	const strips = Math.ceil(height / stripRows);
	const counts = new Uint32Array(strips);
	const each = (told: (strip: number, i: number) => void): void => {
		for (let k = 0; k < order.length; k++) {
			const at = order[k]! * size;
			const first = Math.max(0, Math.floor(data[at + 2]! / stripRows));
			const last = Math.min(strips - 1, Math.floor(data[at + 3]! / stripRows));
			for (let strip = first; strip <= last; strip++) told(strip, order[k]!);
		}
	};
	each((strip) => counts[strip]!++);
	const lists = Array.from(counts, (count) => new Uint32Array(count));
	counts.fill(0);
	each((strip, i) => (lists[strip]![counts[strip]!++] = i));
	return lists;
}

function drawLeaf(target: Target, d: Float32Array, at: number, surface: number, from: number, to: number): void {
	const [column, row, cx, cy] = [d[at + 4]!, d[at + 5]!, d[at + 8]!, d[at + 9]!];
	// Nothing is laid on thinner than a pixel; what is thinner covers less of it instead.
	const long = Math.max(d[at + 6]!, 0.6);
	const wide = Math.max(d[at + 7]!, 0.6);
	const strength = Math.min(1, d[at + 6]! / 0.6) * Math.min(1, d[at + 7]! / 0.6);
	const w = Math.abs(cx) * long + Math.abs(cy) * wide + 0.5;
	const h = Math.abs(cy) * long + Math.abs(cx) * wide + 0.5;
	const x0 = Math.max(0, Math.ceil(column - w - 0.5));
	const x1 = Math.min(target.width - 1, Math.floor(column + w - 0.5));
	const y0 = Math.max(from, Math.ceil(row - h - 0.5));
	const y1 = Math.min(to - 1, Math.floor(row + h - 0.5));
	const depth = d[at + 1]!;
	for (let y = y0; y <= y1; y++) {
		for (let x = x0; x <= x1; x++) {
			const p = y * target.width + x;
			if (target.depth[p]! < depth) continue;
			const dx = x + 0.5 - column;
			const dy = y + 0.5 - row;
			const u = (dx * cx + dy * cy) / long;
			const v = (dy * cx - dx * cy) / wide;
			const alpha = Math.min(1, (1 - Math.sqrt(u * u + v * v)) * wide + 0.5) * strength;
			if (alpha <= 0) continue;
			lay(target, p, alpha, d, at + 11, at + 14, surface, d[at + 10]!);
		}
	}
}
function lay(
	{ lamps, sky, surface, lux }: Target,
	p: number,
	alpha: number,
	d: Float32Array,
	byLamps: number,
	bySky: number,
	its: number,
	itsLux: number
): void {
	const q = p * 3;
	const rest = 1 - alpha;
	lamps[q] = rest * lamps[q]! + alpha * d[byLamps]!;
	lamps[q + 1] = rest * lamps[q + 1]! + alpha * d[byLamps + 1]!;
	lamps[q + 2] = rest * lamps[q + 2]! + alpha * d[byLamps + 2]!;
	sky[q] = rest * sky[q]! + alpha * d[bySky]!;
	sky[q + 1] = rest * sky[q + 1]! + alpha * d[bySky + 1]!;
	sky[q + 2] = rest * sky[q + 2]! + alpha * d[bySky + 2]!;
	if (alpha >= 0.5) {
		surface[p] = its;
		lux[p] = itsLux;
	}
}
/** The light across a band where it is drawn: lamps, then sky; used again and again. */
const mixed = new Float32Array(6);

function drawBand(target: Target, d: Float32Array, at: number, surface: number, from: number, to: number): void {
	const [ax, ay, bx, by] = [d[at + 4]!, d[at + 5]!, d[at + 6]!, d[at + 7]!];
	const [ra, rb] = [d[at + 8]!, d[at + 9]!];
	const [ex, ey] = [bx - ax, by - ay];
	const square = ex * ex + ey * ey;
	const length = Math.sqrt(square) || 1;
	const most = Math.max(ra, rb, 0.5) + 0.5;
	const x0 = Math.max(0, Math.floor(Math.min(ax, bx) - most));
	const x1 = Math.min(target.width - 1, Math.ceil(Math.max(ax, bx) + most));
	const y0 = Math.max(from, Math.floor(Math.min(ay, by) - most));
	const y1 = Math.min(to - 1, Math.ceil(Math.max(ay, by) + most));
	const depth = d[at + 1]! - 0.02;
	const rough = d[at + 32] === 1 && most > 2;
	const end = 1 / length;
	for (let y = y0; y <= y1; y++) {
		for (let x = x0; x <= x1; x++) {
			const p = y * target.width + x;
			if (target.depth[p]! < depth) continue;
			const px = x + 0.5 - ax;
			const py = y + 0.5 - ay;
			const along = square > 0 ? (px * ex + py * ey) / square : 0;
			// Wood goes on in the next piece: its ends are cut square, a pixel over.
			if (rough && (along < -end || along > 1 + end)) continue;
			const t = Math.min(1, Math.max(0, along));
			const off = Math.hypot(px - t * ex, py - t * ey);
			const told = ra + (rb - ra) * t;
			const r = Math.max(told, 0.5);
			const alpha = Math.min(1, r - off + 0.5) * Math.min(1, told / 0.5);
			if (alpha <= 0) continue;
			// −1 at the left of someone going from the first end to the second on the picture, +1 at the right.
			const side = Math.max(-1, Math.min(1, (ex * py - ey * px) / length / r));
			const [left, right] = [Math.max(0, -side), Math.max(0, side)];
			const middle = 1 - left - right;
			const grain = rough ? bark(side, y) : 1;
			for (let i = 0; i < 3; i++) {
				const a = left * d[at + 11 + i]! + middle * d[at + 14 + i]! + right * d[at + 17 + i]!;
				const b = left * d[at + 20 + i]! + middle * d[at + 23 + i]! + right * d[at + 26 + i]!;
				mixed[i] = grain * (a + (b - a) * t);
				mixed[3 + i] = grain * d[at + 29 + i]!;
			}
			lay(target, p, alpha, mixed, 0, 3, surface, d[at + 10]!);
		}
	}
}
/** Furrows along the trunk, a little broken by height; alike on both hands. */
const bark = (side: number, row: number): number => 0.72 + 0.56 * noise2(Math.abs(side) * 3.2, row * 0.16, 91);
