/** Rules supply.height, supply.receptacle, supply.load, cable.volts. */
import type { Finding } from '../../../shared/findings';
import { rules, type RuleId } from '../../../shared/rules';
import type { RuleRow } from '../types';
import { lengthWorking, measured, rowOf, type Ground } from './ground';

const notTold = 'Nobody has said where the transformer hangs.';
const sayIt = 'Add the transformer: how far along, how far out, and the height of its bottom edge.';
const about = ({ plan }: Ground, codes: readonly string[]): Finding[] =>
	plan.findings.filter(({ code }) => codes.includes(code));

function heightRow(ground: Ground): RuleRow {
	const { supply } = ground.plan;
	if (!ground.supplyTold) return rowOf('supply.height', 'not', [notTold], { hint: sayIt });
	if (!supply) return rowOf('supply.height', 'none', ['Without lights there is nothing to feed.']);
	const { bottom } = rules['supply.height'].figures;
	const least = measured(
		'supply.height',
		[
			{
				lights: [],
				subject: 'The bottom of the transformer is',
				value: supply.mountHeight,
				low: bottom,
				high: null,
				from: 'above the ground',
				working: lengthWorking('supply.height', 'Above the least', supply.mountHeight - bottom, 'h − m', [
					['h', 'its bottom edge', supply.mountHeight],
					['m', 'the least', bottom]
				])
			}
		],
		ground,
		{ hint: 'Hang it higher, out of splash and snow.', none: '' }
	);
	const found = about(ground, ['supply.high', 'supply.inside', 'supply.no-wall', 'supply.over-paving']);
	if (least.state !== 'held' || found.length === 0) return least;
	return rowOf(
		'supply.height',
		'not',
		found.map(({ message }) => message),
		{
			hint: 'Hang it upright on the outside of a wall, where you can reach it from the ground.'
		}
	);
}
function ofFindings(
	ground: Ground,
	rule: RuleId,
	codes: readonly string[],
	{ kept, hint }: { kept: string; hint: string }
): RuleRow {
	const found = about(ground, codes);
	// What breaks only in the worst case of lengths, mains and weather is a `look`.
	const state = found.length === 0 ? 'held' : found.every(({ rank }) => rank !== 'stop') ? 'nearly' : 'not';
	return rowOf(rule, state, found.length === 0 ? [kept] : found.map(({ message }) => message), { hint });
}
function receptacleRow(ground: Ground): RuleRow {
	if (!ground.supplyTold) return rowOf('supply.receptacle', 'not', [notTold], { hint: sayIt });
	if (!ground.plan.supply) return rowOf('supply.receptacle', 'none', ['Without lights there is nothing to feed.']);
	return ofFindings(ground, 'supply.receptacle', ['supply.cord'], {
		kept: 'The transformer’s own cord reaches the receptacle.',
		hint: 'Hang it within its own cord of the receptacle: no extension cord.'
	});
}
function loadRow(ground: Ground): RuleRow {
	const { supply } = ground.plan;
	if (!supply) return rowOf('supply.load', 'none', ['Without lights there is nothing to feed.']);
	const { fraction } = rules['supply.load'].figures;
	const most = fraction * supply.ratedVoltAmps;
	const row = ofFindings(ground, 'supply.load', ['cable.transformer-load', 'cable.owned-transformer'], {
		kept: `The lamps and the cable take ${supply.loadVoltAmps.toFixed(1)} VA; a ${supply.ratedVoltAmps} VA transformer may carry ${most.toFixed(0)} VA.`,
		hint: 'Take the next size of transformer, or fewer lights.'
	});
	return { ...row, working: supply.working ?? null };
}
function voltsRow(ground: Ground): RuleRow {
	const { runs, supply } = ground.plan;
	const lamps = new Map(ground.lights.map(({ fixture }) => [fixture.id, fixture]));
	const nodes = runs
		.flatMap((run) => run.nodes)
		.flatMap((node) => {
			const fixture = node.fixture === null ? undefined : lamps.get(node.fixture);
			return fixture && node.volts !== null ? [{ fixture, volts: node.volts, working: node.working }] : [];
		});
	const least = nodes.toSorted((a, b) => a.volts - b.volts)[0];
	const codes = ['lamp-low', 'lamp-high', 'uneven', 'no-solution', 'no-tap', 'bad-network'].map(
		(one) => `cable.${one}`
	);
	if (!supply || (!least && about(ground, codes).length === 0))
		return rowOf('cable.volts', 'none', ['Without lights there is nothing to feed.']);
	const where = ground.supplyTold ? '' : ' The transformer is taken to hang where the plan would put it.';
	const kept = least
		? `${least.fixture.label} gets least, ${least.volts.toFixed(1)} V; its lamp wants ${least.fixture.lamp.minVolts} to ${least.fixture.lamp.maxVolts} V.${where}`
		: '';
	const row = ofFindings(ground, 'cable.volts', codes, {
		kept,
		hint: 'Bring the transformer nearer, or share the lights between two cables.'
	});
	return { ...row, lights: least ? [least.fixture.label] : [], working: least?.working ?? null };
}
export const supplyRows = (ground: Ground): RuleRow[] => [
	voltsRow(ground),
	loadRow(ground),
	heightRow(ground),
	receptacleRow(ground)
];
