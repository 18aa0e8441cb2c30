/** FNV-1a over a text's code points, 32 bits (Fowler, Noll and Vo): a short sum that tells texts apart, no safeguard against tampering. */
export function fnv1a(text: string): number {
	let hash = 0x811c9dc5;
	for (const char of text) hash = Math.imul(hash ^ char.codePointAt(0)!, 0x01000193) >>> 0;
	return hash;
}
