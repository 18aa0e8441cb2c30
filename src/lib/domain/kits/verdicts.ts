/** For each kit of the shelf: in or out, and why, in words that can be said across a counter. */
import { sizeName } from '../circuit';
import { spareAlone } from './allot';
import { aloneOf, type Alone } from './alone';
import type { Posed } from './problem';
import { remedyFor } from './remedies';
import { searchFully } from './search';
import type { Limits } from './search-types';
import type { Judged, KitVerdict, Needs, Shelf, ShelfLine, Solution } from './types';
import { cableLength, inside, kindsCounted, kindWords, listed, money, sentence } from './words';

export interface Round {
	needs: Needs;
	shelf: Shelf;
	posed: Posed;
	/** Of the best and the runners-up. */
	isProven: boolean;
	best: Solution | null;
	runnersUp: readonly Solution[];
	/** Steps that the searches for kits still to be judged may take, shared evenly; what one does not need is left to the others. */
	left: Limits & { kits: number };
}
/** Steps in haste for one kit, where its search broke off. */
const kitHaste = 1_000;

/** The lamp that is furthest below its window: as built, or where that is right in the worst case. */
function dimOf({ problems, lamps }: Judged): KitVerdict['dim'] {
	const fixture = problems.find(({ code }) => code === 'lamp-low')?.fixture;
	const lamp = lamps.find((one) => one.fixture === fixture);
	if (!lamp || lamp.volts === null) return null;
	const { label, volts, low, least } = lamp;
	return { label, volts: volts < least ? volts : (low ?? volts), least };
}

type WithIt = Pick<KitVerdict, 'withIt' | 'isProven'>;
/** The cheapest purchase with this kit in it. Not asked where nothing was found without. */
function withKit(place: number, { posed, isProven, best, runnersUp, shelf, left }: Round): WithIt {
	const steps = Math.max(1, Math.ceil(left.steps / left.kits));
	left.kits -= 1;
	if (!best) return { withIt: null, isProven };
	const { code, cents } = shelf.lines[place]!;
	const known = [best, ...runnersUp].find(({ buys }) => buys.some((one) => one.code === code));
	// The first shown with it is the cheapest that uses it; only to have it beside the best could be cheaper.
	if (known && known.cents - best.cents <= cents)
		return { withIt: { buys: known.buys, moreCents: known.cents - best.cents }, isProven };
	const limits = { steps, haste: Math.min(left.haste, kitHaste) };
	const asked = searchFully(posed.problem, { most: 1, atLeast: new Map([[place, 1]]), limits });
	left.steps = Math.max(0, left.steps - asked.steps);
	const [found] = asked.purchases;
	const withIt = found ? { buys: posed.buysOf(found), moreCents: found.cents - best.cents } : null;
	// What it costs more is sure only where both are.
	return { withIt, isProven: asked.isProven && isProven };
}

/** What of it the cheapest uses. */
function brings({ contents, code }: ShelfLine, { needs, best, posed }: Round): string {
	const { setup, buys } = best!;
	const times = buys.find((one) => one.code === code)!.count;
	const lights = contents.fixtures.flatMap(({ product, fixture, count }) => {
		const used = needs.fixtures.reduce(
			(sum, { fixtures }, n) => sum + (setup.products[n] === product ? fixtures.length : 0),
			0
		);
		return used > 0 ? [kindsCounted(Math.min(used, count * times), fixture.kind)] : [];
	});
	const isSupply =
		contents.transformer &&
		!posed.judge.stock.line.get(setup.transformer)?.isOwned &&
		posed.judge.stock.supplyOf.get(code) === posed.judge.stock.supplyOf.get(setup.transformer);
	const cable = contents.cable.flatMap(({ size, metres, count }) =>
		setup.sizes.some((one) => one.system === size.system && one.size === size.size)
			? [`${cableLength(metres * count * times, needs.units, false)} of ${sizeName(size)} cable`]
			: []
	);
	return listed([...lights, ...(isSupply ? [`the ${contents.transformer!.voltAmps} VA transformer`] : []), ...cable]);
}

