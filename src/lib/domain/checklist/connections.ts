import { onTap } from './done/done-for';
import { tickId } from './done/entry';
import { walked, type Job } from './job';
import { sizeName } from '../circuit';
import type { ChecklistItem, ChecklistStep } from './types';
import { defer, sentence, step, when } from './words';

export function connectionSteps(job: Job): ChecklistStep[] {
	const { cabling, halogen } = job;
	if (cabling.runs.length === 0) return [];
	const joints = (run: Job['cabling']['runs'][number]): ChecklistItem[] =>
		walked(run).nodes.flatMap((node, i) =>
			i > 0 && node.fixture ? [{ id: tickId('joint', node.fixture), label: job.nodeName(run, node.id) }] : []
		);
	return [
		step('unplug', 'See that the transformer is unplugged, and keep its plug where you can see it while you work.', {
			cautions: ['Never work on a connection with power on, low voltage or not: 25 A starts fires.'],
			rule: 'supply.secondary'
		}),
		...cabling.runs.map((run) => {
			const items = joints(run);
			const names = items.map(({ label }) => label).join(', ');
			return step(
				tickId('connect', run.id),
				run.feed === 'hub'
					? `${sentence(run.name)}: at the hub, join the leads to ${names} to the ${sizeName(run.cable)} cable from the transformer, and at its far end each lead to its light; two connectors to a joint, one for each conductor.`
					: `${sentence(run.name)}: tap ${names} onto the ${sizeName(run.cable)} cable in that order, two connectors to each, one for each conductor.`,
				{
					cautions: [
						'Connectors rated for direct burial only. Centre a piercing one on the conductor and screw it home; never twist and tape.'
					],
					defers: [defer.maker],
					items,
					rule: 'cable.splice'
				}
			);
		}),
		step('ends', 'Seal every cut end with a cap, the conductors apart from each other.', { rule: 'cable.splice' }),
		...when(halogen, () =>
			step('lamps', 'Fit the halogen lamps with a cloth or gloves: grease from a finger makes the glass fail.', {
				cautions: ['A lamp that has burned is hot for minutes: let it cool.'],
				defers: [defer.maker],
				rule: 'wall.combustible'
			})
		),
		step(
			'terminals',
			`At the transformer, put one conductor of each run on the common terminal and the other on its tap: ${cabling.runs.map((run) => `${run.name} on ${run.tapVolts} V`).join(', ')}.`,
			{
				cautions: ['Screw the terminals down on bare, clean strands with none astray, and pull on each.'],
				defers: [defer.maker],
				items: cabling.runs.map((run) => ({
					id: tickId('terminal', run.id),
					label: `${sentence(run.name)} on ${run.tapVolts} V`,
					doneFor: onTap(run.tapVolts)
				})),
				rule: 'cable.volts'
			}
		),
		step('tug', 'Pull gently on every connection and look it over once more before you plug in.', {
			rule: 'cable.splice'
		})
	];
}
