/** Workings of how an uplight points, down to what is measured at the tree. Metres, as all workings of a plan. */
import { rules } from '../../shared/rules';
import type { Working, WorkingInput } from '../../shared/working';
import type { Uplit } from './tree';

const metres = (symbol: string, name: string, value: number, from?: Working): WorkingInput => ({
	symbol,
	name,
	value,
	unit: 'm',
	...(from ? { from } : {})
});
function riseWorking({ tree, lights }: Uplit): Working {
	const lamp = lights[0]!.height;
	return {
		label: 'Middle of the crown above the lamp',
		value: (tree.crownBase + tree.height) / 2 - lamp,
		unit: 'm',
		decimals: 2,
		rule: 'The middle is halfway between the lowest branches and the top; the lamp’s own height comes off.',
		expression: '(B + H) ÷ 2 − l',
		inputs: [
			metres('B', 'lowest branches, above the ground', tree.crownBase),
			metres('H', 'height of the tree', tree.height),
			metres('l', 'height of the lamp', lamp)
		],
		source: 'geometry'
	};
}
/** Lean from upright to the middle of the crown. */
export function leanWorking(uplit: Uplit): Working {
	const { tree, aim, offsetWorking } = uplit;
	const rise = riseWorking(uplit);
	const aside: Working = {
		label: 'From the middle of the trunk to the lamp',
		value: tree.trunkDiameter / 2 + aim.offset,
		unit: 'm',
		decimals: 2,
		rule: 'The offset counts from the bark; half the trunk comes on top.',
		expression: 'D ÷ 2 + o',
		inputs: [
			metres('D', 'trunk, across', tree.trunkDiameter),
			metres('o', 'from the bark', aim.offset, offsetWorking ?? undefined)
		],
		source: rules['tree.offset'].source
	};
	return {
		label: 'Lean of the beam from upright',
		value: aim.lean,
		unit: '°',
		decimals: 1,
		rule: 'The tangent of the lean is how far aside the lamp stands over how far the crown’s middle is above it.',
		expression: 'arctan(a ÷ h)',
		inputs: [
			metres('a', 'from the middle of the trunk', aside.value, aside),
			metres('h', 'middle of the crown above the lamp', rise.value, rise)
		],
		source: 'geometry'
	};
}
/** Angle that the crown fills as seen from under its middle. */
export function beamWorking(uplit: Uplit): Working {
	const { tree, aim } = uplit;
	const rise = riseWorking(uplit);
	return {
		label: 'Angle that the crown fills',
		value: aim.needed,
		unit: '°',
		decimals: 1,
		rule: 'Half the canopy over the height of its middle above the lamp is the tangent of half the angle.',
		expression: '2 × arctan(S ÷ 2 ÷ h)',
		inputs: [
			metres('S', 'canopy, across', tree.spread),
			metres('h', 'middle of the crown above the lamp', rise.value, rise)
		],
		source: rules['tree.beam'].source
	};
}
