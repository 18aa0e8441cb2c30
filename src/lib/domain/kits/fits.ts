/** Whether what is on the shelf serves a need of the plan. */
import { rules } from '../shared/rules';
import { kindWords, sourceWords } from './words';
import type { Fit, FixtureNeed, ShelfFixture } from './types';

const { leastLight, mostLight, leastBeam, mostBeam } = rules['shop.alike'].figures;
/** How far a product may be from the plan's lamp, as parts of its lumens and of its beam (rule shop.alike). */
export const likeness = {
	light: { least: leastLight, most: mostLight },
	beam: { least: leastBeam, most: mostBeam }
} as const;

/** Least and most that may stand for a figure; a hair wider than the parts, so that an edge is inside whatever the rounding. */
const within = (value: number, asked: number, { least, most }: { least: number; most: number }): boolean =>
	value >= asked * least - 1e-9 && value <= asked * most + 1e-9;
const range = (asked: number, { least, most }: { least: number; most: number }, unit: string): string =>
	`${Math.ceil(asked * least - 1e-9)} to ${Math.floor(asked * most + 1e-9)}${unit}`;

/** `spots of 180 to 480 lm, beam 26° to 54°`: what would do, in words. */
export const wanted = ({ kind, lumens, beam }: FixtureNeed): string =>
	`${kindWords(kind, 2)} of ${range(lumens, likeness.light, ' lm')}${beam === null ? '' : ` with a beam of ${range(beam, likeness.beam, '°')}`}`;

/** The same kind of fixture with the light and beam that the plan wants, whatever kind of lamp it has. */
function bodyFit({ kind, lamp }: ShelfFixture, need: FixtureNeed): Fit {
	if (kind !== need.kind) return { ok: false, why: `a ${kindWords(kind)}, not a ${kindWords(need.kind)}` };
	if (!within(lamp.lumens, need.lumens, likeness.light)) {
		const much = lamp.lumens < need.lumens ? 'too little light' : 'too much light';
		return {
			ok: false,
			why: `${much}: ${Math.round(lamp.lumens)} lm, and the plan wants ${range(need.lumens, likeness.light, ' lm')}`
		};
	}
	if (need.beam === null) return { ok: true };
	if (lamp.beam === null)
		return { ok: true, note: `its beam is not on the shelf list: see that it is about ${need.beam}°` };
	if (within(lamp.beam, need.beam, likeness.beam)) return { ok: true };
	const wide = lamp.beam < need.beam ? 'too narrow a beam' : 'too wide a beam';
	return {
		ok: false,
		why: `${wide}: ${Math.round(lamp.beam)}°, and the plan wants ${range(need.beam, likeness.beam, '°')}`
	};
}

/**
 * Whether a product serves a need: the same kind; light within 0.6 to 1.6 times the plan's lumens; a beam, where one is asked for, within 0.7 to
 * 1.5 times; the kind of lamp that was wished, or with `other` (the shelf has only that) the other kind, and that is said.
 */
export function fits(product: ShelfFixture, need: FixtureNeed, other = false): Fit {
	const fit = bodyFit(product, need);
	const { source } = product.lamp;
	if (!fit.ok || source === need.source) return fit;
	const [has, wish] = [sourceWords[source], sourceWords[need.source]];
	if (!other) return { ok: false, why: `${has}, and ${wish} is wished` };
	const only = `${has}, because the shelf has no ${wish} ${kindWords(need.kind)} that suits`;
	return { ok: true, note: fit.note ? `${only}; ${fit.note}` : only };
}
/** By product, in their order, whether it serves a need; the other kind of lamp serves only where the wished kind does not. */
export function fitsOf(products: readonly ShelfFixture[], need: FixtureNeed): Fit[] {
	const own = products.map((product) => fits(product, need));
	return own.some(({ ok }) => ok) ? own : products.map((product) => fits(product, need, true));
}
