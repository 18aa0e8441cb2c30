/** What a drawing carries beside the yard: ground grid, street, boundaries, north, scale bar. */
import type { Box, Point } from '../domain/shared/geometry';
import type { Site } from '../domain/site';
import { metresPerFoot } from '../domain/shared/units';
import type { Mark, NorthMark, ScaleBarMark, Sizes, TextMark } from './marks';
import { roundLength } from './frame';
import { openPath, rectPath } from './path';

/** Between the dots on the ground: 1 m or 5 ft, or rounder and wider where that would be a grey wash. */
export function gridFor(site: Site, px: number): { step: number; text: string } {
	const feet = site.units === 'feet';
	const steps = feet ? [5, 10, 20, 50, 100].map((f) => f * metresPerFoot) : [1, 2, 5, 10, 20, 50];
	const step = steps.find((metres) => metres >= 20 * px) ?? steps.at(-1)!;
	return { step, text: feet ? `${Math.round(step / metresPerFoot)} ft` : `${step} m` };
}

/** Street band, its edge (open where a drive meets it) and the boundaries. */
export function drawGround(site: Site, box: Box): Mark[] {
	const marks: Mark[] = [
		{
			kind: 'path',
			key: 'grid',
			d: rectPath({ ...box, maxY: Math.min(box.maxY, site.street) }),
			ink: 'faint',
			weight: 0,
			fill: 'grid'
		}
	];
	if (site.street < box.maxY) {
		marks.push({
			kind: 'path',
			key: 'street',
			d: rectPath({ ...box, minY: site.street }),
			ink: 'faint',
			weight: 0,
			fill: 'dots'
		});
		const gaps = site.strips
			.filter((strip) => strip.kind === 'drive' && strip.meetsStreet)
			.map((strip) => [strip.left[0], strip.right[0]].flatMap((p) => (p ? [p.x] : [])))
			.filter((xs) => xs.length === 2)
			.map((xs) => [Math.min(...xs), Math.max(...xs)] as const)
			.toSorted((a, b) => a[0] - b[0]);
		let from = box.minX;
		gaps.forEach(([start, end], index) => {
			if (start > from) marks.push(kerb(`kerb-${index}`, from, start, site.street));
			from = Math.max(from, end);
		});
		marks.push(kerb('kerb', from, box.maxX, site.street));
	}
	for (const [key, x] of [
		['left', site.leftBoundary],
		['right', site.rightBoundary]
	] as const)
		if (x > box.minX && x < box.maxX)
			marks.push({
				kind: 'path',
				key: `boundary-${key}`,
				d: openPath([
					{ x, y: box.minY },
					{ x, y: Math.min(site.street, box.maxY) }
				]),
				ink: 'soft',
				weight: 0.9,
				fill: 'none',
				dash: [14, 4, 2, 4, 2, 4]
			});
	return marks;
}
const kerb = (key: string, from: number, to: number, y: number): Mark => ({
	kind: 'path',
	key,
	d: openPath([
		{ x: from, y },
		{ x: to, y }
	]),
	ink: 'house',
	weight: 1.7,
	fill: 'none'
});

/** Where north points on the sheet: degrees clockwise from straight up. `faces` is the bearing of +y, which is down. */
export const northTurn = (faces: number): number => (((180 - faces) % 360) + 360) % 360;

/** Unit vector on the sheet for a bearing, given the bearing the front faces. */
export function bearingVector(bearing: number, faces: number): Point {
	const turn = ((bearing - faces) * Math.PI) / 180;
	return { x: -Math.sin(turn), y: Math.cos(turn) };
}

/** Scale bar and street name share the street band; the north mark goes to the emptiest upper corner. */
export function drawFurniture(site: Site, box: Box, px: number, sizes: Sizes, busy: readonly Box[]): Mark[] {
	const feet = site.units === 'feet';
	const unit = feet ? metresPerFoot : 1;
	const width = box.maxX - box.minX;
	const length = roundLength(width * 0.3, unit);
	const units = Math.round(length / unit);
	const band = Math.max(site.street, box.minY);
	const bar: ScaleBarMark = {
		kind: 'scale-bar',
		key: 'scale-bar',
		at: { x: box.minX + 14 * px, y: band + (box.maxY - band) * 0.68 },
		length,
		parts: units % 5 === 0 && units % 4 !== 0 ? 5 : units % 4 === 0 ? 4 : 2,
		text: `${units} ${feet ? 'ft' : 'm'}`
	};
	const size = Math.max(11, sizes.symbol * 2.1);
	const pad = (size + sizes.label * 1.6) * px;
	const corners: Point[] = [
		{ x: box.maxX - pad, y: box.minY + pad },
		{ x: box.minX + pad, y: box.minY + pad },
		{ x: box.maxX - pad, y: band - pad },
		{ x: box.minX + pad, y: band - pad }
	];
	const reach = size * 1.5 * px;
	const clashes = (p: Point) =>
		busy.filter((b) => b.minX < p.x + reach && b.maxX > p.x - reach && b.minY < p.y + reach && b.maxY > p.y - reach)
			.length;
	const at = corners.reduce((best, p) => (clashes(p) < clashes(best) ? p : best));
	const north: NorthMark = { kind: 'north', key: 'north', at, turn: northTurn(site.faces), size };
	const street: TextMark = {
		kind: 'text',
		key: 'street-name',
		at: { x: Math.max(box.minX + width * 0.66, bar.at.x + length + 90 * px), y: band + (box.maxY - band) / 2 },
		text: 'STREET',
		anchor: 'middle',
		size: sizes.name * 1.15,
		ink: 'soft',
		bold: false,
		spaced: true
	};
	return site.street < box.maxY ? [bar, street, north] : [bar, north];
}
