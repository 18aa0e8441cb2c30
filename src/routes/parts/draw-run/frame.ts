/** The part of the yard that holds one run, with room round it. Metres. */
import type { Plan } from '$lib/domain/plan';
import type { Box } from '$lib/domain/shared/geometry';
import { frameOf } from '$lib/drawing/frame';
import { boxAround } from '$lib/drawing/path';

/** Room round the run, and the least that is shown. */
const room = 1.2;
const least = 5;

/** Never more than the whole drawing shows, and never so tall that a wide screen shows it small. */
export function closeFrame(plan: Plan, runId: string): Box {
	const whole = frameOf(plan, true);
	const run = plan.runs.find(({ id }) => id === runId);
	const box = boxAround([
		...(run?.nodes.map(({ at }) => at) ?? []),
		...(run?.segments.flatMap(({ path }) => path) ?? [])
	]);
	if (!box) return whole;
	const grown = (low: number, high: number): [number, number] => {
		const more = Math.max(room, (least - (high - low)) / 2);
		return [low - more, high + more];
	};
	const [minX, maxX] = grown(box.minX, box.maxX);
	const [minY, maxY] = grown(box.minY, box.maxY);
	return {
		minX: Math.max(minX, whole.minX),
		maxX: Math.min(maxX, whole.maxX),
		minY: Math.max(minY, whole.minY),
		maxY: Math.min(maxY, whole.maxY)
	};
}
