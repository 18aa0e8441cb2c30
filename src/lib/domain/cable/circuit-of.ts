/** The circuit for a ground and answers: lamps shared out, cable, taps and transformer chosen. */
import { chooseSupply, type CableSystem, type ChooseOptions, type TransformerOption } from '../circuit';
import { shareTrenches } from './bundle-layout';
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import type { Yard } from '../yard';
import type { Bending } from './drawn-way';
import { handRuns, handTransformer, withDrawn, type Hand } from './hand';
import { layingOf } from './laid';
import { layOut, stops, type Layout } from './layout';
import { chooseOptions, connectorPrice, ownedTransformer, transformerOption } from './loads';
import type { Routes } from './paths';

/** What stays as it is while the answers about the circuit change. */
export interface Wired {
	routes: Routes;
	/** Terminals 1, 2, … of the routes. */
	fixtures: readonly Fixture[];
	/** Terminals to which there is a way from the supply. */
	reached: readonly number[];
	mountHeight: number;
	system: CableSystem;
	/** What cables bent by hand run into. */
	bending: Bending;
}
export interface Circuit {
	layout: Layout | null;
	transformer: TransformerOption;
	hand: Hand;
	/** The transformer is the one in hand. */
	owned: boolean;
	findings: Finding[];
}

function withOptions(wired: Wired, yard: Yard, only: TransformerOption | null): Circuit {
	const { routes, fixtures, reached, mountHeight, system, bending } = wired;
	const options: ChooseOptions = chooseOptions(system, yard, only);
	const hand = withDrawn(handRuns(yard, fixtures, reached, system), { routes, bending });
	const laying = layingOf({ routes, fixtures, mountHeight, connectorPrice: connectorPrice(yard) });
	const apart = layOut(laying, hand, options);
	const layout = apart && shareTrenches(apart, laying, hand, options);
	const transformer = layout?.choice.transformer ?? chooseSupply([], options).transformer;
	return { layout, transformer, hand, owned: false, findings: [] };
}

/** The transformer set by hand; or the owned one where it is enough, otherwise one from the catalogue and a word about it. */
export function circuitOf(wired: Wired, yard: Yard): Circuit {
	const set = handTransformer(yard);
	if (set) return withOptions(wired, yard, transformerOption(set, yard));
	const owned = ownedTransformer(yard);
	if (!owned) return withOptions(wired, yard, null);
	const mine = { ...withOptions(wired, yard, owned), owned: true };
	if (!mine.layout || stops(mine.layout.choice) === 0) return mine;
	const bought = withOptions(wired, yard, null);
	if (!bought.layout || stops(bought.layout.choice) >= stops(mine.layout.choice)) return mine;
	const limit = rules['supply.load'].figures.fraction * owned.voltAmps;
	const { loadVoltAmps } = mine.layout.choice;
	const why =
		loadVoltAmps > limit
			? `may carry ${Math.round(limit)} VA; this plan takes ${Math.round(loadVoltAmps)}`
			: 'cannot keep every lamp within its volts';
	const message = `Your ${owned.voltAmps} VA transformer ${why}. The plan goes on with one of ${bought.transformer.voltAmps} VA. With fewer lights, yours may do.`;
	const about = { kind: 'power', id: 'transformer' };
	return {
		...bought,
		findings: [{ code: 'cable.owned-transformer', rank: 'look', message, about, rule: 'supply.load' }]
	};
}
