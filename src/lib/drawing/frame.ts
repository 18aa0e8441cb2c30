/** What of the yard the sheet shows, and the sizes that stay constant on it. */
import type { Box, Point } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import type { Sizes } from './marks';
import { boxAround } from './path';

/** A lone street lamp or a far boundary does not shrink everything else: beyond this it is left off the sheet, metres. */
const farOff = 8;

/** How much of the house behind its front stays on a sheet that leaves out its back, metres. */
const houseShown = 4;

function contents(plan: Plan, trim: boolean): Point[] {
	const { site } = plan;
	const shown = (p: Point) => (trim && site.house.length > 0 ? { x: p.x, y: Math.max(p.y, -houseShown) } : p);
	return [
		...site.house.map(shown),
		...site.walls.flatMap((wall) => (wall.of === 'house' ? [shown(wall.from), shown(wall.to)] : [wall.from, wall.to])),
		...site.strips.flatMap((strip) => (strip.kind === 'drive' ? strip.polygon.map(shown) : [...strip.polygon])),
		...site.areas.flatMap((area) => [...area.polygon]),
		...site.trees.flatMap(({ at, spread }) => [
			{ x: at.x - spread / 2, y: at.y - spread / 2 },
			{ x: at.x + spread / 2, y: at.y + spread / 2 }
		]),
		...plan.fixtures.map((fixture) => fixture.at),
		...plan.runs.flatMap((run) => run.segments.flatMap((segment) => segment.path)),
		...site.houseNumber.map((number) => number.at),
		...(site.receptacle?.known ? [site.receptacle.at] : []),
		...(plan.supply ? [plan.supply.at] : []),
		...(plan.dusk.sensor ? [plan.dusk.sensor.at] : [])
	];
}

/**
 * The part of the yard on the sheet, metres: everything on the plan, the street's edge with a band of street, and the
 * boundaries when they are near. Never empty, also for a blank yard. With `trim` the back of a deep house, and of a drive
 * beside it, runs off the sheet.
 */
export function frameOf(plan: Plan, trim = false): Box {
	const { site } = plan;
	const base = boxAround(contents(plan, trim)) ?? site.bounds;
	const box = { ...base };
	if (Number.isFinite(site.street)) box.maxY = Math.max(box.maxY, site.street);
	const near = (light: Point) =>
		light.x > box.minX - farOff &&
		light.x < box.maxX + farOff &&
		light.y > box.minY - farOff &&
		light.y < box.maxY + farOff;
	for (const { at } of site.existing.filter((light) => near(light.at))) {
		box.minX = Math.min(box.minX, at.x);
		box.maxX = Math.max(box.maxX, at.x);
		box.minY = Math.min(box.minY, at.y);
		box.maxY = Math.max(box.maxY, at.y);
	}
	if (site.leftBoundary < box.minX && site.leftBoundary > box.minX - farOff) box.minX = site.leftBoundary;
	if (site.rightBoundary > box.maxX && site.rightBoundary < box.maxX + farOff) box.maxX = site.rightBoundary;
	// A yard of which little is known still gets a sheet one can tap on.
	const short = Math.max(0, 8 - (box.maxX - box.minX)) / 2;
	box.minX -= short;
	box.maxX += short;
	const width = box.maxX - box.minX;
	const height = box.maxY - box.minY;
	const margin = Math.max(0.8, 0.045 * Math.max(width, height * 0.7));
	const street = Math.max(2, 0.085 * height, 0.075 * width);
	return { minX: box.minX - margin, minY: box.minY - margin, maxX: box.maxX + margin, maxY: box.maxY + street };
}

/** The frame on a screen: the back of the house is left off where it would take more than a quarter of the height. */
export function screenFrame(plan: Plan): Box {
	const whole = frameOf(plan);
	const trimmed = frameOf(plan, true);
	return trimmed.maxY - trimmed.minY < 0.75 * (whole.maxY - whole.minY) ? trimmed : whole;
}

/** Sizes for a drawing `widthPx` wide: legible at 320 px, not shouting at 1280. */
export function sizesFor(widthPx: number): Sizes {
	const within = (low: number, value: number, high: number) => Math.min(high, Math.max(low, value));
	return {
		symbol: within(4.6, widthPx / 105, 7.5),
		label: within(10.5, widthPx / 58, 14),
		name: within(10, widthPx / 64, 13)
	};
}

/** A round length for a scale bar or grid: the largest of 1, 2, 5 × 10ⁿ units not above `most` metres. */
export function roundLength(most: number, unit: number): number {
	const units = Math.max(most / unit, 1e-3);
	const ten = 10 ** Math.floor(Math.log10(units));
	const step = [5, 2, 1].find((times) => times * ten <= units) ?? 1;
	return step * ten * unit;
}
