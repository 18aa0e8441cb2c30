/** Which trees the section can show, each with the light that is aimed at it, and who may look into that light. */
import type { Fixture } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import type { Tree } from '$lib/domain/site';
import type { Watcher } from '$lib/drawing/section/look';

export interface LitTree {
	tree: Tree;
	fixture: Fixture;
}
export function litTrees({ fixtures, site }: Plan): LitTree[] {
	return fixtures.flatMap((fixture) => {
		const ids = [fixture.target, ...(fixture.also ?? [])].flatMap(({ kind, id }) => (kind === 'tree' ? [id] : []));
		return site.trees.filter(({ id }) => ids.includes(id)).map((tree) => ({ tree, fixture }));
	});
}
/** Height of the eyes of someone standing, metres (from memory). */
const standing = 1.5;

/** Whoever gets most of the bare lamp; where nobody does, someone at the place the tree is looked at from. */
export function watcherOf({ light }: Plan, { tree, fixture }: LitTree): Watcher {
	const bare = light.glare.filter((one) => one.fixture === fixture.id && one.eye.kind !== 'window');
	const worst = bare.toSorted((a, b) => b.candela - a.candela)[0];
	if (worst) {
		const { eye, candela } = worst;
		return { kind: eye.kind, id: eye.id, at: eye.at, candela, bare: worst.bare };
	}
	return { kind: 'walk', id: '', at: { ...tree.seenFrom, z: standing }, candela: null, bare: null };
}
