import { layCable, spotsToTry, type Cabling, type SpotToTry, type Supply, type TransformerAnswer } from '../cable';
import { placeFixtures } from '../placement';
import { distance } from '../shared/geometry';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { makeSite, type Site } from '../site';
import type { Yard } from '../yard';
import { spotPlace, unfedOf, whyWords } from './spots-words';
import type { SpotFigures } from './spots-types';

/** The yard with the transformer elsewhere, all else as it is. */
export const withSpot = (yard: Yard, transformer: TransformerAnswer): Yard => ({
	...yard,
	power: { ...yard.power, transformer }
});

const { cord, cordMost } = rules['supply.receptacle'].figures;
/** Along the wall it may be no further; it stands out from the wall besides, as the finding about the cord counts it. */
const within = (far: number, reach: number): boolean => far <= Math.hypot(reach, 0.1) + 1e-9;

function figuresOf(
	site: Site,
	{ kind, answer }: SpotToTry,
	cabling: Cabling,
	supply: Supply,
	lights: number
): SpotFigures {
	const { runs, findings } = cabling;
	const segments = runs.flatMap((run) => run.segments);
	const volts = runs.flatMap(({ nodes }) => nodes.slice(1).map((node) => node.volts));
	const solved = volts.filter((value) => value !== null);
	const far = site.receptacle ? distance(supply.at, site.receptacle.at) : null;
	return {
		id: kind,
		kind,
		where: spotPlace(site, supply),
		at: supply.at,
		on: supply.on,
		far,
		answer,
		cable: segments.reduce((sum, { length }) => sum + length, 0),
		trench: supply.route?.trench ?? 0,
		crossings: segments.reduce((sum, { crossings }) => sum + crossings.length, 0),
		cost: supply.cost,
		voltAmps: supply.ratedVoltAmps,
		stops: findings.filter(({ rank }) => rank === 'stop').length,
		unfed: unfedOf(cabling, lights),
		lowestVolts: solved.length > 0 && solved.length === volts.length ? Math.min(...solved) : null,
		difference: 0,
		electrician: far === null || !within(far, cordMost),
		because: supply.because,
		why: ''
	};
}

const cents = (value: number) => Math.round(value * 100);
const order: Record<SpotToTry['kind'], number> = { yours: 0, plan: 1, reach: 2, beyond: 2 };
/**
 * The person's place, the plan's, then the others: those that need no electrician first, those that feed more lights, fewer
 * stops, less cost to the cent, nearer to the receptacle, further out towards the street.
 */
const inOrder = (a: SpotFigures, b: SpotFigures): number =>
	order[a.kind] - order[b.kind] ||
	Number(a.electrician) - Number(b.electrician) ||
	a.unfed - b.unfed ||
	a.stops - b.stops ||
	cents(a.cost) - cents(b.cost) ||
	cents(a.far ?? 0) - cents(b.far ?? 0) ||
	cents(b.at.y) - cents(a.at.y);

function cordWords({ far, electrician }: SpotFigures, { units }: Site): string {
	if (far === null) return 'A licensed electrician has to fit the receptacle, here as anywhere; that is not counted.';
	if (electrician) return 'A licensed electrician has to fit a receptacle there first; that is not counted.';
	return within(far, cord) ? '' : `Its own cord has to reach ${formatLength(far, units)}: measure yours.`;
}
function whyOf(spot: SpotFigures, other: SpotFigures, site: Site): string {
	const than = other.kind === 'yours' ? 'from your place' : 'from the plan’s';
	const beside = spot === other ? '' : whyWords(spot, other, than, site.units);
	return [beside, cordWords(spot, site)].filter((part) => part !== '').join(' ');
}

/** Sorted and compared with the first: the person's place, or the plan's. Places from which fewer lights are fed are left out. */
function compared(spots: readonly SpotFigures[], site: Site): SpotFigures[] {
	const [other, ...rest] = spots.toSorted(inOrder);
	if (!other) return [];
	const isSensible = ({ kind, unfed }: SpotFigures) => kind === 'plan' || unfed <= other.unfed;
	let number = 0;
	return [other, ...rest.filter(isSensible)].map((spot) => ({
		...spot,
		id: spot.kind === 'yours' || spot.kind === 'plan' ? spot.kind : `spot-${++number}`,
		difference: spot.cost - other.cost,
		why: whyOf(spot, other, site)
	}));
}

function* weighed(yard: Yard, isWanted: (spot: SpotToTry) => boolean): Generator<null, SpotFigures[]> {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	const spots: SpotFigures[] = [];
	for (const spot of spotsToTry(site, yard, fixtures).filter(isWanted)) {
		yield null;
		const cabling = layCable(site, fixtures, withSpot(yard, spot.answer));
		if (cabling.supply) spots.push(figuresOf(site, spot, cabling, cabling.supply, fixtures.length));
	}
	return compared(spots, site);
}
function finished<T>(work: Generator<null, T>): T {
	for (;;) {
		const step = work.next();
		if (step.done) return step.value;
	}
}

/** As `compareSpots`, a place at a time: for pages, which do something else between the steps. */
export const spotsInTurn = (yard: Yard): Generator<null, SpotFigures[]> => weighed(yard, () => true);

/**
 * Places where the transformer could hang, each with the whole circuit laid out from it: the figures are those of the plan
 * made with that answer. Metres, volts, volt-amperes, the yard's currency. Pure and total; empty where there is nothing to
 * feed or nowhere to hang it.
 */
export const compareSpots = (yard: Yard): SpotFigures[] => finished(spotsInTurn(yard));

/** The person's own place and the plan's; null where they told none. */
export function ownSpotAgainstPlan(yard: Yard): { yours: SpotFigures; plan: SpotFigures } | null {
	if (typeof yard.power.transformer !== 'object') return null;
	const [yours, plan] = finished(weighed(yard, ({ kind }) => kind === 'yours' || kind === 'plan'));
	return yours && plan ? { yours, plan } : null;
}
