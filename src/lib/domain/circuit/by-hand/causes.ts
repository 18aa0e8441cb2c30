/**
 * Why the sums by hand differ from the plan. One thing after another is changed from the plan's way to the hand's, in a
 * stated order; the volts at the lamp are worked out anew each time, so that the causes add up to the whole difference.
 * Lamps come first: with their amperes fixed all that follows is linear, and no step can be without a solution.
 */
import type { Working, WorkingInput } from '../../shared/working';
import { loopOhms, ohmsPerKm } from '../conductors';
import { annexG, markedVolts, tableCelsius, thousandths, thumbCelsius } from './figures';
import { markedAmps } from './handbook';
import { metresOf, type ByKind, type Leg } from './legs';
import type { Against, Cause, CauseKind, HandRun } from './types';
import * as words from './words';

/** The volts at the lamp, and what they are worked out from. */
export interface Stage {
	kind: CauseKind;
	working: Working;
	words: (volts: number) => { label: string; why: string };
}
/** The run with some of its things as by hand. */
interface Mix {
	volts: number;
	/** One conductor, ohms per kilometre. */
	perKm: number;
	amps: (leg: Leg) => number;
}

/** V − Z1 × I1 − Z2 × I2 …: the volts at the end of the way. */
function wayWorking(run: HandRun, way: readonly Leg[], { volts, perKm, amps }: Mix): Working {
	const parts = way.map((leg, k): WorkingInput[] => {
		const between = `${run.nodes[leg.from]!.name} to ${run.nodes[leg.to]!.name}`;
		return [
			{ symbol: `Z${k + 1}`, name: `cable ${between}, there and back`, value: loopOhms(perKm, leg.metres), unit: 'Ω' },
			{ symbol: `I${k + 1}`, name: `amps in it`, value: amps(leg), unit: 'A' }
		];
	});
	return {
		label: 'Volts then',
		value: parts.reduce((left, [ohms, through]) => left - ohms!.value * through!.value, volts),
		unit: 'V',
		decimals: 3,
		rule: 'The volts at the terminals, less ohms × amps of each cable on the way.',
		expression: ['V', ...parts.map((_, k) => `Z${k + 1} × I${k + 1}`)].join(' − '),
		inputs: [{ symbol: 'V', name: 'volts at the terminals', value: volts, unit: 'V' }, ...parts.flat()],
		source: 'physics'
	};
}
/** T − Z × I ÷ 2: a load spread evenly from the supply to the end of the way. */
function spreadWorking(tapVolts: number, ohms: number, amps: number): Working {
	return {
		label: 'Volts then',
		value: tapVolts - (ohms * amps) / 2,
		unit: 'V',
		decimals: 3,
		rule: 'A load spread evenly over a cable loses half of what it would lose if it all stood at the end.',
		expression: 'T − Z × I ÷ 2',
		inputs: [
			{ symbol: 'T', name: 'tap', value: tapVolts, unit: 'V' },
			{ symbol: 'Z', name: 'cable to the lamp, there and back', value: ohms, unit: 'Ω' },
			{ symbol: 'I', name: 'amps of the whole run, as marked', value: amps, unit: 'A' }
		],
		source: 'physics'
	};
}

/** Lamps at their marked amperes, then the tap without its sag. `planned`: the plan's amperes by kind of lamp. */
function lampsAndSag(run: HandRun, way: readonly Leg[], planned: (leg: Leg) => ByKind): Stage[] {
	const terminals = run.nodes[0]!.volts!;
	const kinds = new Set(run.nodes.flatMap(({ lamp }) => (lamp ? [lamp.kind] : [])));
	const plan = { volts: terminals, perKm: run.ohmsPerKm };
	const stages: Stage[] = [];
	const add = (kind: CauseKind, mix: Mix, say: Stage['words']) =>
		stages.push({ kind, working: wayWorking(run, way, mix), words: say });
	const ledMarked = (leg: Leg) => leg.voltAmps.led / markedVolts + planned(leg).halogen;
	if (kinds.has('led')) add('led', { ...plan, amps: ledMarked }, words.led);
	if (kinds.has('halogen')) add('halogen', { ...plan, amps: markedAmps }, words.halogen);
	add('sag', { ...plan, volts: run.tapVolts, amps: markedAmps }, () => words.sag(run.tapVolts, terminals));
	return stages;
}

