/** What is staked out, in the order in which it is walked to, and which stakes are checked from the corners first. */
import type { Plan } from '../domain/plan';
import type { Point } from '../domain/shared/geometry';
import { shapeOf, type Shape } from '../drawing';
import { frontCorners } from './corners';
import { targetName } from './words';

export interface Stake {
	key: string;
	label: string;
	/** What it is for, in a few words. */
	what: string;
	shape: Shape;
	at: Point;
	/** Metres from the left and the right corner of the front; null until the front is known. */
	left: number | null;
	right: number | null;
	/** Checked from both corners before the rest: the first one, and those that lie farthest from either corner. */
	check: boolean;
}

/** Depth of the band that is walked in one go, metres: about what one squares out from a tape by eye. No source. */
const band = 10;

/** Along the front from left to right, then the next band out from right to left, and so on: the way one walks it. */
export function walkingOrder<T extends { at: Point }>(places: readonly T[]): T[] {
	// What hangs at the front or a little behind it goes with the first band.
	const bandOf = ({ at }: T) => Math.max(0, Math.floor(at.y / band));
	const bands = [...new Set(places.map(bandOf))].toSorted((a, b) => a - b);
	return bands.flatMap((index, turn) => {
		const forth = turn % 2 === 0 ? 1 : -1;
		return places
			.filter((place) => bandOf(place) === index)
			.toSorted((a, b) => forth * (a.at.x - b.at.x) || a.at.y - b.at.y);
	});
}

export function stakesOf(plan: Plan): Stake[] {
	const corners = frontCorners(plan.site);
	const from = (corner: Point | undefined, at: Point) => (corner ? Math.hypot(at.x - corner.x, at.y - corner.y) : null);
	const places = [
		...plan.fixtures.map((fixture) => ({
			key: fixture.id,
			label: fixture.label,
			what: targetName(plan, fixture),
			shape: shapeOf[fixture.technique],
			at: fixture.at
		})),
		...(plan.supply
			? [
					{
						key: 'transformer',
						label: 'Transformer',
						what: 'hangs here',
						shape: 'transformer' as const,
						at: plan.supply.at
					}
				]
			: []),
		...(plan.dusk.sensor
			? [{ key: 'sensor', label: 'Sensor', what: 'hangs here', shape: 'sensor' as const, at: plan.dusk.sensor.at }]
			: [])
	];
	const walked = walkingOrder(places).map((place) => ({
		...place,
		left: from(corners?.left, place.at),
		right: from(corners?.right, place.at)
	}));
	const farthest = (side: 'left' | 'right') =>
		walked.reduce<(typeof walked)[number] | undefined>(
			(far, next) => (far && (far[side] ?? 0) >= (next[side] ?? 0) ? far : next),
			undefined
		)?.key;
	const checked = new Set(corners ? [walked[0]?.key, farthest('left'), farthest('right')] : []);
	return walked.map((stake) => ({ ...stake, check: checked.has(stake.key) }));
}
