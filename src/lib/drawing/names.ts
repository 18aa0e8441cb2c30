/** Which words the drawing carries, in the order in which they get their place: fixtures, runs, then names where there is room. */
import type { Box, Line, Point, Polygon } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import { leafOf, type Area } from '../domain/site';
import { placeLabels, textWidth, type LabelWish, type Obstacles } from './labels';
import type { Sizes, TextMark } from './marks';
import { boxAround, centroid, lineLength, pointAlong } from './path';
import { wavesBox } from './planting';
import { pathsOf } from './cables';
import { devicesOf, type Device } from './fixtures';

const round = (at: Point, r: number): Box => ({ minX: at.x - r, maxX: at.x + r, minY: at.y - r, maxY: at.y + r });
const closed = (ring: Polygon): Line => (ring.length > 0 ? [...ring, ring[0]!] : []);
const circle = (at: Point, r: number): Line =>
	Array.from({ length: 17 }, (_, n) => ({
		x: at.x + r * Math.cos((n * Math.PI) / 8),
		y: at.y + r * Math.sin((n * Math.PI) / 8)
	}));

function obstaclesOf(
	plan: Plan,
	px: number,
	sizes: Sizes,
	taken: readonly Box[],
	devices: readonly Device[]
): Obstacles {
	const { site } = plan;
	const symbol = (sizes.symbol + 1.5) * px;
	return {
		boxes: [
			...taken,
			...plan.fixtures.map((fixture) => round(fixture.at, symbol)),
			...site.existing.map((light) => round(light.at, symbol)),
			...site.areas.filter((area) => area.kind === 'water').flatMap((area) => wavesBox(area.polygon)),
			...site.trees.map((tree) => round(tree.at, Math.max(3 * px, tree.trunkDiameter / 2))),
			...devices.map((device) => round(device.shown, symbol * device.times))
		],
		near: plan.fixtures.map((fixture) => round(fixture.at, (sizes.symbol + 7) * px)),
		lines: [
			...plan.runs.flatMap((run, index) => pathsOf(run, index, plan.runs.length, px)),
			...site.strips.flatMap((strip) => [strip.left, strip.right, ...strip.gates.map((gate) => leafOf(strip, gate))]),
			...site.areas.map((area) => closed(area.polygon)),
			...site.trees.map((tree) => circle(tree.at, tree.spread / 2)),
			...site.walls.filter((wall) => wall.of === 'garden').map((wall) => [wall.from, wall.to])
		],
		walls: [closed(site.house)]
	};
}

/** Points along the longest leg of a run at which its name may stand. */
function runAnchors(paths: readonly Line[]): Point[] {
	const byLength = paths.toSorted((a, b) => lineLength(b) - lineLength(a)).slice(0, 4);
	return byLength.flatMap((path) =>
		[0.5, 0.3, 0.7].flatMap((share) => {
			const place = pointAlong(path, lineLength(path) * share);
			return place ? [place.at] : [];
		})
	);
}

/** Points inside an area: the middle, then off it. */
function inside(ring: Polygon): Point[] {
	const box = boxAround(ring);
	if (!box) return [];
	const middle = centroid(ring);
	const h = (box.maxY - box.minY) / 2;
	const w = (box.maxX - box.minX) / 2;
	return [0, -0.45, 0.45].flatMap((dy) => [0, -0.4, 0.4].map((dx) => ({ x: middle.x + dx * w, y: middle.y + dy * h })));
}

/** The part of a ring's extent that is on the sheet, enough to find its middle; nothing when it is all off it. */
function seen(ring: Polygon, box: Box): Polygon {
	const extent = boxAround(ring);
	if (
		!extent ||
		extent.maxX <= box.minX ||
		extent.minX >= box.maxX ||
		extent.maxY <= box.minY ||
		extent.minY >= box.maxY
	)
		return [];
	return ring.map((p) => ({
		x: Math.min(box.maxX, Math.max(box.minX, p.x)),
		y: Math.min(box.maxY, Math.max(box.minY, p.y))
	}));
}

type Named = (key: string, text: string, anchors: readonly Point[], from: number | null) => LabelWish;
/** The name of an area: within it when it fits there, else just outside. */
function nameOf(area: Area, named: Named, px: number, size: number): LabelWish {
	const key = `name-${area.kind}-${area.id}`;
	const box = boxAround(area.polygon);
	// Water has waves in its middle.
	const share = area.kind === 'water' ? 0.6 : 0.92;
	if (!box || textWidth(area.name, size) * px < (box.maxX - box.minX) * share)
		return named(key, area.name, inside(area.polygon), null);
	const x = (box.minX + box.maxX) / 2;
	const beside = [
		{ x, y: box.maxY },
		{ x, y: box.minY }
	];
	return named(key, area.name, beside, 2 * px);
}

/** All words on the yard. `taken` are boxes that furniture already stands on. */
export function drawNames(plan: Plan, box: Box, px: number, sizes: Sizes, taken: readonly Box[]): TextMark[] {
	const { site } = plan;
	const clear = sizes.symbol * px;
	const shown = (p: Point) => p.x >= box.minX && p.x <= box.maxX && p.y >= box.minY && p.y <= box.maxY;
	const devices = devicesOf(plan, px, sizes);
	const named = (key: string, text: string, anchors: readonly Point[], from: number | null): LabelWish => ({
		key,
		text,
		anchors,
		clear: from,
		size: sizes.name,
		ink: 'soft',
		bold: false,
		optional: true
	});
	const wishes: LabelWish[] = [
		...(site.house.length >= 3
			? [
					{
						...named('name-house', 'House', inside(seen(site.house, box)), null),
						size: sizes.label,
						ink: 'house' as const,
						bold: true,
						optional: false
					}
				]
			: []),
		...plan.fixtures.map((fixture): LabelWish => ({
			key: `label-${fixture.id}`,
			text: fixture.label,
			anchors: [fixture.at],
			clear: fixture.technique === 'step' ? clear * 1.3 : clear,
			size: sizes.label,
			ink: 'house',
			bold: true,
			optional: false
		})),
		...plan.runs.map((run, index) => ({
			...named(`name-${run.id}`, run.name, runAnchors(pathsOf(run, index, plan.runs.length, px)), 2 * px),
			ink: 'cable' as const,
			bold: true,
			optional: false
		})),
		...devices.map((device) => ({
			...named(`name-${device.key}`, device.key, [device.shown], clear * device.times),
			ink: device.key === 'receptacle' ? ('soft' as const) : ('house' as const)
		})),
		...site.areas.filter((area) => area.kind !== 'bed').map((area) => nameOf(area, named, px, sizes.name)),
		...site.trees.map((tree) =>
			named(`name-tree-${tree.id}`, tree.name, inside(circle(tree.at, tree.spread / 2)), null)
		),
		...site.areas
			.filter((area) => area.kind === 'bed')
			.map((area) => named(`name-bed-${area.id}`, area.name, inside(area.polygon), null)),
		...site.strips.map((strip) =>
			named(`name-strip-${strip.id}`, strip.name, stripAnchors(strip.centre).filter(shown), null)
		)
	];
	return placeLabels(
		wishes.filter((wish) => wish.text !== '' && wish.anchors.some(shown)),
		obstaclesOf(plan, px, sizes, taken, devices),
		px,
		box
	);
}
const stripAnchors = (line: Line): Point[] =>
	[0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => {
		const place = pointAlong(line, lineLength(line) * share);
		return place ? [place.at] : [];
	});
