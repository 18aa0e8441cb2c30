/** What the panel says. Lengths in the person's units. */
import type { Point } from '$lib/domain/shared/geometry';
import { formatLength, formatLengthFinely, type UnitSystem } from '$lib/domain/shared/units';
import type { Underlay } from '$lib/domain/yard';
import { bySecondPlace, offBy, pixelsApart, placed } from '$lib/drawing/underlay';

export const missingWords =
	'The picture is not in this browser: it stays where it was opened, and a link does not carry it. Your answers and its marks are all here. Open the same picture again, or a copy of the yard saved where the picture is.';
export const failedWords =
	'The picture could not be read from this browser. Your answers are safe. Reload the page, or open the picture again.';
export const looseWords =
	'This browser keeps no pictures (a private window, or no room left): the picture lasts until you close this tab. A copy that you save holds it.';

/** What to do next, in a sentence. */
export function nextWords(told: Underlay): string {
	if (!told.from) return 'Mark a first place on it, A: a corner that you can find in the yard too.';
	if (!told.to) return 'Mark a second place, B, as far from A as you can measure.';
	if (pixelsApart(told) === null) return 'A and B lie on one spot. Mark B farther away.';
	if (told.apart === undefined) return 'Measure from A to B in the yard and type it: that is the scale.';
	if (!told.at) return 'It is to scale. Say where A lies in the yard.';
	if (told.turn === undefined) return 'It is in place at A. Turn it until the rest lies right too.';
	return 'It lies to scale, in its place. Check a distance that you have not used yet.';
}
/** How fine it is: what one pixel stands for. Null while it has no scale. */
export function scaleWords(told: Underlay, units: UnitSystem): string | null {
	const { isToScale, metresPerPixel } = placed(told);
	if (!isToScale) return null;
	const across = formatLength(told.width * metresPerPixel, units);
	return `The whole picture is ${across} wide; one pixel of it is ${pixelWords(metresPerPixel, units)}.`;
}
const pixelWords = (metres: number, units: UnitSystem): string => {
	const least = units === 'feet' ? 0.0254 / 16 : 0.001;
	return metres < least ? `under ${formatLengthFinely(least, units)}` : formatLengthFinely(metres, units);
};
const percent = (share: number) => `${(Math.abs(share) * 100).toFixed(1)} %`;

/** Shares within which a picture may be traced from, and beyond which a mark is wrong. Our choice: a walk 40 ft long is then out by 5 in or 14 in. */
const good = 0.01;
const fair = 0.03;
/** A length on the picture beside that of a tape, metres: how far off, and what to make of it. */
export function checkWords(onPicture: number, byTape: number, units: UnitSystem): string {
	const share = offBy(onPicture, byTape);
	const both = `Measured here ${formatLength(onPicture, units)}; the tape says ${formatLength(byTape, units)}`;
	if (Math.abs(share) < 0.0005) return `${both}: they agree.`;
	const off = `${both}: the picture is ${percent(share)} ${share > 0 ? 'long' : 'short'}.`;
	if (Math.abs(share) <= good) return `${off} Good enough to trace from.`;
	if (Math.abs(share) <= fair) return `${off} Trace from it, but measure with the tape what has to fit.`;
	return `${off} Mark A and B anew. If that does not help, the picture was not taken from straight above, and shows lengths unevenly.`;
}
/** What the place of B says about the distance that was typed; null when there is nothing to say. */
export function secondPlaceWords(told: Underlay, second: Point, units: UnitSystem): string | null {
	const found = bySecondPlace(told, { along: second.x, out: second.y });
	if (!found || told.apart === undefined || Math.abs(offBy(told.apart, found.apart)) < 0.005) return null;
	return `From A to that place it is ${formatLength(found.apart, units)} in the yard; from A to B you typed ${formatLength(told.apart, units)}. The typed distance stays the scale.`;
}
export const pixelPlace = ({ x, y }: Point): string => `${Math.round(x)} across, ${Math.round(y)} down`;
