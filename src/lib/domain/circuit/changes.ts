/** Changes to a plan that might cure a problem, by kind; `cures.ts` finds out which do. */
import type { Assessed, Pick } from './assess';
import { byThickness, usualSizes } from './conductors';
import type { Broken } from './judge';
import { splitRun, withLeds } from './split';
import { soldAt, wayCost, type WaysOfRun } from './ways';
import type { CableSize, ChooseOptions, Cure, RunShape, TransformerOption } from './types';

export interface Change {
	cure: Omit<Cure, 'cost'>;
	/** What it changes in the cost of cable and laying, and of the transformer where that is the change. */
	cost: number;
	picks: Pick[];
	transformer: TransformerOption;
	/** The runs that stand in for the problem's run. */
	replaced: Pick[];
}

const same = (a: CableSize, b: CableSize) => a.system === b.system && a.size === b.size;

/** Sizes with a price, of those to choose from and those in use at large. */
function thickerThan(size: CableSize, options: ChooseOptions): CableSize[] {
	const known = [...options.sizes, ...usualSizes(size.system)].filter(
		(s) => s.system === size.system && byThickness(s, size) > 0 && soldAt(s, options) !== null
	);
	return known.filter((s, k) => known.findIndex((other) => same(s, other)) === k).toSorted(byThickness);
}

/** Larger ones that have every tap in use, the cheapest first. */
export const largerThan = (
	transformer: TransformerOption,
	picks: Pick[],
	{ transformers }: ChooseOptions
): TransformerOption[] =>
	transformers
		.filter(
			({ voltAmps, taps }) => voltAmps > transformer.voltAmps && picks.every(({ tapVolts }) => taps.includes(tapVolts))
		)
		.toSorted((a, b) => a.price - b.price);

/** What may stand in for one run, each with what is told of it. */
function standIns(
	pick: Pick,
	taps: number[],
	ways: WaysOfRun | undefined,
	options: ChooseOptions
): { cure: Omit<Cure, 'cost'>; replaced: Pick[] }[][] {
	const { shape, size: own } = pick;
	const thicker = thickerThan(own, options);
	const told = (tapVolts: number) => (tapVolts === pick.tapVolts ? {} : { tapVolts });
	const onEach = (cure: Omit<Cure, 'cost'>, shapes: RunShape[], size: CableSize) =>
		taps.map((tapVolts) => ({
			cure: { ...cure, ...told(tapVolts) },
			replaced: shapes.map((one) => ({ shape: one, size, tapVolts }))
		}));
	const halves = splitRun(shape);
	const groups = halves?.map(({ loads }) => loads.map(({ id }) => id));
	const led = withLeds(shape);
	const others = ways ? [ways.plain, ...ways.others].filter((way) => way.shape !== shape) : [];
	return [
		taps
			.filter((tapVolts) => tapVolts !== pick.tapVolts)
			.map((tapVolts) => ({ cure: { kind: 'tap', tapVolts }, replaced: [{ ...pick, tapVolts }] })),
		others.flatMap((way) =>
			[own, ...thicker].flatMap((size) =>
				onEach({ kind: 'feed', feed: way.shape.feed ?? 'end', ...(size !== own && { size }) }, [way.shape], size)
			)
		),
		thicker.flatMap((size) => onEach({ kind: 'thicker', size }, [shape], size)),
		halves && soldAt(own, options) !== null
			? [own, ...thicker].flatMap((size) => onEach({ kind: 'split', size, groups: groups! }, halves, size))
			: halves
				? thicker.flatMap((size) => onEach({ kind: 'split', size, groups: groups! }, halves, size))
				: [],
		led ? onEach({ kind: 'led' }, [led], own) : []
	];
}

/** Changes by kind, in each kind the cheapest first. */
export function changesTo(
	{ transformer, runs }: Assessed,
	problem: Broken,
	waysById: Map<string, WaysOfRun>,
	options: ChooseOptions
): Change[][] {
	const picks: Pick[] = runs.map(({ shape, size, tapVolts }) => ({ shape, size, tapVolts }));
	const index = picks.findIndex(({ shape }) => shape.id === problem.run);
	const pick = picks[index];
	const larger = largerThan(transformer, picks, options).map((t): Change => ({
		cure: { kind: 'larger-transformer', transformer: t.id },
		cost: t.price - transformer.price,
		picks,
		transformer: t,
		replaced: pick ? [pick] : []
	}));
	if (!pick) {
		if (!picks.some(({ shape }) => withLeds(shape))) return [larger];
		const everyLed = picks.map((one) => ({ ...one, shape: withLeds(one.shape) ?? one.shape }));
		return [[{ cure: { kind: 'led' }, cost: 0, picks: everyLed, transformer, replaced: [] }], larger];
	}
	const price = (all: Pick[]) => all.reduce((sum, { shape, size }) => sum + wayCost(shape, size, options), 0);
	const before = price([pick]);
	const taps = [pick.tapVolts, ...transformer.taps.filter((tap) => tap !== pick.tapVolts)];
	const ways = waysById.get(pick.shape.id);
	return [
		...standIns(pick, taps, ways, options).map((kind) =>
			kind
				.map(({ cure, replaced }): Change => ({
					cure,
					cost: price(replaced) - before,
					picks: picks.toSpliced(index, 1, ...replaced),
					transformer,
					replaced
				}))
				.toSorted((a, b) => a.cost - b.cost)
		),
		larger
	];
}
