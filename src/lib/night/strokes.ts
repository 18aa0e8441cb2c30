/** Thin round things: trunks, branches, posts, rails, the stems and heads of fixtures. Metres. */
export interface Stroke {
	ax: number;
	ay: number;
	az: number;
	bx: number;
	by: number;
	bz: number;
	/** Radii at its ends. */
	ra: number;
	rb: number;
	surface: number;
	/** Albedo in linear red, green, blue. */
	red: number;
	green: number;
	blue: number;
	/** Luminance that it gives off by itself, cd/m², in the colour of `kelvin`; 0 for all but lenses. */
	glow: number;
	kelvin: number;
	/** A tree's wood: it lies within that crown, an index of the scene's trees; −1 for all else. */
	tree: number;
}
type Place = { x: number; y: number; z: number };
type Paint = readonly [number, number, number];

/** A stroke between two places. */
export const stroke = (
	a: Place,
	b: Place,
	radius: number | readonly [number, number],
	surface: number,
	paint: Paint,
	more: Partial<Stroke> = {}
): Stroke => ({
	ax: a.x,
	ay: a.y,
	az: a.z,
	bx: b.x,
	by: b.y,
	bz: b.z,
	ra: typeof radius === 'number' ? radius : radius[0],
	rb: typeof radius === 'number' ? radius : radius[1],
	surface,
	red: paint[0],
	green: paint[1],
	blue: paint[2],
	glow: 0,
	kelvin: 0,
	tree: -1,
	...more
});
