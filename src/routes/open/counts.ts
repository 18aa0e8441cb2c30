/** What a yard holds, counted, for someone who has to decide about it. */
import type { Yard } from '$lib/domain/yard';

const counted = (count: number, one: string, many = `${one}s`): string[] =>
	count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

/** `5 trees`, `1 walk`, …; empty where nothing of it is told. */
export function countsOf({ trees, walks, drives, spots, fixtures, power, done }: Yard): string[] {
	const byHand = (fixtures?.set?.length ?? 0) + (fixtures?.added?.length ?? 0);
	return [
		...counted(trees?.length ?? 0, 'tree'),
		...counted(walks?.length ?? 0, 'walk'),
		...counted(drives?.length ?? 0, 'drive'),
		...counted(spots.beds?.length ?? 0, 'bed'),
		...counted(byHand, 'light changed by hand', 'lights changed by hand'),
		...counted(power.circuit?.runs?.length ?? 0, 'run set by hand', 'runs set by hand'),
		...counted(Object.keys(power.measured ?? {}).length, 'reading of the first night', 'readings of the first night'),
		...counted(done?.length ?? 0, 'step ticked off', 'steps ticked off')
	];
}
