/** What is said of a lamp that shines up into a gable: rules wall.gable, wall.level. */
import { rules } from '../shared/rules';
import type { Wall } from '../site';
import type { Drafting } from './drafting';
import { input, reason } from './reasons';
import type { Reason } from './types';
import type { GableLamp, GableLight } from './wall-gable';

export function gableReasons(d: Drafting, wall: Wall, lamp: GableLamp, { model, needed, lux }: GableLight): Reason[] {
	const { beamAngle, lumens } = model.lamp;
	const { mostLit } = d.figures['wall.setback'];
	const top = d.len(lamp.litHeight);
	const upTo =
		lamp.litHeight >= wall.peak! - 1e-9
			? `its point at ${top}`
			: lamp.litHeight >= mostLit - 1e-9
				? `${top}, as far up as the lamps reach`
				: `the slope of the roof at ${top}`;
	const where =
		lamp.height >= lamp.litHeight - 1e-9
			? `to ${upTo}`
			: `two thirds of the way from the eaves at ${d.len(wall.height)} to ${upTo}`;
	const row = lamp.pair
		? 'The two nearest to its middle do it, so that the row stays even.'
		: 'The lamp nearest to its middle does it.';
	const fills =
		needed <= beamAngle + 1e-9
			? `a ${beamAngle}° beam fills ${d.len(lamp.width)} of width there`
			: `${beamAngle}° is the widest beam there is`;
	return [
		reason(
			'wall.gable',
			lamp.height,
			'm',
			`Aimed ${d.len(lamp.height)} up into the gable, ${where}; ${fills}. ${row}`,
			{
				working: {
					label: 'Angle the gable fills',
					value: needed,
					unit: 'deg',
					decimals: 1,
					rule: 'Twice the angle whose tangent is half the width of the gable where it is aimed over the distance to there.',
					expression: '2 × a',
					inputs: [input('a', 'half angle, by its tangent', needed / 2, 'deg')],
					source: rules['wall.gable'].source
				}
			}
		),
		reason(
			'wall.level',
			lux,
			'lx',
			`${lumens} lm: about ${lux.toFixed(0)} lx ${lamp.judged < lamp.height - 1e-9 ? 'two thirds of the way up the gable' : 'where it is aimed'}${lamp.meeting > 1 ? ', both together' : ''}, for a ${wall.light} light.`
		)
	];
}
