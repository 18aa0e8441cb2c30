/** From metres to the units of a picture: about 600 × 420, in which words of 28 are read from the back of a room. */
import type { XY } from '$lib/domain/lesson';

export interface View {
	width: number;
	height: number;
	/** Units to a metre. */
	scale: number;
	at(p: XY): XY;
}
export interface Bounds {
	minX: number;
	minY: number;
	maxX: number;
	maxY: number;
}
export const most = { width: 600, height: 420 } as const;
/** Height of the words. */
export const letter = 28;
const wide = /[mwMW]/g;
const narrow = /[.,:il1 ]/g;
/** About how wide a word is, units: letters of the page's face, bold ones too. */
export function widthOf(text: string, size: number = letter): number {
	const count = (letters: RegExp) => text.match(letters)?.length ?? 0;
	return size * (0.6 * text.length + 0.3 * count(wide) - 0.25 * count(narrow));
}

/** A box of the yard (metres) as large as it goes into the picture. */
export function viewOf({ minX, minY, maxX, maxY }: Bounds): View {
	const scale = Math.min(most.width / (maxX - minX), most.height / (maxY - minY));
	return {
		width: (maxX - minX) * scale,
		height: (maxY - minY) * scale,
		scale,
		at: ({ x, y }) => ({ x: (x - minX) * scale, y: (y - minY) * scale })
	};
}
/** A number brought between two others; their middle where they leave no room. */
export const within = (least: number, value: number, most: number): number =>
	least > most ? (least + most) / 2 : Math.min(most, Math.max(least, value));
/** Around all points. */
export function boundsOf(points: readonly XY[], pad: number): Bounds {
	const xs = points.map(({ x }) => x);
	const ys = points.map(({ y }) => y);
	return {
		minX: Math.min(...xs) - pad,
		minY: Math.min(...ys) - pad,
		maxX: Math.max(...xs) + pad,
		maxY: Math.max(...ys) + pad
	};
}
