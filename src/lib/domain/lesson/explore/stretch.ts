/** A walk or a drive made longer or shorter: its line stretched from one end, with what lies on it. */
import { limits, type YardDrive, type YardPoint, type YardWalk } from '../../yard';

const rounded = (value: number): number => Number(value.toFixed(4));
const held = (value: number, reach: number): number => rounded(Math.min(reach, Math.max(-reach, value)));

export const lineLength = (line: readonly YardPoint[]): number =>
	line.slice(1).reduce((sum, to, k) => sum + Math.hypot(to.along - line[k]!.along, to.out - line[k]!.out), 0);

/** Crossings, steps and gates keep their place in proportion, so that nothing comes to lie beyond the end. */
const shifted = <Item extends { at: number }>(list: readonly Item[] | undefined, factor: number): Item[] | undefined =>
	list?.map((item) => ({ ...item, at: Math.max(0, held(item.at * factor, limits.reach)) }));

/**
 * The strip with its line so many times as long, seen from the end that stays: of a walk its house end, of a drive its mouth at the street. Metres; points
 * stay within the reach of the yard.
 */
export function stretched<Strip extends YardWalk | YardDrive>(
	strip: Strip,
	factor: number,
	stays: 'first' | 'last'
): Strip {
	const line = strip.line ?? [];
	const fixed = stays === 'first' ? line[0] : line.at(-1);
	if (!fixed) return strip;
	const away = (point: YardPoint): YardPoint =>
		point === fixed
			? point
			: {
					along: held(fixed.along + (point.along - fixed.along) * factor, limits.reach),
					out: held(fixed.out + (point.out - fixed.out) * factor, limits.reach)
				};
	const next = { ...strip, line: line.map(away) };
	const onIt: Record<string, unknown> = next;
	for (const key of ['crossings', 'steps', 'gates', 'runOffs']) {
		const list = shifted(onIt[key] as { at: number }[] | undefined, factor);
		if (list) onIt[key] = list;
	}
	return next;
}
