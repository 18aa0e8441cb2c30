/** Where the parts of a run's diagram stand: columns from left to right, in units of the drawing, letters 28 units high. */
import type { RunPicture } from '$lib/domain/lesson';

/** Of a letter, about, and the gap beside a column's texts. */
const letter = 15.5;
const gap = 14;
export const least = 600;

export interface Places {
	width: number;
	/** From column to column. */
	pitch: number;
	/** Middle of each column; of a supply there are two where both ends are fed. */
	supplies: number[];
	lamps: number[];
	/** By cable: its middle, and which way the current flows along it. */
	cables: { x: number; way: 'right' | 'left' }[];
}
export const wide = (text: string): number => text.length * letter;

/** The light of a lamp in words: what the halo shows, said. */
export function lightOf({ share, state }: RunPicture['lamps'][number]): string {
	if (state === 'off') return 'dark';
	if (state === 'over') return 'too high';
	const percent = Math.round(100 * share);
	return share > 0 && percent < 1 ? '< 1 %' : `${percent} %`;
}
/** Columns stay clear of each other: the drawing grows wider where their texts do. */
export function placesOf({ arrangement, lamps, cables, supply, unlit }: RunPicture): Places {
	const count = lamps.length;
	const before = arrangement === 'tee' ? Math.floor(count / 2) : 0;
	const columns = count + (arrangement === 'both ends' ? 2 : 1);
	const texts = [
		supply.text,
		...lamps.flatMap((lamp) => [lamp.label, lamp.volts, unlit ? '' : lightOf(lamp)]),
		...cables.flatMap(({ length, amps }) => [length, amps])
	];
	const pitch = Math.max(least / columns, ...texts.map((text) => wide(text) + gap));
	const middle = (column: number): number => (column + 0.5) * pitch;
	const at = lamps.map((_, k) => middle(k < before ? k : k + 1));
	return {
		width: columns * pitch,
		pitch,
		supplies: arrangement === 'both ends' ? [middle(0), middle(columns - 1)] : [middle(before)],
		lamps: at,
		cables: cables.map((_, k) => {
			const x = k < count ? at[k]! : middle(columns - 1);
			return k < before ? { x: x + pitch / 2, way: 'left' } : { x: x - pitch / 2, way: 'right' };
		})
	};
}
