/** Pictures made byte by byte, so that what is seen on the page can be foretold. */
import { Buffer } from 'node:buffer';
import { crc32, deflateSync } from 'node:zlib';

type Colour = readonly [r: number, g: number, b: number];

function chunk(type: string, data: Buffer): Buffer {
	const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
	const size = Buffer.alloc(4);
	size.writeUInt32BE(data.length);
	const check = Buffer.alloc(4);
	check.writeUInt32BE(crc32(body));
	return Buffer.concat([size, body, check]);
}
/** A PNG of 8 bits a channel (W3C PNG, Third Edition, sections 5 and 11). */
export function png(width: number, height: number, colourAt: (x: number, y: number) => Colour): Buffer {
	const rows = Buffer.alloc((width * 3 + 1) * height);
	let at = 0;
	for (let y = 0; y < height; y += 1) {
		at += 1;
		for (let x = 0; x < width; x += 1) for (const part of colourAt(x, y)) rows[at++] = part;
	}
	const head = Buffer.alloc(13);
	head.writeUInt32BE(width, 0);
	head.writeUInt32BE(height, 4);
	head.set([8, 2, 0, 0, 0], 8);
	return Buffer.concat([
		Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
		chunk('IHDR', head),
		chunk('IDAT', deflateSync(rows)),
		chunk('IEND', Buffer.alloc(0))
	]);
}

/** A JPEG with an Exif block put in after its first marker: an orientation, and words that a camera might leave (Exif 2.3, 4.5.4 to 4.6.4). */
export function withExif(jpeg: Buffer, orientation: number): Buffer {
	const words = Buffer.from('Exif\0\0', 'latin1');
	const tiff = Buffer.alloc(26);
	tiff.write('MM\0*', 0, 'latin1');
	tiff.writeUInt32BE(8, 4);
	tiff.writeUInt16BE(1, 8);
	// Tag 0x0112, type SHORT, one value.
	tiff.writeUInt16BE(0x0112, 10);
	tiff.writeUInt16BE(3, 12);
	tiff.writeUInt32BE(1, 14);
	tiff.writeUInt16BE(orientation, 18);
	const left = Buffer.from('taken at 12 Invented Lane', 'latin1');
	const length = Buffer.alloc(4);
	length.writeUInt16BE(0xffe1, 0);
	length.writeUInt16BE(2 + words.length + tiff.length + left.length, 2);
	return Buffer.concat([jpeg.subarray(0, 2), length, words, tiff, left, jpeg.subarray(2)]);
}