/** Why none of its lights serve: by the light that comes nearest, that is of a kind that is wanted. */
function unsuited({ contents }: ShelfLine, { needs, posed }: Round): string {
	if (contents.fixtures.length === 0) return 'It has no lights in it';
	const why = contents.fixtures.flatMap(({ product, fixture }) => {
		const place = posed.judge.stock.product.get(product)!;
		const same = needs.fixtures.flatMap(({ kind }, n) => {
			const fit = posed.fits[n]![place]!;
			return kind === fixture.kind && !fit.ok ? [fit.why] : [];
		});
		const many = kindWords(fixture.kind, 2);
		return same.length > 0 ? [`its ${many}: ${same[0]!}`] : [`no ${many} are wanted here`];
	});
	return `None of its lights serve: ${[...new Set(why)].join('; ')}`;
}
/** The cheapest with it is the cheapest without, and this beside it. */
function isIdle({ code }: ShelfLine, withIt: KitVerdict['withIt'], { best }: Round): boolean {
	const others = withIt?.buys.filter((one) => one.code !== code) ?? [];
	const own = best?.buys ?? [];
	return (
		others.length === own.length &&
		own.every(({ code: mine, count }, k) => others[k]!.code === mine && others[k]!.count === count)
	);
}
/** `dearer`, where the search broke off. */
function dearerPerhaps(line: ShelfLine, withIt: KitVerdict['withIt'], round: Round): string {
	const broken = 'the search broke off before it had tried them all';
	if (!withIt) return `Whether anything passes with it in the basket is not known: ${broken}`;
	if (isIdle(line, withIt, round)) return `Beside the cheapest found nothing of it is used; ${broken}`;
	const { moreCents } = withIt;
	const more = `${money(Math.abs(moreCents), round.shelf.currency)} ${moreCents < 0 ? 'less' : 'more'}`;
	return `With it the cheapest found costs ${moreCents === 0 ? 'the same' : more}; ${broken}`;
}
/** With the cheapest way to have it after all. */
function dearer(line: ShelfLine, { withIt, isProven }: WithIt, round: Round): string {
	const { best, shelf } = round;
	if (!best) return '';
	if (!isProven) return dearerPerhaps(line, withIt, round);
	if (!withIt) return 'With it in the basket nothing on the shelf passes';
	if (isIdle(line, withIt, round)) return 'Beside the cheapest that works nothing of it is used';
	return withIt.moreCents === 0
		? 'With it the price is the same, in more lines or pieces'
		: `With it the cheapest that works costs ${money(withIt.moreCents, shelf.currency)} more`;
}

/** `As it comes`, or how many of it hang on one transformer. */
const asItComes = ({ times }: Alone): string =>
	times > 1 ? `${times} of it on one of their transformers` : 'As it comes';

function whyOf(line: ShelfLine, told: Omit<KitVerdict, 'why'>, alone: Alone, round: Round): string {
	if (told.isIn) {
		const parts = brings(line, round);
		return sentence(
			`Part of the cheapest ${round.isProven ? 'that works' : 'found'}${parts ? `: it brings ${parts}` : ''}`
		);
	}
	if (line.stock === 0) return 'None of it is left.';
	const after = dearer(line, told, round);
	const join = (...parts: string[]) => parts.filter(Boolean).map(sentence).join(' ');
	if (alone.lamps.every((lamp) => lamp === null)) return join(unsuited(line, round), after);
	const { tried } = alone;
	if (tried && !tried.judged.ok)
		return join(`${asItComes(alone)}, ${inside(tried.judged.problems[0]!.message)}`, after);
	const lacks = alone.lacks.length > 0 ? `It lacks ${listed(alone.lacks)}` : '';
	if (tried) return join(lacks ? `${asItComes(alone)}, its lamps get their volts` : 'It would do', lacks, after);
	return join(lacks || 'It has no cable of its own', after);
}

/** What to add to what it has: the rest of the cheapest purchase with it. */
function addition(line: ShelfLine, withIt: KitVerdict['withIt'], round: Round): string | null {
	const others = withIt?.buys.filter(({ code }) => code !== line.code) ?? [];
	if (others.length === 0 || isIdle(line, withIt, round)) return null;
	const names = others.map(({ code, count }) => {
		const { name, isOwned } = round.posed.judge.stock.line.get(code)!;
		return isOwned ? inside(name) : `${count > 1 ? `${count} of ` : ''}${name} (${code})`;
	});
	return sentence(`Add ${listed(names)}`);
}

export function verdictOf(place: number, round: Round): KitVerdict {
	const { needs, shelf, posed, best } = round;
	const line = shelf.lines[place]!;
	const alone = aloneOf(line, needs, posed);
	const { tried, lamps } = alone;
	const isIn = best?.buys.some(({ code }) => code === line.code) ?? false;
	const short = alone.lacks.map((one) => (one === 'a transformer' ? 'no transformer' : `${one} short`));
	const serves = lamps.some((lamp) => lamp !== null);
	const { withIt, isProven } = withKit(place, round);
	const fails = tried !== null && !tried.judged.ok;
	const remedy = fails
		? remedyFor({ needs, shelf, judge: posed.judge, lamps, tried })
		: short.length > 0 && serves && !isIn
			? addition(line, withIt, round)
			: null;
	const told = {
		code: line.code,
		isIn,
		short,
		spare: spareAlone(needs, alone.goods, alone.allotted, posed.judge.stock),
		alone: tried?.judged ?? null,
		dim: tried ? dimOf(tried.judged) : null,
		withIt,
		isProven,
		remedy,
		growth: tried ? tried.judged.limitVoltAmps - tried.judged.loadVoltAmps : null
	};
	return { ...told, why: whyOf(line, told, alone, round) };
}
