/** Letters that are not read as figures: without i, l and o. */
const alphabet = 'abcdefghjkmnpqrstuvwxyz';
/** The n-th letter from nought: a to z, then aa, ab … */
export function letterOf(n: number): string {
	const rest = n % alphabet.length;
	const before = Math.floor(n / alphabet.length);
	return (before > 0 ? letterOf(before - 1) : '') + alphabet[rest]!;
}
