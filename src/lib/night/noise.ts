/** Deterministic grain: the same place gives the same value, always. No unit: values from 0 to 1. */

/** A hash of three whole numbers, 0 to 1 (mixing steps of the kind of MurmurHash3's finisher). */
export function hash3(x: number, y: number, z: number): number {
	let h = (Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(z, 0x9e3779b1)) | 0;
	h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
	h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
	return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}
const eased = (t: number): number => t * t * (3 - 2 * t);

/** Smooth value noise over the plane; one cell is one unit. */
export function noise2(x: number, y: number, layer: number): number {
	const i = Math.floor(x);
	const j = Math.floor(y);
	const u = eased(x - i);
	const v = eased(y - j);
	const a = hash3(i, j, layer);
	const c = hash3(i, j + 1, layer);
	const near = a + (hash3(i + 1, j, layer) - a) * u;
	const far = c + (hash3(i + 1, j + 1, layer) - c) * u;
	return near + (far - near) * v;
}

/** A number of 32 bits for a word (FNV-1a). */
export function seedOf(word: string): number {
	let h = 0x811c9dc5;
	for (let i = 0; i < word.length; i++) h = Math.imul(h ^ word.charCodeAt(i), 0x01000193);
	return h | 0;
}
/** A row of numbers from 0 to 1 that a seed fixes (mulberry32). */
export function sequence(seed: number): () => number {
	let state = seed | 0;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let t = Math.imul(state ^ (state >>> 15), 1 | state);
		t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
		return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
	};
}
