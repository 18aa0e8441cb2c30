export interface Point {
	readonly x: number;
	readonly y: number;
}
export type Line = readonly Point[];
/** A closed ring, first point not repeated. */
export type Polygon = readonly Point[];
export interface Box {
	minX: number;
	minY: number;
	maxX: number;
	maxY: number;
}
