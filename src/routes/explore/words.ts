/** How much a figure changed, in words: a sign and a word, so that it is not read off a colour. */
import type { Moved } from '$lib/domain/lesson/explore';

/** More than this and a percentage says less than the two figures do. */
const most = 900;
export function changeWords({ percent }: Pick<Moved, 'percent'>): string {
	if (percent === null) return '▲ from nothing';
	const word = percent > 0 ? '▲ more' : '▼ less';
	const size = Math.abs(percent);
	if (size > most) return `${word}, many times`;
	return `${word}, ${size < 1 ? 'under\u00a01' : Math.round(size)}\u00a0%`;
}
