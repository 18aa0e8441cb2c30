/**
 * How a picture lies under the drawing: a similarity from its pixels (x right, y down, from its upper left corner) to metres in
 * the yard's frame (x along the front, y out to the street, which is down on the drawing). The picture must look straight down.
 */
import { distance, rotated, scale, subtract, type Point } from '../../domain/shared/geometry';
import type { Underlay } from '../../domain/yard';

/** As SVG writes it: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];
export interface Placed {
	/** Pixels to metres. */
	matrix: Matrix;
	/** Of the picture in the yard, metres: upper left, upper right, lower right, lower left as the picture is looked at upright. */
	corners: readonly [Point, Point, Point, Point];
	/** Metres to a pixel. */
	metresPerPixel: number;
	/** The scale is known. Without it the picture lies there at a size of our choosing. */
	isToScale: boolean;
	/** Where it lies is known. */
	isInPlace: boolean;
}

/** Of a picture of which nothing is told: the length of its longer side and where its middle lies, metres. */
const untold = { side: 30, middle: { x: 6, y: 6 } } as const;
/** Pixels. Marks closer than that name no scale: a slip of one pixel would be the whole of it. */
const leastApart = 2;

/** Pixels between the two marks; null while they name no scale. */
export function pixelsApart({ from, to }: Pick<Underlay, 'from' | 'to'>): number | null {
	const apart = from && to ? distance(from, to) : 0;
	return apart >= leastApart ? apart : null;
}

/** How the picture lies as far as it is told: what is missing is taken so that it can be seen, and said. */
export function placed(underlay: Underlay): Placed {
	const { width, height, from, apart, at, turn = 0 } = underlay;
	const between = pixelsApart(underlay);
	const isToScale = between !== null && apart !== undefined;
	const metresPerPixel = isToScale ? apart / between : untold.side / Math.max(width, height);
	const isInPlace = from !== undefined && at !== undefined;
	const pin: Point = isInPlace ? from : { x: width / 2, y: height / 2 };
	const there: Point = isInPlace ? { x: at.along, y: at.out } : untold.middle;
	const { x: a, y: b } = scale(rotated({ x: 1, y: 0 }, turn), metresPerPixel);
	const origin = subtract(there, scale(rotated(pin, turn), metresPerPixel));
	const matrix: Matrix = [a, b, -b, a, origin.x, origin.y];
	const corner = (x: number, y: number) => toYard({ matrix }, { x, y });
	return {
		matrix,
		corners: [corner(0, 0), corner(width, 0), corner(width, height), corner(0, height)],
		metresPerPixel,
		isToScale,
		isInPlace
	};
}
/** Where a pixel of the picture lies in the yard, metres. */
export function toYard({ matrix: [a, b, c, d, e, f] }: Pick<Placed, 'matrix'>, { x, y }: Point): Point {
	return { x: a * x + c * y + e, y: b * x + d * y + f };
}
/** Which pixel of the picture lies at a place in the yard. */
export function toPicture({ matrix: [a, b, c, d, e, f] }: Pick<Placed, 'matrix'>, at: Point): Point {
	const from = { x: at.x - e, y: at.y - f };
	const det = a * d - b * c;
	return { x: (d * from.x - c * from.y) / det, y: (a * from.y - b * from.x) / det };
}
