/** `npm run bench [-- --json]`: the figures that have a budget, each with its median after a warm-up. */
import { makePlan } from '../lib/domain/plan';
import { rows as cableRows } from './bench/cable';
import { rows as circuitRows } from './bench/circuit';
import { rows as duskRows } from './bench/dusk';
import { rows as kitsRows } from './bench/kits';
import { rows as lessonRows } from './bench/lesson';
import { rows as lightRows } from './bench/light';
import { rows as nightRows } from './bench/night';
import { rows as placementRows } from './bench/placement';
import { rows as shelfRows } from './bench/shelf';
import { example } from './bench/example';
import { largeYard } from './bench/large-yard';
import { medianMs, type Row } from './bench/measure';

const wholePlan = (): Row[] => {
	const rows: Row[] = [];
	for (const name of ['town', 'suburban', 'rural']) {
		const yard = example(name);
		rows.push({ name: `plan.${name}`, value: medianMs(() => makePlan(yard), 60), unit: 'ms' });
	}
	const large = largeYard();
	const fixtures = makePlan(large).fixtures.length;
	rows.push({ name: 'plan.200', value: medianMs(() => makePlan(large), 12), unit: 'ms' });
	rows.push({ name: 'plan.200.fixtures', value: fixtures, unit: 'fixtures' });
	return rows;
};
const all: Row[] = [
	...wholePlan(),
	...(await placementRows()),
	...(await cableRows()),
	...(await circuitRows()),
	...(await duskRows()),
	...(await lightRows()),
	...nightRows(),
	...kitsRows(),
	...shelfRows(),
	...lessonRows()
];
if (process.argv.includes('--json')) console.log(JSON.stringify(all, null, '\t'));
else for (const row of all) console.log(`${row.name.padEnd(24)} ${row.value.toPrecision(4).padStart(12)} ${row.unit}`);
