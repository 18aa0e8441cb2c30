/** `npm run plan -- FILE [--json]`: the plan for a saved yard, as a report or as JSON. */
import { readFileSync } from 'node:fs';
import { makePlan } from '../lib/domain/plan';
import { readYard } from '../lib/domain/yard';
import { report } from './report';

const args = process.argv.slice(2);
const asJson = args.includes('--json');
const files = args.filter((arg) => !arg.startsWith('--'));
const unknown = args.filter((arg) => arg.startsWith('--') && arg !== '--json');
if (files.length !== 1 || unknown.length > 0) {
	console.error('Use: npm run plan -- FILE [--json]');
	process.exit(2);
}
const file = files[0]!;
let text: string;
try {
	text = readFileSync(file, 'utf8');
} catch (error) {
	console.error(`${file}: ${error instanceof Error ? error.message : String(error)}`);
	process.exit(1);
}
const read = readYard(text);
if (!read.ok) {
	console.error(`${file} cannot be opened as a yard:`);
	for (const problem of read.problems) console.error(`- ${problem}`);
	process.exit(1);
}
const plan = makePlan(read.yard);
console.log(asJson ? JSON.stringify(plan, null, '\t') : report(plan, read.yard.name ?? file));
