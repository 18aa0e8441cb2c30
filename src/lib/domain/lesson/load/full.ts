/** The lesson's transformer and its lamps, filled by the engine, and their picture. */
import { fixtureModels } from '../../shared/catalogue';
import type { LoadPicture } from '../pictures';
import { bank, limitOf, mostLamps, voltAmpsOf } from './bank';

/** VA on the label. */
export const rated = 150;
/** The strongest LED lamp of the catalogue, so that few fill the transformer. */
export const lamp = fixtureModels
	.map((model) => model.lamp)
	.filter(({ kind }) => kind === 'led')
	.reduce((a, b) => (b.watts > a.watts ? b : a));
export const limit = limitOf(rated);
export const most = mostLamps(rated, lamp.voltAmps);

export const lampsText = (lamps: number): string => (lamps === 1 ? '1 lamp' : `${lamps} lamps`);
export const voltAmpsText = (voltAmps: number): string => `${Number(voltAmps.toFixed(1))} VA`;

export interface Full {
	lamps: number;
	voltAmps: number;
	amps: number;
}
export function full(lamps: number): Full {
	const solution = bank(lamps, lamp.voltAmps)!;
	return { lamps, voltAmps: voltAmpsOf(solution), amps: solution.sourceAmps };
}
export const picture = ({ lamps, voltAmps }: Full): LoadPicture => ({
	kind: 'load',
	alt: `A transformer of ${rated} VA, of which ${voltAmpsText(limit)} may be used for hours. ${lampsText(lamps)} of ${voltAmpsText(lamp.voltAmps)} fill ${voltAmpsText(voltAmps)}.`,
	rated,
	limit,
	ratedText: voltAmpsText(rated),
	limitText: voltAmpsText(limit),
	parts: Array.from({ length: lamps }, () => ({
		label: `LED ${lamp.watts} W`,
		voltAmps: lamp.voltAmps,
		text: voltAmpsText(lamp.voltAmps)
	}))
});

/** Before the reveal: neither what a lamp draws nor what may be used is told. */
export const labelPicture = (): LoadPicture => ({
	kind: 'load',
	alt: `A transformer that says ${voltAmpsText(rated)}, with nothing on it yet.`,
	rated,
	limit: rated,
	ratedText: voltAmpsText(rated),
	limitText: '',
	parts: []
});
