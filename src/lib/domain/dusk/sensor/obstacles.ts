/** What stands between a sensor and the sky: the house and its eaves, porch roofs, garden walls, crowns. Metres in the frame of the site. */
import { eavesLids, houseSides, lidOf, screenOf, type Lid, type Screen } from '../../light';
import { areaWords, type Site, type Tree } from '../../site';
import { calledThe } from '../../yard';
import type { Yard } from '../../yard/schema';
import type { SensorView } from '../types';
import { keepsLeaves, throughCrown } from './leaves';

export type Taker = Omit<SensorView['taken'][number], 'share'>;
/** A crown as an ellipsoid between its base and its top, as the light stage has it; the parts of the light that pass it. */
export interface Crown {
	x: number;
	y: number;
	z: number;
	/** Half its width, half its height. */
	radius: number;
	half: number;
	leafOn: number;
	leafOff: number;
}
/** Each with the index of its taker. */
interface Taking<Shape> {
	shape: Shape;
	taker: number;
}
export interface Obstacles {
	takers: readonly Taker[];
	screens: readonly Taking<Screen>[];
	lids: readonly Taking<Lid>[];
	crowns: readonly Taking<Crown>[];
}
const isRoofed = ({ kind, sort }: Site['areas'][number]): boolean => kind === 'porch' && sort !== 'open';

function crownOf(tree: Tree, keeps: boolean): Crown | null {
	const half = (tree.height - tree.crownBase) / 2;
	const radius = tree.spread / 2;
	if (!(half > 0) || !(radius > 0)) return null;
	const { leafOn, leafOff } = throughCrown();
	return { ...tree.at, z: tree.crownBase + half, radius, half, leafOn, leafOff: keeps ? leafOn : leafOff };
}

/** All of a site that can take sky from a sensor. Roofs above the eaves and trunks are left out, as in the light stage; the yard is flat. */
export function obstaclesOf(site: Site, yard: Pick<Yard, 'trees'>): Obstacles {
	const takers: Taker[] = [];
	const screens: Taking<Screen>[] = [];
	const lids: Taking<Lid>[] = [];
	const crowns: Taking<Crown>[] = [];
	const by = (kind: Taker['kind'], id: string, name: string): number => takers.push({ kind, id, name }) - 1;
	const stand = (shape: Screen | null, taker: number): void => {
		if (shape) screens.push({ shape, taker });
	};
	if (site.house.length > 2) {
		const sides = houseSides(site);
		const house = by('house', 'house', 'the house');
		for (const { a, b, height, peak } of sides) stand(screenOf(a, b, height, peak), house);
		lids.push({ shape: lidOf(site.house, site.eaves), taker: house });
		const eaves = by('eaves', 'eaves', 'the eaves');
		for (const shape of eavesLids(sides, site.house)) lids.push({ shape, taker: eaves });
	}
	for (const wall of site.walls)
		if (wall.of === 'garden')
			stand(screenOf(wall.from, wall.to, wall.height, null), by('wall', wall.id, calledThe(wall.name, 'garden wall')));
	for (const porch of site.areas)
		if (isRoofed(porch)) {
			const name = `the roof of ${calledThe(porch.name, areaWords.porch)}`;
			lids.push({ shape: lidOf(porch.polygon, porch.under ?? site.eaves), taker: by('porch', porch.id, name) });
		}
	for (const tree of site.trees) {
		const shape = crownOf(tree, keepsLeaves(tree, yard));
		if (shape) crowns.push({ shape, taker: by('tree', tree.id, calledThe(tree.name, 'tree')) });
	}
	return { takers, screens, lids, crowns };
}
