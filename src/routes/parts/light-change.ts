/** What a change of the plan does to the light: one line for each surface whose figures it moves. */
import type { PlanLight, Receiver } from '$lib/domain/light';
import { luxWords } from '$lib/drawing/light-map/bands';

export interface LightMove {
	id: string;
	/** `the front walk: 4.1 → 3.2 lx on average, least 0.60 → 0.20`. */
	words: string;
	/** Change of the average as a share of what was, for the order. */
	size: number;
	/** What it means: the verdict changed. */
	turned: 'better' | 'worse' | null;
}
const bare = (lux: number): string => luxWords(lux).replace(/ lx$/, '');
/** Average and least as they are shown: what does not show is no change. */
const shown = ({ average, least }: Receiver): string => `${bare(average)} ${bare(least)}`;
const sound = ({ verdict }: Receiver): boolean => verdict === 'right';
const arrow = (a: number, b: number, unit: string): string =>
	bare(a) === bare(b) ? `${bare(b)}${unit}` : `${bare(a)} → ${bare(b)}${unit}`;

/** The surfaces that change, the most changed first; a surface that comes or goes is no change of light. */
export function lightMoves(before: Pick<PlanLight, 'receivers'>, after: Pick<PlanLight, 'receivers'>): LightMove[] {
	const old = new Map(before.receivers.map((one) => [`${one.kind} ${one.id}`, one]));
	return after.receivers
		.flatMap((now): LightMove[] => {
			const was = old.get(`${now.kind} ${now.id}`);
			if (!was || shown(was) === shown(now)) return [];
			const turned = sound(was) === sound(now) || !now.aim ? null : sound(now) ? 'better' : 'worse';
			return [
				{
					id: `${now.kind} ${now.id}`,
					words: `${now.name}: ${arrow(was.average, now.average, ' lx')} on average, least ${arrow(was.least, now.least, '')}`,
					size: Math.abs(now.average - was.average) / Math.max(was.average, 0.05),
					turned
				}
			];
		})
		.toSorted((a, b) => b.size - a.size);
}
