/** Figures of the counter: which of a shelf to buy. Each call has needs and a shelf of its own, so that nothing solved before is of help. */
import { makePlan } from '../../lib/domain/plan';
import { matchShelf, needsOf, problemOf } from '../../lib/domain/kits';
import { search } from '../../lib/domain/kits/search';
import { shopProblem } from '../../lib/domain/kits/search-shop.testing';
import { quickYard, usualAnswers } from '../../lib/domain/quick';
import { demoShelf } from '../../lib/shelf';
import { example } from './example';
import { medianMs, type Row } from './measure';

/** The demo shelf, its 12 kits and 40 loose items, for a usual customer and for the suburban demo, each circuit solved; then seeded shops whose prices follow what is in a box, 8 needs and 2 runs. */
export function rows(): Row[] {
	const yard = example('suburban');
	const needs = needsOf(makePlan(yard), yard);
	const shop = (seed: number, kits: number, loose: number) => {
		const problem = shopProblem(seed, { needs: 8, runs: 2, kits, loose, tells: 'drop' });
		return () => search({ ...problem }, { most: 3 });
	};
	const walk = quickYard(usualAnswers('feet')).yard;
	const few = needsOf(makePlan(walk), walk);
	const found = (of: typeof needs) => () => search(problemOf({ ...of }, { ...demoShelf }).problem, { most: 3 });
	return [
		{ name: 'match.usual', value: medianMs(found(few), 40), unit: 'ms' },
		{ name: 'match.demo', value: medianMs(found(needs), 20), unit: 'ms' },
		{ name: 'match.demo.verdicts', value: medianMs(() => matchShelf({ ...needs }, { ...demoShelf }), 8), unit: 'ms' },
		{ name: 'match.12', value: medianMs(shop(7, 12, 60), 40), unit: 'ms' },
		{ name: 'match.60', value: medianMs(shop(8, 60, 200), 20), unit: 'ms' }
	];
}
