import { demoShelf, readShelf, shelfCsv } from '../../lib/shelf';
import { medianMs, type Row } from './measure';

/** A list of 10,000 rows read: the demo shelf's lines again and again, each with a code of its own. */
export function rows(): Row[] {
	const { lines } = demoShelf;
	const many = Array.from({ length: 10_000 }, (_, k) => ({ ...lines[k % lines.length]!, code: `C${k}` }));
	const text = shelfCsv({ ...demoShelf, lines: many });
	return [{ name: 'shelf.10000', value: medianMs(() => readShelf(text), 5), unit: 'ms' }];
}
