/** CRC-32 as in ISO/IEC 13239, Ethernet and PNG: reflected polynomial 0xedb88320, all bits inverted before and after. */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
	let rest = byte;
	for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
	return rest;
});

/** The check of these bytes, 0 to 2³² − 1. It finds damage, not intent. */
export function crc32(bytes: Uint8Array): number {
	let rest = 0xffffffff;
	for (const byte of bytes) rest = (table[(rest ^ byte) & 0xff] ?? 0) ^ (rest >>> 8);
	return (rest ^ 0xffffffff) >>> 0;
}