/** From the plan to the handbook: lamps, sag, warmth of the copper and, for mm², its strands. Needs the plan's solution. */
export function handbookStages(run: HandRun, way: readonly Leg[], planned: (leg: Leg) => ByKind): Stage[] {
	const stages = lampsAndSag(run, way, planned);
	const mix = (perKm: number): Mix => ({ volts: run.tapVolts, perKm, amps: markedAmps });
	if (run.size.system === 'awg') {
		const perKm = ohmsPerKm(run.size, tableCelsius);
		const say = () => words.tableCopper(run.celsius, perKm / run.ohmsPerKm);
		return [...stages, { kind: 'copper', working: wayWorking(run, way, mix(perKm)), words: say }];
	}
	const cold = ohmsPerKm(run.size, 20);
	const plain = (1000 * annexG.at20) / run.size.size;
	return [
		...stages,
		{
			kind: 'copper',
			working: wayWorking(run, way, mix(cold * annexG.warm)),
			words: () => words.serviceCopper(run.celsius, run.ohmsPerKm / cold)
		},
		{
			kind: 'strands',
			working: wayWorking(run, way, mix(plain * annexG.warm)),
			words: () => words.strands(cold / plain)
		}
	];
}

/** From the plan to the rule of thumb: lamps, sag, where the load stands, warmth of the copper, the constant itself. */
export function thumbStages(
	run: HandRun,
	way: readonly Leg[],
	{ planned, voltAmps, rule, constant }: ThumbInput
): Stage[] {
	const metres = metresOf(way);
	const amps = voltAmps / markedVolts;
	const moment = way.reduce((sum, leg) => sum + markedAmps(leg) * leg.metres, 0);
	const at = moment > 0 ? moment / (amps * metres) : 0.5;
	const cold = ohmsPerKm(run.size, thumbCelsius);
	return [
		...lampsAndSag(run, way, planned),
		{
			kind: 'place',
			working: spreadWorking(run.tapVolts, loopOhms(run.ohmsPerKm, metres), amps),
			words: () => words.place(at)
		},
		{
			kind: 'copper',
			working: spreadWorking(run.tapVolts, loopOhms(cold, metres), amps),
			words: () => words.thumbCopper(run.celsius, run.ohmsPerKm / cold)
		},
		{ kind: 'constant', working: rule, words: () => words.constant(run.size, constant) }
	];
}
export interface ThumbInput {
	planned: (leg: Leg) => ByKind;
	voltAmps: number;
	/** The rule's own volts, the last stage. */
	rule: Working;
	/** The rule's constant, and what an even load on this cable makes it. */
	constant: { taken: number; even: number };
}

/** The stages as causes, the first counted from the plan's volts. */
export function against(planVolts: number, stages: readonly Stage[]): Against {
	let [before, from] = [planVolts, 'in the plan'];
	const causes = stages.map(({ kind, working, words: say }): Cause => {
		const volts = working.value - before;
		const { label, why } = say(volts);
		const [was, is] = [thousandths(before), thousandths(working.value)];
		const cause: Cause = {
			kind,
			label,
			why,
			volts,
			after: working.value,
			working: {
				label,
				value: thousandths(is - was),
				unit: 'V',
				decimals: 3,
				rule: why,
				expression: 'A − B',
				inputs: [
					{ symbol: 'A', name: 'volts then', value: is, unit: 'V', from: working },
					{ symbol: 'B', name: `volts ${from}`, value: was, unit: 'V' }
				],
				source: 'physics'
			}
		};
		[before, from] = [working.value, 'before this change'];
		return cause;
	});
	return { planVolts, difference: before - planVolts, causes };
}
