/** For tests: a random yard with paving, gates and posts strewn over it, some of them where they cannot be. */
import type { Yard, YardPoint } from '../yard';
import { awkwardYard } from './awkward.testing';

/** Park & Miller's minimal standard generator: 0 ≤ next < 1. */
function generator(seed: number): () => number {
	let state = (seed % 2147483646) + 1;
	return () => ((state = (state * 48271) % 2147483647) - 1) / 2147483646;
}

/** A patio, an apron, a ring or a sliver round a place: four to seven corners, told as a tape gives them, to the centimetre. */
function outline(random: () => number, along: number, out: number): YardPoint[] {
	const corners = 4 + Math.floor(random() * 4);
	const [wide, deep] = [0.6 + random() * 5, 0.6 + random() * 5];
	return Array.from({ length: corners }, (_, i) => {
		const angle = (2 * Math.PI * (i + 0.3 * random())) / corners;
		const reach = (value: number): number => Math.max(-500, Math.min(500, Math.round(value * 100) / 100));
		return { along: reach(along + wide * Math.cos(angle)), out: reach(out + deep * Math.sin(angle)) };
	});
}

/** The yard of a seed with up to three paved areas, a gate or two on each walk, and posts at most drives. */
export function pavedYard(seed: number): Yard {
	const yard = awkwardYard(seed);
	// Neighbouring seeds of this generator begin alike: far apart, they do not.
	const random = generator((seed * 1_234_577) % 2147483646);
	random();
	const width = (yard.house.sections ?? []).reduce((sum, part) => sum + part.width, 0);
	const street = typeof yard.lot.street === 'number' ? yard.lot.street : 9;
	const lines = [...(yard.walks ?? []), ...(yard.drives ?? [])].flatMap(({ line }) => line ?? []);
	const paved = Array.from({ length: Math.floor(random() * 4) }, (_, i) => {
		// On a point of a walk or a drive as often as somewhere in the yard: there it gets in the way.
		const onLine = random() < 0.5 ? lines[Math.floor(random() * lines.length)] : undefined;
		const at = onLine ?? { along: random() * (width + 8) - 4, out: random() * street };
		return { id: `paved-${i + 1}`, name: 'patio', outline: outline(random, at.along, at.out), cars: random() < 0.5 };
	});
	const metres = (most: number): number => Math.round(random() * most * 100) / 100;
	return {
		...yard,
		walks: yard.walks?.map((walk) => ({
			...walk,
			gates: Array.from({ length: Math.floor(random() * 3) }, (_, i) => ({
				id: `gate-${i + 1}`,
				at: random() < 0.3 ? 0 : metres(street * 1.1)
			}))
		})),
		drives: yard.drives?.map((drive) => ({
			...drive,
			posts: random() < 0.7,
			...(random() < 0.7 ? { postsAt: random() < 0.3 ? 0 : metres(Math.min(90, street * 1.2)) } : {})
		})),
		spots: { ...yard.spots, paved }
	};
}
