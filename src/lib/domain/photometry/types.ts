/** How a source throws its light, by direction: a law (`laws.ts`) or a measured table (`table.ts`). */
export interface Photometry {
	/** Total, lumens: the integral of `candela` over all directions. */
	lumens: number;
	/** The same all round its axis: `azimuth` does not matter. */
	symmetric: boolean;
	/**
	 * Candela in a direction: cosine of the angle off the axis (−1 to 1), and degrees round the axis, 0 to 360. Azimuths
	 * count as the C-planes of type C photometry do: counterclockwise as seen looking along the axis from the source (from
	 * above, for a lamp that looks down). Where azimuth 0 lies in the yard: `sourceFrame`.
	 */
	candela: (cosine: number, azimuth: number) => number;
}
