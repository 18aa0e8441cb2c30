/** Seeded changes by hand for tests: some sensible, some as odd as a file can hold. Always valid by the schema. */
import type { Site } from '../../site';
import type { AddedFixture, FixtureEdit, HandFixtures } from '../../yard';
import { fixtureModels } from '../../shared/catalogue';
import type { Fixture } from '../types';
import { bodyOf } from './edits';

/** Numbers in [0, 1): a linear congruential generator (Numerical Recipes, 3rd ed., section 7.1.5), upper bits. */
export function dice(seed: number): { roll: () => number; of: <T>(list: readonly T[]) => T } {
	let state = (seed * 2654435761) >>> 0;
	const roll = (): number => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return (state >>> 8) / 2 ** 24;
	};
	return { roll, of: (list) => list[Math.floor(roll() * list.length)]! };
}
const held = (value: number): number => Math.round(Math.min(500, Math.max(-500, value)) * 100) / 100;
export const yardPoint = ({ x, y }: { x: number; y: number }) => ({ along: held(x), out: held(y) });

/** What the layout page writes when a light is pinned as it stands. */
export const pinned = ({ id, at, aim }: Fixture): FixtureEdit => ({
	id,
	from: { along: at.x, out: at.y },
	at: { along: at.x, out: at.y },
	pinned: true,
	...(aim ? { aim: { along: aim.point.x, out: aim.point.y, height: Math.max(0, aim.point.z) } } : {})
});

function randomEdit(fixture: Fixture, seed: number): FixtureEdit {
	const { roll, of } = dice(seed);
	const { id, at, technique } = fixture;
	const far = of([0.2, 1, 4, 30]);
	const place = yardPoint({ x: at.x + (roll() - 0.5) * far, y: at.y + (roll() - 0.5) * far });
	const from = roll() < 0.8 ? { from: yardPoint(at) } : {};
	switch (Math.floor(roll() * 5)) {
		case 0:
			return { id, ...from, at: place };
		case 1:
			return pinned(fixture);
		case 2:
			return { id, ...from, removed: true };
		case 3:
			return {
				id,
				...from,
				aim: roll() < 0.5 ? { ...place, height: roll() * 8 } : { bearing: roll() * 360, tilt: roll() * 180 }
			};
		default:
			return {
				id,
				...from,
				model: roll() < 0.9 ? of(fixtureModels.filter(({ body }) => body === bodyOf(technique))).id : 'no-such-lamp',
				...(roll() < 0.4 ? { at: place } : {})
			};
	}
}
export function randomHand(site: Site, fixtures: readonly Fixture[], seed: number): HandFixtures {
	const { roll, of } = dice(seed);
	const chosen = fixtures.filter(() => roll() < 0.3);
	const added: AddedFixture[] = Array.from({ length: Math.floor(roll() * 3) }, (_, i) => {
		const tree = site.trees[0];
		return {
			id: `light-${i + 1}`,
			technique: of(['uplight', 'wash', 'graze', 'path', 'step', 'drive', 'area', 'number'] as const),
			at: yardPoint({ x: roll() * 20, y: roll() * 15 }),
			...(tree && roll() < 0.4 ? { target: { kind: 'tree' as const, id: tree.id } } : {})
		};
	});
	const strange: FixtureEdit[] =
		roll() < 0.3
			? [
					{ id: 'nobody/path-1', at: { along: 3, out: 3 } },
					{ id: 'a/b', removed: true }
				]
			: [];
	return { set: [...chosen.map((fixture, i) => randomEdit(fixture, seed * 31 + i)), ...strange], added };
}
