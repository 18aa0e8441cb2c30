/** The light of the catalogue's lamps: which law each kind of fixture follows. */
import type { FixtureModel, Lamp } from '../shared/catalogue';
import { beam, beamExponent, intensity, pathHead, type Distribution } from './distribution';
import { measuredPhotometry } from './measured';
import type { Photometry } from './types';

/** Half angle, degrees off the axis, beyond which the rim of a well set flush in the ground hides its lamp (our assumption). */
const wellRim = 75;

/** A law of `distribution.ts` of so many lumens. */
export const symmetricLaw = (distribution: Distribution, lumens: number): Photometry => ({
	lumens,
	symmetric: true,
	candela: (cosine) => intensity(distribution, cosine)
});

/**
 * What a lamp in a fixture of that kind throws, its frame's axis along the beam; `lumens`, and `beamAngle` in degrees.
 *
 * - spot, wash: cosⁿ about the axis, everything ahead of the lamp.
 * - spot set flush (a well): the same, ended by the rim of the well 75° off the axis.
 * - path, marker: cosⁿ about straight down, ended by the rim of the shade 80° off it.
 * - step: `stepLaw`, its axis `dip` degrees below the horizontal.
 * - any with a lamp of the person's own: the table of its file, shades and rims as measured.
 */
export function photometryOf(
	model: Pick<FixtureModel, 'body' | 'mount'>,
	lamp: Pick<Lamp, 'lumens' | 'beamAngle' | 'measured'>,
	dip = 30
): Photometry {
	const { lumens, beamAngle, measured } = lamp;
	if (measured) return measuredPhotometry(measured);
	if (model.body === 'step') return stepLaw(lumens, beamAngle, dip);
	if (model.body === 'path' || model.body === 'marker') return symmetricLaw(pathHead(lumens, beamAngle), lumens);
	return symmetricLaw(model.mount === 'flush' ? pathHead(lumens, beamAngle, wellRim) : beam(lumens, beamAngle), lumens);
}

/**
 * A step light: out of the riser and down, a hood or louvre keeping all light below the horizontal. I = I0 · cosⁿ γ about an
 * axis `dip` degrees below the horizontal (0 to 90), none where the direction rises. Azimuth 0 is up, as `sourceFrame` gives it.
 *
 * The total: let ψ be the angle in the upright plane of the axis and β the angle out of that plane. Then cos γ = cos β cos ψ and
 * dΩ = cos β dβ dψ, so that the integral falls into a factor of β and one of ψ, and the horizontal is ψ = dip:
 * Φ = I0 · 2π/(n + 1) · ∫ cosⁿψ dψ (−90° to dip) / ∫ cosⁿψ dψ (−90° to 90°).
 */
export function stepLaw(lumens: number, beamAngle: number, dip: number): Photometry {
	const n = beamExponent(beamAngle);
	const down = (Math.min(Math.max(dip, 0), 90) * Math.PI) / 180;
	const below = 0.5 + cosinePower(n, down) / (2 * cosinePower(n, Math.PI / 2));
	const centre = (lumens * (n + 1)) / (2 * Math.PI * below);
	const sine = Math.sin(down);
	const cosineDip = Math.cos(down);
	return {
		lumens,
		symmetric: down > Math.PI / 2 - 1e-9,
		candela: (cosine, azimuth) => {
			if (cosine <= 0) return 0;
			const rise = Math.sqrt(Math.max(0, 1 - cosine * cosine)) * Math.cos((azimuth * Math.PI) / 180) * cosineDip;
			return rise > cosine * sine ? 0 : centre * cosine ** n;
		}
	};
}

/**
 * ∫ cosⁿ ψ dψ from 0 to `end` (at most π/2), by Simpson's rule on 400 steps of t with ψ = π/2 · (1 − (1 − t)³): steps shrink towards
 * π/2, where cosⁿ is steep for wide beams. Within 1e-6 of it for beams of 10° to 170°.
 */
function cosinePower(n: number, end: number): number {
	// Narrow beams are over long before π/2: past e^-40 nothing is left.
	const reach = Math.min(end, Math.acos(Math.exp(-40 / n)));
	const last = 1 - Math.cbrt(1 - reach / (Math.PI / 2));
	const steps = 400;
	let sum = 0;
	for (let i = 0; i <= steps; i++) {
		const rest = 1 - (last * i) / steps;
		const psi = (Math.PI / 2) * (1 - rest ** 3);
		const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
		sum += weight * Math.max(0, Math.cos(psi)) ** n * ((3 * Math.PI) / 2) * rest * rest;
	}
	return (sum * last) / (3 * steps);
}
