import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readYard, type Yard } from '../../lib/domain/yard';

/** A demo yard by its file's name; the bench runs from the project's root. */
export function example(name: string): Yard {
	const read = readYard(readFileSync(join('src/lib/domain/yard/examples', `${name}.json`), 'utf8'));
	if (!read.ok) throw new Error(`${name}: ${read.problems.join('; ')}`);
	return read.yard;
}
