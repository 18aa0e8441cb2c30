import { lightField, LightGrid, lightMap, planLight, sourcesOf, type LightSource } from '../../lib/domain/light';
import { makePlan } from '../../lib/domain/plan';
import { example } from './example';
import { medianMs, type Row } from './measure';

const cells = 200;
/** The fixtures of a plan, then the same ones again a little aside, until there are so many. */
function manySources(sources: readonly LightSource[], count: number): LightSource[] {
	return Array.from({ length: count }, (_, i) => {
		const source = sources[i % sources.length]!;
		const round = Math.floor(i / sources.length);
		const at = { ...source.at, x: source.at.x + 1.7 * round, y: source.at.y + 0.9 * round };
		return { ...source, id: `${source.id}-${round}`, at };
	});
}

/**
 * The light map of the suburban demo, 200 × 200 cells from 40 fixtures beside the lights that are there; one fixture moved; what
 * a thousand moves leave behind; and the part `light` of each demo's plan.
 */
export function rows(): Row[] {
	const { site, fixtures, runs } = makePlan(example('suburban'));
	const field = lightField(site, fixtures, runs);
	const planned = manySources(sourcesOf({ ...site, existing: [] }, fixtures, runs), 40);
	const sources = [...planned, ...field.sources.filter((source) => source.existing)];
	const { minX, minY, maxX, maxY } = site.bounds;
	const side = Math.max(maxX - minX, maxY - minY);
	const box = { minX, minY, maxX: minX + side, maxY: minY + side };
	const step = side / cells;
	const whole = { ...field, sources };
	const grid = new LightGrid(field.shadows, box, step);
	grid.set(sources);
	let moves = 0;
	const drag = (): void => {
		const index = (moves += 1) % planned.length;
		const source = planned[index]!;
		grid.move(index, { ...source, at: { ...source.at, x: source.at.x + Math.sin(moves) } });
	};
	const dragged = medianMs(drag, 400);
	const before = process.memoryUsage().arrayBuffers;
	for (let i = 0; i < 1000; i++) drag();
	const kept = process.memoryUsage().arrayBuffers - before;
	const plans = ['town', 'suburban', 'rural'].map((name): Row => {
		const plan = makePlan(example(name));
		const call = () => planLight(plan.site, plan.fixtures, plan, plan.dusk.sensor);
		return { name: `light.plan.${name}`, value: medianMs(call, 200), unit: 'ms' };
	});
	return [
		{ name: 'light.grid', value: medianMs(() => lightMap(whole, box, step), 40), unit: 'ms' },
		{ name: 'light.drag', value: dragged, unit: 'ms' },
		{ name: 'light.drag.kept', value: kept / 1024, unit: 'kB' },
		...plans
	];
}
