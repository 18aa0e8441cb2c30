import { formatLength, type UnitSystem } from '../../shared/units';
import type { SweepPicture } from '../pictures';
import { isStruck, placeOf, sweptOf, type Beside, type Lit } from './drive';

export interface Lamp extends Beside {
	label: string;
}
export interface Told {
	/** What the car cuts is shown, and which lamps it strikes. */
	flare: number | null;
	/** Metres of the yard beside the drive that are in the picture, from the street inwards. */
	shown: number;
	alt: string;
	changed?: boolean;
}
/** The right corner of the mouth, in the shape of a slide. */
function frame(lit: Lit, shown: number): NonNullable<SweepPicture['frame']> {
	const height = 1.25 * shown;
	const width = height / 0.7;
	const corner = placeOf(lit, { out: 0, back: shown });
	return { left: corner.x - 0.3 * width, top: corner.y, width, height };
}
/** The right corner of the mouth from above. */
export function sweepOf(lit: Lit, lamps: readonly Lamp[], units: UnitSystem, told: Told): SweepPicture {
	const { strip, site } = lit;
	const { flare, changed } = told;
	const wide = strip.width * 3;
	return {
		kind: 'sweep',
		alt: told.alt,
		drive: [...strip.polygon],
		street: [
			{ x: -wide, y: site.street },
			{ x: wide, y: site.street },
			{ x: wide, y: site.street + strip.width },
			{ x: -wide, y: site.street + strip.width }
		],
		swept: flare === null ? [] : sweptOf(lit, flare),
		frame: frame(lit, told.shown),
		lamps: lamps.map((lamp) => ({
			at: placeOf(lit, lamp),
			label: lamp.label,
			state: flare !== null && isStruck(lamp, flare) ? 'struck' : 'clear',
			head: lamp.head
		})),
		// Along the street, where no lamp stands.
		measures:
			flare === null
				? []
				: [
						{
							from: placeOf(lit, { out: 0, back: -0.12 * told.shown }),
							to: placeOf(lit, { out: flare, back: -0.12 * told.shown }),
							text: formatLength(flare, units),
							...(changed ? { changed } : {})
						}
					]
	};
}
