/** Text as few bytes, and back: a check of the text (CRC-32, big-endian), then the text as a raw DEFLATE stream (RFC 1951) with a preset dictionary. */
import { deflateSync, Inflate } from 'fflate';
import { crc32 } from './crc';
import { dictionary } from './dictionary';

const checkBytes = 4;
/** Bytes inflated at a time. DEFLATE makes at most 1032 of each, so that what is held beyond the limit stays below a few hundred kilobytes. */
const step = 256;

export function pack(text: string): Uint8Array {
	const plain = new TextEncoder().encode(text);
	const packed = deflateSync(plain, { level: 9, mem: 12, dictionary });
	const bytes = new Uint8Array(checkBytes + packed.length);
	new DataView(bytes.buffer).setUint32(0, crc32(plain));
	bytes.set(packed, checkBytes);
	return bytes;
}

export type Unpacked = { text: string } | { problem: 'damaged' | 'too-long' };

/** The text in packed bytes. `too-long`: more than `most` bytes would come out; nothing past that is inflated. */
export function unpack(bytes: Uint8Array, most: number): Unpacked {
	if (bytes.length <= checkBytes) return { problem: 'damaged' };
	const plain = inflate(bytes.subarray(checkBytes), most);
	if (!(plain instanceof Uint8Array)) return plain;
	const check = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0);
	if (crc32(plain) !== check) return { problem: 'damaged' };
	return { text: new TextDecoder().decode(plain) };
}

function inflate(packed: Uint8Array, most: number): Uint8Array | { problem: 'damaged' | 'too-long' } {
	const parts: Uint8Array[] = [];
	let length = 0;
	const stream = new Inflate({ dictionary }, (part) => {
		parts.push(part);
		length += part.length;
	});
	try {
		for (let at = 0; at < packed.length; at += step) {
			stream.push(packed.subarray(at, at + step), at + step >= packed.length);
			if (length > most) return { problem: 'too-long' };
		}
	} catch (error) {
		if (error instanceof Error && 'code' in error) return { problem: 'damaged' };
		throw error;
	}
	return joined(parts, length);
}
function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
	const whole = new Uint8Array(length);
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}
