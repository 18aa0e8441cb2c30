import { describe, expect, it } from 'vitest';
import { readRows } from './read';

const rows = (text: string) => readRows(text).rows;

// RFC 4180, section 2: the example of each rule, with CRLF written out.
describe('RFC 4180', () => {
	const abc = ['aaa', 'bbb', 'ccc'];
	const zyx = ['zzz', 'yyy', 'xxx'];
	it.each([
		['1: each record on a line', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', [abc, zyx]],
		['2: the last line may lack its break', 'aaa,bbb,ccc\r\nzzz,yyy,xxx', [abc, zyx]],
		[
			'3: a header line',
			'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
			[['field_name', 'field_name', 'field_name'], abc, zyx]
		],
		['4: fields parted by commas', 'aaa,bbb,ccc', [abc]],
		['5: fields in quotes or not', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [abc, zyx]],
		['6: line breaks in quotes', '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx', [['aaa', 'b\r\nbb', 'ccc'], zyx]],
		['7: a quote doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]]
	])('rule %s', (_rule, text, wanted) => expect(rows(text)).toEqual(wanted));
	it('rule 4: spaces are part of a field', () => expect(rows('aaa, bbb ,ccc')).toEqual([['aaa', ' bbb ', 'ccc']]));
});

describe('rows of a list', () => {
	it.each([',', ';', '\t', '|'])('finds %j between cells, though prices hold commas', (mark) => {
		const quoted = mark === ',' ? '"12,50"' : '12,50';
		const read = readRows([`Code${mark}Price${mark}Qty`, `0017${mark}${quoted}${mark}3`, ''].join('\n'));
		expect(read.delimiter).toBe(mark);
		expect(read.rows).toEqual([
			['Code', 'Price', 'Qty'],
			['0017', '12,50', '3']
		]);
	});
	it.each(['\r\n', '\n', '\r'])('ends lines at %j', (end) => {
		expect(rows(['code,name', '1,a', '2,"b"', '"3",c', ''].join(end))).toEqual([
			['code', 'name'],
			['1', 'a'],
			['2', 'b'],
			['3', 'c']
		]);
	});
	it('ends lines both ways in one file', () => {
		expect(rows('code,name\r\n1,a\n2,"b"\r\n3,"c\nd"\n')).toEqual([
			['code', 'name'],
			['1', 'a'],
			['2', 'b'],
			['3', 'c\nd']
		]);
	});
	it('keeps blank rows, so that numbers are a spreadsheet’s', () => {
		expect(rows('code,name\n\n1,a\n')).toEqual([['code', 'name'], [''], ['1', 'a']]);
	});
	it('takes a line saying the mark at its word, and counts it as a row', () => {
		expect(readRows('sep=;\ncode;name\n1;a,b,c\n')).toMatchObject({ skipped: 1, delimiter: ';' });
	});
	it('says where a quotation mark is never closed', () => {
		expect(readRows('code,name\n1,a\n2,"b\n3,c\n').unclosed).toBe(3);
		expect(readRows('code,name\n1,a\n').unclosed).toBeNull();
	});
	it('reads any text at all', () => {
		for (const text of ['', '\n', '"', ',', '\u{feff}', 'sep=;', '""""', '\r\r\n\n"'])
			expect(() => rows(text)).not.toThrow();
	});
});
