import { layCable } from '../../lib/domain/cable';
import { randomGround } from '../../lib/domain/cable/random.testing';
import { blankYard } from '../../lib/domain/yard';
import { medianMs, type Row } from './measure';

/** Routes, runs and supply on seeded ground: house, bent walk, drive, trees, water; 30 and 200 fixtures. */
export function rows(): Row[] {
	const yard = blankYard();
	return [30, 200].map((count) => {
		const { site, fixtures } = randomGround(11, count);
		const lay = () => layCable(site, fixtures, yard);
		return { name: `cable.${count}`, value: medianMs(lay, count > 100 ? 15 : 60), unit: 'ms' };
	});
}
