import type { Dusk } from '../dusk';
import { dayInWords } from '../shared/day-words';
import { rules } from '../shared/rules';
import type { Hours } from '../yard/schema';
import type { Job } from './job';
import type { ChecklistStep } from './types';
import { defer, step, when } from './words';

const hasClock = (hours: Hours): boolean => hours.kind === 'until' || hours.kind === 'split';
const goesByClock = ({ schedule, season }: Dusk): boolean =>
	hasClock(schedule) || (season !== null && hasClock(season.hours));

export function upkeepSteps(job: Job): ChecklistStep[] {
	const { fixtures, cabling, halogen, dusk } = job;
	if (fixtures.length === 0 || cabling.runs.length === 0) return [];
	const uplights = fixtures.some((fixture) => fixture.target.kind === 'tree');
	const wells = fixtures.some((fixture) => fixture.mount === 'flush');
	const stakes = fixtures.some((fixture) => fixture.mount === 'stake');
	return [
		step('monthly-gfci', 'Every month: press the GFCI test button, see the lights go out, reset.', {
			cautions: ['If it does not trip, unplug the transformer.'],
			defers: [defer.electrician],
			rule: 'supply.receptacle'
		}),
		step('lenses', 'Every spring and autumn: wipe the lenses and clear leaves and mulch from the heads.', {
			cautions: halogen ? ['Unplug and let the lamps cool first.'] : []
		}),
		...when(wells, () =>
			step('wells', 'After leaf fall: clear the flush lights and see that water drains from them.', {
				rule: 'tree.well'
			})
		),
		...when(stakes, () => step('stakes', 'After frost and after mowing: set leaning stakes plumb and aim again.')),
		...when(uplights, () =>
			step(
				'prune',
				`After pruning, and every year as the crown grows: aim again, and move a light out when the trunk comes near it. The slack in the cable is there for that; think ${rules['tree.growth'].figures.years} years on.`,
				{
					rule: 'tree.growth'
				}
			)
		),
		step(
			'connectors',
			'Every year: measure the volts at the far lamp of each run against the first-night sheet. A fall of half a volt is a joint going bad: unplug, cut it out and make it new.',
			{
				rule: 'cable.splice'
			}
		),
		step(
			'transformer-look',
			'Every year: see that the transformer hangs firm and free of leaves and nests, and tighten its terminals, unplugged.',
			{
				defers: [defer.maker],
				rule: 'supply.height'
			}
		),
		...when(halogen, () =>
			step(
				'relamp',
				'Change a failed halogen lamp soon, for one of the same watts: a missing load lets the others burn brighter and die sooner.',
				{
					cautions: ['Unplug and let it cool first.'],
					defers: [defer.maker],
					rule: 'lamp.halogen'
				}
			)
		),
		...when(goesByClock(dusk), () =>
			step('clock', 'When clocks change, and after a power cut: set the timer’s clock if it does not set itself.', {
				rule: 'hours.choice'
			})
		),
		...when(dusk.season !== null, () =>
			step(
				'season',
				`On ${dayInWords(dusk.season!.from)} and after ${dayInWords(dusk.season!.to)}: set the control to the other hours, if it does not change by itself.`,
				{ rule: 'hours.choice' }
			)
		),
		step('sensor-view', 'Every year: wipe the sensor, and see that nothing has grown in front of it.', {
			rule: 'sensor.shade'
		}),
		step('keep', 'Keep the plan with the house papers, and show it to whoever digs here next.', { rule: 'cable.clear' })
	];
}
