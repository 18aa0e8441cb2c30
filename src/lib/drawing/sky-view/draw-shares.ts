/** What becomes of the sky's light on the way to the sensor's window: two bars of shares, leaves on and leaves off. Marks in px. */
import type { SensorView } from '../../domain/dusk';

type Taker = SensorView['taken'][number]['kind'];
/** How a share is filled: the open sky stays bare; everything that takes light has a hatch of its own. */
export type ShareFill = 'sky' | Taker | 'rest';
export interface Segment {
	key: string;
	fill: ShareFill;
	x: number;
	width: number;
	/** Inside the bar where it has room. */
	text: string | null;
}
export interface ShareBar {
	id: 'leafOn' | 'leafOff';
	title: string;
	y: number;
	segments: Segment[];
}
export interface ShareMarks {
	width: number;
	height: number;
	barHeight: number;
	bars: ShareBar[];
}
const kinds: Record<Taker, string> = {
	house: 'the house',
	eaves: 'the roof’s edge',
	porch: 'a porch roof',
	tree: 'a tree',
	wall: 'a wall',
	ground: 'what stands at ground level'
};
export const takerName = ({ kind, name }: Pick<SensorView['taken'][number], 'kind' | 'name'>): string =>
	name.trim() || kinds[kind];
/** `62 %`; a share that would round to nothing is said as under one. */
export const shareWords = (share: number): string =>
	share > 0 && share < 0.005 ? 'under 1 %' : `${Math.round(share * 100)} %`;

const barHeight = 30;
const titleHeight = 20;
/** Below this a share is not told apart. */
const least = 0.002;
const perDigit = 9;

function barOf(parts: { key: string; fill: ShareFill; share: number }[], width: number): Segment[] {
	const total = parts.reduce((sum, { share }) => sum + share, 0);
	let from = 0;
	return parts
		.filter(({ share }) => share > least)
		.map(({ key, fill, share }) => {
			const wide = (share / total) * (width - 2);
			const words = shareWords(share);
			const segment = { key, fill, x: 1 + from, width: wide, text: wide > words.length * perDigit ? words : null };
			from += wide;
			return segment;
		});
}
/** Bars `width` px wide; the whole width is what a window in the open, facing the same way, gets of an even sky. */
export function drawShares({ sky, taken }: Pick<SensorView, 'sky' | 'taken'>, width: number): ShareMarks {
	const sum = taken.reduce((all, { share }) => all + share, 0);
	// What of the rest no single thing is named for.
	const unnamed = Math.max(0, 1 - sky.leafOn - sum);
	const on = [
		{ key: 'sky', fill: 'sky' as const, share: sky.leafOn },
		...taken.map(({ kind, id, share }) => ({ key: `${kind}-${id}`, fill: kind, share })),
		{ key: 'rest', fill: 'rest' as const, share: unnamed > 0.005 ? unnamed : 0 }
	];
	const off = [
		{ key: 'sky', fill: 'sky' as const, share: sky.leafOff },
		{ key: 'rest', fill: 'rest' as const, share: Math.max(0, 1 - sky.leafOff) }
	];
	const row = (index: number): number => index * (barHeight + titleHeight + 10) + titleHeight;
	return {
		width,
		height: row(1) + barHeight + 2,
		barHeight,
		bars: [
			{
				id: 'leafOn',
				title: `Leaves on: ${shareWords(sky.leafOn)} of the open sky`,
				y: row(0),
				segments: barOf(on, width)
			},
			{
				id: 'leafOff',
				title: `Leaves off: ${shareWords(sky.leafOff)} of the open sky`,
				y: row(1),
				segments: barOf(off, width)
			}
		]
	};
}
