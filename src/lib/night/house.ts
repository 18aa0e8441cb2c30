/** The house as panels: its walls with gables, porches with slab, roof and posts, and next door where walls are shared. */
import type { Vector } from '../domain/photometry';
import type { Area, Site, Wall } from '../domain/site';
import { boxOf, sidesOf } from '../domain/shared/geometry';
import { bodyOf, panelOf, type Panel } from './panels';
import { partPanels, roofParts } from './roof';
import { stroke, type Stroke } from './strokes';

type Name = (kind: string, name: string) => number;
const at = (x: number, y: number, z: number): Vector => ({ x, y, z });

/** The face of a wall, with the triangle of its gable. */
export function wallPanel(wall: Wall, surface: number): Panel | null {
	const { from, to, height } = wall;
	const peak = wall.peak ?? null;
	const middle = at((from.x + to.x) / 2, (from.y + to.y) / 2, peak ?? height);
	const low = [at(from.x, from.y, 0), at(to.x, to.y, 0), at(to.x, to.y, height)];
	const corners = [...low, ...(peak !== null && peak > height ? [middle] : []), at(from.x, from.y, height)];
	return panelOf(corners, surface, 'wall', wall);
}
export function housePanels(site: Site, name: Name): Panel[] {
	const walls = site.walls.filter((wall) => wall.of === 'house');
	const faces = walls.map((wall) => wallPanel(wall, name('wall', wall.name)));
	// The back has no wall of its own: it closes the box.
	const back = Math.min(0, ...site.house.map((p) => p.y));
	const behind = sidesOf(site.house)
		.filter(([a, b]) => a.y === back && b.y === back)
		.map(([a, b]) =>
			panelOf(
				[at(a.x, a.y, 0), at(b.x, b.y, 0), at(b.x, b.y, site.eaves), at(a.x, a.y, site.eaves)],
				name('wall', 'back of the house'),
				'stone'
			)
		);
	const porches = site.areas.filter((area) => area.kind === 'porch');
	return [...faces, ...behind, ...porches.flatMap((porch) => porchPanels(porch, site, name))].filter(
		(panel) => panel !== null
	);
}
/** Height of a porch's floor, and thickness of its roof, metres: our assumptions. */
const floor = 0.15;
const thick = 0.18;
/** Underside of a porch's roof. */
const underOf = (porch: Area, site: Site): number => Math.min(porch.under ?? 2.5, site.eaves - 0.05);

function porchPanels(porch: Area, site: Site, name: Name): (Panel | null)[] {
	const surface = name('porch', porch.name);
	const slab = bodyOf(porch.polygon, 0, floor, surface, 'slab');
	if (porch.sort === 'open') return slab;
	const roof = name('roof', `roof of the ${porch.name}`);
	const { minX, maxX, minY, maxY } = boxOf(porch.polygon);
	const [x0, x1, y1] = [minX - 0.2, maxX + 0.2, maxY + 0.2];
	const under = underOf(porch, site);
	const low = under + thick;
	const rise = Math.min(0.3 * (y1 - minY), 0.8);
	return [
		...slab,
		panelOf([at(x0, minY, under), at(x1, minY, under), at(x1, y1, under), at(x0, y1, under)], roof, 'soffit'),
		panelOf([at(x0, y1, under), at(x1, y1, under), at(x1, y1, low), at(x0, y1, low)], roof, 'trim'),
		panelOf([at(x0, minY, under), at(x0, y1, under), at(x0, y1, low), at(x0, minY, low + rise)], roof, 'trim'),
		panelOf([at(x1, minY, under), at(x1, y1, under), at(x1, y1, low), at(x1, minY, low + rise)], roof, 'trim'),
		panelOf([at(x0, y1, low), at(x1, y1, low), at(x1, minY, low + rise), at(x0, minY, low + rise)], roof, 'roof')
	];
}
/** Posts at the outer corners of a roofed porch; a wide one has more between. */
export function porchStrokes(site: Site, name: Name): Stroke[] {
	return site.areas
		.filter((area) => area.kind === 'porch' && area.sort !== 'open')
		.flatMap((porch) => {
			const { minX, maxX, maxY } = boxOf(porch.polygon);
			const bays = Math.max(1, Math.round((maxX - minX) / 3));
			return Array.from({ length: bays + 1 }, (_, i) => {
				const x = minX + 0.1 + ((maxX - minX - 0.2) * i) / bays;
				const top = underOf(porch, site);
				const foot = { x, y: maxY - 0.1, z: floor };
				return stroke(foot, { ...foot, z: top }, 0.065, name('porch', porch.name), [0.6, 0.58, 0.53]);
			});
		});
}

/** Houses in a row, shown either side where the boundary runs through a shared wall: dark copies, turned about, since nothing is known of them. */
export function neighbourPanels(site: Site, name: Name): Panel[] {
	const parts = roofParts(site);
	const x1 = Math.max(0, ...site.house.map((p) => p.x));
	const openLeft = parts.some((part) => part.openLeft);
	const openRight = parts.some((part) => part.openRight);
	const places = [-3, -2, -1, 1, 2, 3].filter((place) => (place < 0 ? openLeft : openRight));
	return places.flatMap((place) => {
		// Every other house is the mirror image of its neighbour.
		const turned = place % 2 !== 0;
		const across = (x: number): number => (turned ? x1 - x : x) + place * x1;
		const surface = name('neighbour', 'next door, drawn, not surveyed');
		const fronts = site.walls.filter((wall) => wall.of === 'house' && wall.front);
		const faces = fronts.map((wall): Panel | null => {
			const [a, b] = [across(wall.from.x), across(wall.to.x)];
			const openings = turned
				? wall.openings.map((one) => ({ ...one, start: wall.length - one.end, end: wall.length - one.start }))
				: wall.openings;
			const from = { x: Math.min(a, b), y: wall.from.y };
			const to = { x: Math.max(a, b), y: wall.to.y };
			const panel = wallPanel({ ...wall, from, to, openings }, surface);
			return panel && { ...panel, material: 'neighbour' };
		});
		const roofs = parts.flatMap((part) => {
			const [a, b] = [across(part.x0), across(part.x1)];
			const moved = { ...part, x0: Math.min(a, b), x1: Math.max(a, b) };
			// Its boards stay dark: the light of the plan is not theirs.
			return partPanels(moved, surface, surface).map((panel): Panel =>
				panel.material === 'trim' ? { ...panel, material: 'roof' } : panel
			);
		});
		return [...faces, ...roofs].filter((panel) => panel !== null);
	});
}
