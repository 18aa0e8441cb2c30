import { makePlan } from '../../src/lib/domain/plan';
import { writeYard, type Yard } from '../../src/lib/domain/yard';
import { largeYard } from '../../src/tools/bench/large-yard';

/** An invented yard of about a hundred lights: the estate of the benches with its drive lit at the mouth only. */
export function hundredLights(): { yard: Yard; text: string; lights: number } {
	const large = largeYard();
	const yard: Yard = {
		...large,
		name: 'A hundred lights',
		drives: large.drives!.map((drive) => ({ ...drive, lights: 'mouth' as const }))
	};
	return { yard, text: writeYard(yard), lights: makePlan(yard).fixtures.length };
}
