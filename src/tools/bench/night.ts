import { makePlan } from '../../lib/domain/plan';
import { develop, luminancePicture } from '../../lib/night';
import { example } from './example';
import { medianMs, type Row } from './measure';

/** The yard after dark: a street view of 960 × 400 pixels, the slowest demo yard first, and one turn of the slider. */
export function rows(): Row[] {
	const view = { kind: 'street', width: 960, height: 400 } as const;
	const named = ['suburban', 'rural', 'town'].map((name) => ({ name, plan: makePlan(example(name)) }));
	const picture = luminancePicture(named[0]!.plan, view);
	return [
		...named.map(({ name, plan }): Row => {
			const value = medianMs(() => luminancePicture(plan, view), 5);
			return { name: name === 'suburban' ? 'night.street' : `night.street.${name}`, value, unit: 'ms' };
		}),
		{ name: 'night.develop', value: medianMs(() => develop(picture, 0.3), 10), unit: 'ms' }
	];
}
