/** Changes that may put a problem of the circuit right; `advice.ts` tries them. */
import { sizeName, type ChoiceProblem, type Cure } from '../circuit';
import { transformers } from '../shared/catalogue';
import type { Advice } from '../shared/findings';
import type { Yard } from '../yard';
import { changedCircuit, changedRun, releasedRun, type Change } from './changes';
import { handTransformer, runChoices } from './hand';
import type { Layout } from './layout';
import { called, fedWords, runsWords } from './wording';
import { runNameOf } from './words';

export interface Proposal {
	id: string;
	kind: Advice['kind'];
	label: string;
	change: Change;
	/** What to call it once it has been laid out; null where it comes to no change of its own. */
	named?: (after: Layout) => Pick<Proposal, 'kind' | 'label'> | null;
}

/** What a cure of the circuit comes to. Lamps and transformers are the same for every problem, and have their own below. */
function fromCure(cure: Cure, run: string, layout: Layout, yard: Yard): Proposal[] {
	const name = runNameOf(layout.runs, run);
	const { kind, size, tapVolts, feed, groups } = cure;
	const tap = tapVolts === undefined ? {} : { tap: tapVolts };
	const onTap = tapVolts === undefined ? '' : ` on the ${tapVolts} V tap`;
	if (kind === 'thicker' && size) {
		const label = `${sizeName(size)} cable${onTap} for ${name}`;
		return [
			{ id: `thicker-${size.size}`, kind, label, change: changedRun(yard, layout, run, { size: size.size, ...tap }) }
		];
	}
	if (kind === 'tap') {
		return [
			{ id: `tap-${tapVolts}`, kind, label: `${called(name)}${onTap}`, change: changedRun(yard, layout, run, tap) }
		];
	}
	if (kind === 'feed' && feed) {
		const thicker = size ? { size: size.size } : {};
		const label = `${called(name)} ${fedWords[feed]}${size ? `, ${sizeName(size)} cable` : ''}${onTap && `,${onTap}`}`;
		return [{ id: `feed-${feed}`, kind, label, change: changedRun(yard, layout, run, { feed, ...thicker, ...tap }) }];
	}
	if (kind === 'split' && groups) {
		const label = `${called(runsWords(groups.length))} in place of ${name}`;
		const choice = runChoices(yard).find(({ id }) => id === run);
		const isHeld = choice?.size !== undefined || choice?.tap !== undefined;
		const free = changedRun(yard, layout, run, { groups, size: undefined, tap: undefined });
		return [
			...(isHeld ? [{ id: 'split-held', kind, label, change: changedRun(yard, layout, run, { groups }) }] : []),
			{ id: 'split', kind, label: isHeld ? `${label}, cable and tap chosen by the plan` : label, change: free }
		];
	}
	return [];
}

/** A run set by hand, left to the plan: its cable, tap and feed, or the lamps on it as well. */
function released(run: string, layout: Layout, yard: Yard): Proposal[] {
	const choice = runChoices(yard).find(({ id }) => id === run);
	if (!choice) return [];
	const name = runNameOf(layout.runs, run);
	const before = layout.choice.runs.find(({ id }) => id === run)!;
	const { id, lamps } = choice;
	const kept = lamps === undefined ? { id } : { id, lamps };
	return [
		{
			id: 'plan-choice',
			kind: 'thicker',
			label: '',
			change: releasedRun(yard, run, kept),
			named: ({ choice: { runs } }) => {
				const after = runs.find((one) => one.id === run);
				if (!after) return null;
				const { size, tapVolts, shape } = after;
				const fed = shape.feed === before.shape.feed ? '' : `, ${fedWords[shape.feed ?? 'end']}`;
				const label = `${called(name)} as the plan would lay it: ${sizeName(size)} on the ${tapVolts} V tap${fed}`;
				return {
					kind: size.size !== before.size.size ? 'thicker' : tapVolts !== before.tapVolts ? 'tap' : 'feed',
					label
				};
			}
		},
		{
			id: 'plan-runs',
			kind: 'split',
			label: '',
			change: releasedRun(yard, run, null),
			named: ({ runs }) => {
				const instead = runs.length - layout.runs.length + 1;
				if (instead < 2) return null;
				return { kind: 'split', label: `${called(name)} shared out by the plan: ${runsWords(instead)} in its place` };
			}
		}
	];
}

/** LED in place of halogen, for the whole plan. */
const led = (yard: Yard): Proposal[] =>
	yard.power.lamp === 'halogen'
		? [
				{
					id: 'lamps-led',
					kind: 'lamps',
					label: 'LED lamps in place of halogen',
					change: [{ path: 'power.lamp', value: 'led' }]
				}
			]
		: [];

/** Where one transformer is given, owned or by hand, larger ones of the list are tried: the smallest two that could do. */
function larger({ code }: ChoiceProblem, { choice }: Layout, yard: Yard): Proposal[] {
	const isGiven = handTransformer(yard) !== null || yard.power.owned?.transformerVoltAmps !== undefined;
	if (!isGiven || (code !== 'transformer-load' && code !== 'secondary-amps')) return [];
	const { transformer, loadVoltAmps } = choice;
	return transformers
		.filter(({ voltAmps }) => voltAmps > transformer.voltAmps && voltAmps > loadVoltAmps)
		.slice(0, 2)
		.map(({ voltAmps }) => ({
			id: `transformer-${voltAmps}`,
			kind: 'transformer' as const,
			label: `A ${voltAmps} VA transformer`,
			change: changedCircuit(yard, { transformerVoltAmps: voltAmps })
		}));
}

/**
 * What is worth trying for a problem: lamps first, which are the same for all, then what changes least. The circuit is asked for
 * its cures, which take long, only when the lamps have been tried.
 */
export function* proposalsFor(problem: ChoiceProblem, layout: Layout, yard: Yard): Generator<Proposal> {
	const { run } = problem;
	yield* led(yard);
	if (run !== null) yield* problem.cures.flatMap((cure) => fromCure(cure, run, layout, yard));
	yield* larger(problem, layout, yard);
	if (run !== null) yield* released(run, layout, yard);
}
