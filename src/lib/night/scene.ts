/** The plan as things to be looked at: panels, thin round things, crowns and ground. Pure; metres in the frame of the site, z up. */
import type { Plan } from '../domain/plan';
import type { Opening } from '../domain/site';
import { beddingOf } from './bedding';
import { crownOf, type Crown } from './crown';
import { signPanels, signPosts, supplyPanels } from './devices';
import { fixtureStrokes, existingStrokes } from './fixtures';
import { regionsOf, type Region } from './ground';
import { housePanels, neighbourPanels, porchStrokes } from './house';
import type { Panel } from './panels';
import { roofPanels } from './roof';
import { gardenPanels, railStrokes } from './spots';
import type { Stroke } from './strokes';
import { woodOf } from './wood';

export interface Scene {
	panels: Panel[];
	strokes: Stroke[];
	/** Of trees first, then of low plants in beds; and the surface of each. */
	crowns: Crown[];
	crownSurface: number[];
	regions: Region[];
	/** Number of the surface of what has no region: lawn, street, and the dark trees on the horizon. */
	lawn: number;
	street: number;
	beyond: number;
	/** Of windows and doors. */
	openings: Record<Opening['kind'], number>;
	/** y of the street's edge. */
	streetEdge: number;
	/** x about which a mirrored yard is mirrored: the middle of the house front, or of the lot. */
	centre: number;
	/** Upright fronts of the house, for the shade by day at their foot: x from, x to, y. */
	feet: readonly (readonly [number, number, number])[];
	surfaces: { kind: string; name: string }[];
}

/** The scene of a plan; total, also for a yard of which nothing is known. */
export function sceneOf(plan: Plan): Scene {
	const { site } = plan;
	const surfaces: Scene['surfaces'] = [{ kind: 'sky', name: 'sky' }];
	const known = new Map<string, number>();
	const name = (kind: string, words: string): number => {
		const key = `${kind}\n${words}`;
		const number = known.get(key) ?? surfaces.push({ kind, name: words }) - 1;
		known.set(key, number);
		return number;
	};
	const xs = site.house.map((p) => p.x);
	const centre = xs.length > 0 ? (Math.min(...xs) + Math.max(...xs)) / 2 : (site.leftBoundary + site.rightBoundary) / 2;
	const trees = site.trees.map((tree) => crownOf(tree, centre));
	const treeSurface = site.trees.map((tree) => name('tree', tree.name));
	const bedding = beddingOf(plan, centre);
	return {
		panels: [
			...housePanels(site, name),
			...neighbourPanels(site, name),
			...roofPanels(site, name('roof', 'roof'), name('eaves', 'eaves')),
			...gardenPanels(site, name),
			...signPanels(site, name),
			...supplyPanels(plan, name)
		],
		strokes: [
			...trees.flatMap((crown, i) => woodOf(crown, treeSurface[i]!, i)),
			...porchStrokes(site, name),
			...railStrokes(site, name),
			...signPosts(site, name),
			...fixtureStrokes(plan, name),
			...existingStrokes(site, name)
		],
		crowns: [...trees, ...bedding.map(({ crown }) => crown)],
		crownSurface: [...treeSurface, ...bedding.map(({ bed }) => name('bed', bed.name))],
		regions: regionsOf(site, name),
		lawn: name('lawn', 'lawn'),
		street: name('street', 'street'),
		beyond: name('beyond', 'trees beyond the yard, drawn, not surveyed'),
		openings: { window: name('window', 'window'), door: name('door', 'door'), garage: name('door', 'garage door') },
		streetEdge: site.street,
		centre: Number.isFinite(centre) ? centre : 0,
		feet: site.walls
			.filter((wall) => wall.of === 'house' && wall.front)
			.map((wall) => [Math.min(wall.from.x, wall.to.x), Math.max(wall.from.x, wall.to.x), wall.from.y] as const),
		surfaces
	};
}
