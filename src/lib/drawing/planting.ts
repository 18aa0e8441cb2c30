/** Beds, water and trees. A tree's edge tells its form: scallops, points for a cone, fronds for a palm. */
import type { Box, Point, Polygon } from '../domain/shared/geometry';
import type { Area, Site, Tree } from '../domain/site';
import type { Mark } from './marks';
import { boxAround, centroid, circlePath, closedPath, mm, moveTo } from './path';

const onCircle = (at: Point, r: number, turn: number): Point => ({
	x: at.x + r * Math.cos(turn),
	y: at.y + r * Math.sin(turn)
});

/** A leafy edge: bumps of about 0.6 m, fewer on a small crown, each set off a little so that no two trees look stamped. */
export function canopyPath(tree: Pick<Tree, 'id' | 'at' | 'spread' | 'form'>): string {
	const r = Math.max(0.15, tree.spread / 2);
	const seed = [...tree.id].reduce((sum, char) => (sum * 31 + char.charCodeAt(0)) % 997, 7);
	const start = (seed / 997) * Math.PI * 2;
	const bumps = Math.min(30, Math.max(9, Math.round((2 * Math.PI * r) / 0.75)));
	const angle = (n: number) => start + ((n + 0.22 * Math.sin(n * 2.4 + seed)) * 2 * Math.PI) / bumps;
	const points = Array.from({ length: bumps }, (_, n) => n);
	if (tree.form === 'conical')
		return closedPath(
			points.flatMap((n) => [
				onCircle(tree.at, r, angle(n)),
				onCircle(tree.at, r * 0.84, (angle(n) + angle(n + 1)) / 2)
			])
		);
	if (tree.form === 'palm')
		return points
			.filter((n) => n % 2 === 0)
			.map((n) => {
				const tip = onCircle(tree.at, r, angle(n));
				const bow = onCircle(tree.at, r * 0.6, angle(n) + 0.22);
				return `${moveTo(tree.at)}Q${mm(bow.x)} ${mm(bow.y)} ${mm(tip.x)} ${mm(tip.y)}`;
			})
			.join('');
	const inner = r * 0.965;
	const first = onCircle(tree.at, inner, angle(0));
	const arcs = points.map((n) => {
		const from = onCircle(tree.at, inner, angle(n));
		const to = onCircle(tree.at, inner, n + 1 === bumps ? angle(0) : angle(n + 1));
		const bulge = Math.hypot(to.x - from.x, to.y - from.y) * 0.62;
		return `A${mm(bulge)} ${mm(bulge)} 0 0 1 ${mm(to.x)} ${mm(to.y)}`;
	});
	return `${moveTo(first)}${arcs.join('')}Z`;
}

function treeMarks(tree: Tree, px: number): Mark[] {
	return [
		{ kind: 'path', key: `tree-${tree.id}`, d: canopyPath(tree), ink: 'planting', weight: 1.2, fill: 'none' },
		{
			kind: 'path',
			key: `trunk-${tree.id}`,
			d: circlePath(tree.at, Math.max(tree.trunkDiameter / 2, 2.6 * px)),
			ink: 'planting',
			weight: 0,
			fill: 'planting'
		}
	];
}

/** Inside it one digs by hand (rule tree.roots). */
export const rootZone = (tree: Tree): Mark => ({
	kind: 'path',
	key: `roots-${tree.id}`,
	d: circlePath(tree.at, tree.rootRadius),
	ink: 'soft',
	weight: 0.9,
	fill: 'none',
	dash: [3, 3]
});

/** Where the waves are drawn: the upper middle, so that the name fits below. Empty for water without extent. */
export function wavesBox(ring: Polygon): Box[] {
	const box = boxAround(ring);
	if (!box) return [];
	const middle = centroid(ring);
	const half = (box.maxX - box.minX) * 0.18;
	const tall = (box.maxY - box.minY) * 0.13;
	const y = middle.y - tall * 0.8;
	return [{ minX: middle.x - half, maxX: middle.x + half * 1.25, minY: y - tall * 1.4, maxY: y + tall * 1.2 }];
}
/** Three short waves. */
function waves(area: Area): string {
	const [box] = wavesBox(area.polygon);
	if (!box) return '';
	const half = (box.maxX - box.minX) / 2.25;
	const gap = (box.maxY - box.minY) / 2.6;
	const middle = { x: box.minX + half, y: box.minY + gap * 1.4 };
	const bow = Math.min(half * 0.3, gap * 0.6);
	return [-1, 0, 1]
		.map((row) => {
			const y = middle.y + row * gap;
			const x = middle.x - half + (row === 0 ? half * 0.25 : 0);
			return `M${mm(x)} ${mm(y)}q${mm(half / 2)} ${mm(-bow * 2)} ${mm(half)} 0t${mm(half)} 0`;
		})
		.join('');
}

export function drawPlanting(site: Site, px: number): Mark[] {
	const sound = site.areas.filter((area) => area.polygon.length >= 3);
	const beds = sound.filter((area) => area.kind === 'bed');
	const water = sound.filter((area) => area.kind === 'water');
	return [
		...beds.map((area): Mark => ({
			kind: 'path',
			key: `bed-${area.id}`,
			d: closedPath(area.polygon),
			ink: 'planting',
			weight: 1.1,
			fill: 'bed',
			dash: [7, 2]
		})),
		...water.flatMap((area): Mark[] => [
			{ kind: 'path', key: `water-${area.id}`, d: closedPath(area.polygon), ink: 'water', weight: 1.5, fill: 'sheet' },
			{ kind: 'path', key: `waves-${area.id}`, d: waves(area), ink: 'water', weight: 1.1, fill: 'none' }
		]),
		...site.trees.flatMap((tree) => treeMarks(tree, px))
	];
}
