import { holdsWithin, ratedLife } from '../shared/lamp-life';
import { rules } from '../shared/rules';
import type { Assumption } from '../shared/findings';
import type { Fixture } from '../placement';
import type { Runs } from './sensor/lamplight';

type Kind = Fixture['lamp']['kind'];
/** Hours of light that the first lamp of a kind to go out burns. */
export interface SoonestLife {
	kind: Kind;
	hours: number;
}
const { lifeLow, lifeHigh } = rules['lamp.halogen'].figures;
/** Rounding of the solver must not put a lamp that stands on the edge of its window outside. */
const nearly = 1e-6;

/**
 * Hours that a lamp lasts at `volts`: as rated for an LED inside its window; for a filament the shorter of Fink & Beaty's two
 * exponents (rule lamp.halogen), within a tenth of rated volts. Null where neither says; infinite below those volts,
 * where it is never the first to go.
 */
export function lifeAt(lamp: Fixture['lamp'], volts: number): number | null {
	const { taken } = ratedLife[lamp.kind];
	if (lamp.kind === 'led') {
		if (volts < lamp.minVolts - nearly) return Infinity;
		return volts > lamp.maxVolts + nearly ? null : taken;
	}
	const share = volts / lamp.ratedVolts;
	if (share < 1 - holdsWithin) return Infinity;
	return share > 1 + holdsWithin ? null : taken * Math.min(share ** lifeLow, share ** lifeHigh);
}
/**
 * The soonest life of each kind of lamp, hours of light. A kind is left out where the life of one of its lamps is not known:
 * too many volts, or a circuit without a solution. Lamps of no run are taken at their rated volts.
 */
export function soonestLives(fixtures: readonly Fixture[], runs: Runs): SoonestLife[] {
	const volts = new Map<string, number | null>();
	for (const { nodes } of runs) for (const node of nodes) if (node.fixture) volts.set(node.fixture, node.volts);
	const soonest = new Map<Kind, number | null>();
	for (const { id, lamp } of fixtures) {
		const at = volts.has(id) ? volts.get(id)! : lamp.ratedVolts;
		const life = at === null ? null : lifeAt(lamp, at);
		const before = soonest.get(lamp.kind);
		soonest.set(lamp.kind, life === null || before === null ? null : Math.min(before ?? Infinity, life));
	}
	return (['led', 'halogen'] as const).flatMap((kind) => {
		const hours = soonest.get(kind) ?? null;
		return hours === null || hours === Infinity ? [] : [{ kind, hours }];
	});
}
const hoursText = (hours: number): string => hours.toLocaleString('en');
/** Said once a lamp is there: the lives are nobody's published figure. */
export function lifeAssumptions(fixtures: readonly Fixture[]): Assumption[] {
	const kinds = (['led', 'halogen'] as const).filter((kind) => fixtures.some(({ lamp }) => lamp.kind === kind));
	if (kinds.length === 0) return [];
	const said = kinds.map((kind) =>
		kind === 'led'
			? `LED lamps are taken to last ${hoursText(ratedLife.led.taken)} hours`
			: `halogen lamps are taken to last ${hoursText(ratedLife.halogen.taken)} hours at their rated volts`
	);
	const words = said.join(', ');
	const message = `${words.charAt(0).toUpperCase()}${words.slice(1)}, from memory; the box comes first.`;
	return [{ path: 'power.lamp', message, about: null }];
}
