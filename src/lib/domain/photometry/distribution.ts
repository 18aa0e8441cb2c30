/**
 * How a source throws its light: intensity in candela by the cosine of the angle off its axis. One law covers the three
 * kinds used here, I = I0 · cosⁿ γ, cut off sharply at `cosCut` where a shade ends it.
 */
export interface Distribution {
	/** Candela on the axis. */
	centre: number;
	/** Exponent of the cosine. */
	n: number;
	/** No light beyond this angle: its cosine. 0 = everything ahead of the source. */
	cosCut: number;
}

/**
 * Exponent of the cosine that halves the intensity at half the beam angle: n = ln 0.5 / ln cos(θ/2). The beam angle is
 * the full angle at half the centre intensity (CIE S 017:2020, 17-27-077), degrees, above 0 and below 180.
 */
export const beamExponent = (beamAngle: number): number =>
	Math.log(0.5) / Math.log(Math.cos((Math.min(Math.max(beamAngle, 1), 179) * Math.PI) / 360));

/**
 * Centre intensity of a cosⁿ source of so many lumens that is cut off at `cosCut`:
 * Φ = 2π·I0·∫ cosⁿγ sinγ dγ = 2π·I0·(1 − cosCutⁿ⁺¹)/(n + 1).
 */
const centreOf = (lumens: number, n: number, cosCut: number): number =>
	(lumens * (n + 1)) / (2 * Math.PI * (1 - cosCut ** (n + 1)));

/** An aimed lamp. `lumens`, and `beamAngle` in degrees. */
export function beam(lumens: number, beamAngle: number): Distribution {
	const n = beamExponent(beamAngle);
	return { centre: centreOf(lumens, n, 0), n, cosCut: 0 };
}

/** A flat diffuse source: I = I0 · cos γ, Φ = π · I0. */
export const lambertian = (lumens: number): Distribution => ({ centre: lumens / Math.PI, n: 1, cosCut: 0 });

/**
 * The head of a path light: light downwards by its beam angle, ended by the rim of its shade `shadeAngle` degrees from
 * straight down (80 taken: our assumption for a shaded head).
 */
export function pathHead(lumens: number, beamAngle: number, shadeAngle = 80): Distribution {
	const n = beamExponent(beamAngle);
	const cosCut = Math.cos((shadeAngle * Math.PI) / 180);
	return { centre: centreOf(lumens, n, cosCut), n, cosCut };
}

/** A source that throws the same everywhere, candela = lumens / 4π. Behind it too, which the others do not. */
export const everywhere = (lumens: number): Distribution => ({ centre: lumens / (4 * Math.PI), n: 0, cosCut: -1 });

/** Candela at an angle off the axis whose cosine is given. */
export function intensity(distribution: Distribution, cosine: number): number {
	if (cosine < distribution.cosCut) return 0;
	if (distribution.n === 0) return distribution.centre;
	return cosine <= 0 ? 0 : distribution.centre * cosine ** distribution.n;
}
