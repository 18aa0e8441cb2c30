/** Bytes as the text of an address, and back. */

/** Base64 with the alphabet for addresses and no padding: RFC 4648, section 5. */
export const toBase64url = (bytes: Uint8Array): string =>
	btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
		.replaceAll('+', '-')
		.replaceAll('/', '_')
		.replaceAll('=', '');

/** The bytes, or null where the text is no base64url: a foreign sign, a length that cannot be. */
export function fromBase64url(text: string): Uint8Array | null {
	if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null;
	const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
	return Uint8Array.from(plain, (sign) => sign.charCodeAt(0));
}

/**
 * Bytes as one whole number in decimals. A QR code packs three digits into 10 bits (ISO/IEC 18004, numeric mode), so that this costs 0.3 %
 * more than the bytes themselves, where base64 costs a third. A byte 1 goes before them, that zeros in front are not lost.
 */
export const toDigits = (bytes: Uint8Array): string =>
	BigInt(`0x01${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}`).toString();

/** The bytes, or null where the digits say none. */
export function fromDigits(text: string): Uint8Array | null {
	if (!/^\d+$/.test(text)) return null;
	const hex = BigInt(text).toString(16);
	// an even count after the byte 1, whose own zero is not written
	if (!hex.startsWith('1') || hex.length % 2 === 0) return null;
	return Uint8Array.from({ length: (hex.length - 1) / 2 }, (_, i) =>
		Number.parseInt(hex.slice(1 + 2 * i, 3 + 2 * i), 16)
	);
}
