/** Fixtures as small bodies. Their lenses show a faint glow, so that they can be found: no beam is drawn in the air. */
import type { Plan } from '../domain/plan';
import type { Fixture } from '../domain/placement';
import type { Site } from '../domain/site';
import { stroke, type Stroke } from './strokes';

type Name = (kind: string, name: string) => number;
/** Share of its lumens that a lens scatters every way: our assumption. */
const scattered = 0.001;
const metal = [0.05, 0.047, 0.042] as const;
const light = [0.5, 0.5, 0.5] as const;

/** Luminance of a lens of that radius that scatters its share of the lumens evenly: Φ = 4π·L·A of a ball's outline, A = πr². */
const lensGlow = (lumens: number, radius: number): number =>
	(scattered * lumens) / (4 * Math.PI * Math.PI * radius * radius);

export function fixtureStrokes(plan: Plan, name: Name): Stroke[] {
	return plan.fixtures.flatMap((fixture) => bodyOf(fixture, name('fixture', fixture.label)));
}
function bodyOf(fixture: Fixture, surface: number): Stroke[] {
	const { at, height, aim, lamp, technique } = fixture;
	const lens = (x: number, y: number, z: number, radius: number, wide: number): Stroke =>
		stroke({ x: x - wide, y, z }, { x: x + wide, y, z }, radius, surface, light, {
			glow: lensGlow(lamp.lumens, Math.max(radius, wide)),
			kelvin: lamp.colourTemperature
		});
	if (technique === 'path' || technique === 'drive' || technique === 'area') {
		const wide = technique === 'drive' ? 0.07 : 0.09;
		return [
			stroke({ ...at, z: 0 }, { ...at, z: height }, 0.012, surface, metal),
			lens(at.x, at.y, height, 0.02, wide * 0.45),
			stroke(
				{ x: at.x - wide, y: at.y, z: height + 0.025 },
				{ x: at.x + wide, y: at.y, z: height + 0.025 },
				0.014,
				surface,
				metal
			),
			stroke(
				{ x: at.x - wide * 0.5, y: at.y, z: height + 0.045 },
				{ x: at.x + wide * 0.5, y: at.y, z: height + 0.045 },
				0.014,
				surface,
				metal
			)
		];
	}
	if (fixture.mount === 'flush') return [lens(at.x, at.y, 0.012, 0.009, 0.04)];
	if (technique === 'step') return [lens(at.x, at.y, height, 0.02, 0.04)];
	const toward = aim ? aim.point : { x: at.x, y: at.y, z: height + 1 };
	const size = Math.hypot(toward.x - at.x, toward.y - at.y, toward.z - height) || 1;
	const on = (metres: number) => ({
		x: at.x + ((toward.x - at.x) / size) * metres,
		y: at.y + ((toward.y - at.y) / size) * metres,
		z: height + ((toward.z - height) / size) * metres
	});
	const front = on(0.012);
	return [
		stroke({ ...at, z: 0 }, { ...at, z: height }, 0.011, surface, metal),
		stroke(on(-0.1), on(0), 0.035, surface, metal),
		lens(front.x, front.y, front.z, 0.016, 0.02)
	];
}

/** Lights that are there already: a lantern at the wall, a lamp on its post. Their lenses are bright: that is what is seen of them. */
export function existingStrokes(site: Site, name: Name): Stroke[] {
	return site.existing.flatMap(({ at, height, kind, name: words }) => {
		const surface = name('light', words);
		const radius = kind === 'street-lamp' ? 0.11 : 0.055;
		// From memory: a lantern's glass shows some hundreds to thousands of cd/m².
		const bulb = stroke({ ...at, z: height - radius }, { ...at, z: height + radius }, radius, surface, light, {
			glow: 900,
			kelvin: kind === 'street-lamp' ? 3000 : 2700
		});
		const over = height + radius * 1.9;
		const cap = stroke(
			{ x: at.x - radius * 1.2, y: at.y, z: over },
			{ x: at.x + radius * 1.2, y: at.y, z: over },
			radius * 0.28,
			surface,
			metal
		);
		const post =
			kind === 'street-lamp'
				? [stroke({ ...at, z: 0 }, { ...at, z: height - radius }, [0.07, 0.045], surface, metal)]
				: [];
		return [...post, bulb, cap];
	});
}
