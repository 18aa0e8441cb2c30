/** One tree in section: crown, trunk, the beam between its edges of half strength, its axis, and an eye that may look into it. */
import type { Fixture } from '../../domain/placement';
import type { Box, Point } from '../../domain/shared/geometry';
import type { UnitSystem } from '../../domain/shared/units';
import type { Tree } from '../../domain/site';
import { shapeOf } from '../fixtures';
import { sizesFor } from '../frame';
import type { Drawing, Mark } from '../marks';
import { pathMark } from '../path-mark';
import { circlePath, closedPath, mm, moveTo, openPath, segmentPath } from '../path';
import { crownPath, trunkPath } from './crown';
import { dimensions } from './dimensions';
import { lookAt, type SectionLook, type Watcher } from './look';
import { eyeAt, gapFor, ray, reachOf, up, type Place } from './place';
import { words } from './words';

function beamMarks({ look, tree }: Place): Mark[] {
	const half = look.beam / 2;
	const far = Math.max(1.2, (tree.height + 0.5 - look.lamp.z) / Math.max(0.3, Math.cos((look.lean * Math.PI) / 180)));
	const from = up(look.lamp.s, look.lamp.z);
	const edges = [look.lean - half, look.lean + half].map((turn) => ray(look, turn, far)) as [Point, Point];
	const arc = `A${mm(far)} ${mm(far)} 0 0 1 ${mm(edges[1].x)} ${mm(edges[1].y)}`;
	return [
		pathMark('beam', `${moveTo(from)}L${mm(edges[0].x)} ${mm(edges[0].y)}${arc}Z`, { weight: 0, fill: 'wash' }),
		...edges.map((edge, n) =>
			pathMark(`beam-edge-${n}`, segmentPath(from, edge), { ink: 'soft', weight: 0.8, dash: [3, 3] })
		)
	];
}
/** The axis, and the angle between it and upright. */
function axisMarks(place: Place): Mark[] {
	const { look, px } = place;
	const from = up(look.lamp.s, look.lamp.z);
	const { far, r } = reachOf(place);
	const tip = ray(look, look.lean, far);
	const [start, end] = [ray(look, 0, r), ray(look, look.lean, r)];
	return [
		pathMark('axis', segmentPath(from, tip), { weight: 1.3, dash: [9, 3, 2, 3] }),
		pathMark('aim', circlePath(tip, 3 * px), { weight: 0, fill: 'ink' }),
		pathMark('upright', segmentPath(from, ray(look, 0, r * 1.12)), { ink: 'soft', weight: 0.8 }),
		...(Math.abs(look.lean) < 1
			? []
			: [
					pathMark(
						'angle',
						`${moveTo(start)}A${mm(r)} ${mm(r)} 0 0 ${look.lean > 0 ? 1 : 0} ${mm(end.x)} ${mm(end.y)}`,
						{
							weight: 1
						}
					)
				])
	];
}
function treeMarks({ tree, px }: Place): Mark[] {
	return [
		pathMark('trunk', trunkPath(tree), { ink: 'planting', weight: 0.8, fill: 'planting' }),
		pathMark('crown', crownPath(tree), { ink: 'planting', weight: 1.5 }),
		pathMark(
			'middle',
			segmentPath(up(-4 * px, (tree.crownBase + tree.height) / 2), up(4 * px, (tree.crownBase + tree.height) / 2)),
			{
				ink: 'planting',
				weight: 1
			}
		)
	];
}
function eyeMarks({ look, eye, px }: Place): Mark[] {
	const { watcher } = look;
	if (!watcher || !eye) return [];
	const at = up(eye.s, watcher.z);
	const lamp = up(look.lamp.s, look.lamp.z);
	return [
		pathMark('sight', segmentPath(lamp, at), { ink: 'action', weight: 1, dash: [2, 4] }),
		pathMark('stands', segmentPath(up(eye.s, 0), up(eye.s, watcher.z - 4 * px)), { ink: 'action', weight: 1.6 }),
		pathMark('eye', circlePath(at, 4.5 * px), { ink: 'action', weight: 1.4, fill: 'sheet' })
	];
}

/** `widthPx` of the drawing as shown: it sets the size of words, never of the tree. */
export function drawSection(
	tree: Tree,
	fixture: Fixture,
	watcher: Watcher | null,
	units: UnitSystem,
	widthPx: number
): { drawing: Drawing; look: SectionLook } {
	const look = lookAt(tree, fixture, watcher);
	const eye = eyeAt(look, tree);
	const { label } = sizesFor(Math.max(420, widthPx));
	const left = Math.min(-tree.spread / 2, look.lamp.s, eye?.s ?? 0);
	const right = Math.max(tree.spread / 2, look.lamp.s, eye?.s ?? 0);
	const gapPx = gapFor(label);
	const besides = 3.6 * gapPx + 44;
	const px = (right - left) / Math.max(120, widthPx - besides);
	const box: Box = {
		minX: left - 44 * px,
		maxX: right + 3.6 * gapPx * px,
		minY: -(tree.height + 40 * px),
		maxY: 46 * px
	};
	const place: Place = { look, tree, fixture, units, px, label, eye };
	const ground = [
		pathMark(
			'ground',
			openPath([
				{ x: box.minX, y: 0 },
				{ x: box.maxX, y: 0 }
			]),
			{ weight: 1.7 }
		),
		pathMark(
			'soil',
			closedPath([
				{ x: box.minX, y: 0 },
				{ x: box.maxX, y: 0 },
				{ x: box.maxX, y: 5 * px },
				{ x: box.minX, y: 5 * px }
			]),
			{ weight: 0, fill: 'hatch' }
		)
	];
	const symbol = sizesFor(widthPx).symbol * 1.1;
	const drawing: Drawing = {
		box,
		px,
		sizes: { symbol, label, name: label },
		grid: { step: 1, text: '' },
		layers: [
			{ id: 'light', marks: beamMarks(place) },
			{ id: 'ground', marks: ground },
			{ id: 'planting', marks: treeMarks(place) },
			{ id: 'cable', marks: eyeMarks(place) },
			{ id: 'emphasis', marks: axisMarks(place) },
			{
				id: 'devices',
				marks: [
					{
						kind: 'symbol',
						key: 'lamp',
						at: up(look.lamp.s, Math.max(look.lamp.z, 0)),
						shape: shapeOf[fixture.technique],
						turn: Math.round(look.lean),
						size: symbol
					}
				]
			},
			{ id: 'names', marks: words(place, symbol, box) },
			{ id: 'sheet', marks: dimensions(place, right) }
		]
	};
	return { drawing, look };
}
