/**
 * `npm run schema [-- --check]`: writes the JSON Schemas of a yard (from the zod schema) and of a plan (from its
 * TypeScript type) into static/; with --check only says whether they are up to date.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createGenerator } from 'ts-json-schema-generator';
import * as z from 'zod/mini';
import { yardSchema } from '../lib/domain/yard/schema';

const root = join(import.meta.dirname, '..', '..');
const schemas: Record<string, unknown> = {
	'yard.schema.json': { title: 'Duskwright yard, version 1', ...z.toJSONSchema(yardSchema, { target: 'draft-7' }) },
	'plan.schema.json': {
		title: 'Duskwright plan, version 1',
		...createGenerator({
			path: join(root, 'src/lib/domain/plan.ts'),
			tsconfig: join(root, 'tsconfig.json'),
			type: 'Plan',
			skipTypeCheck: true,
			additionalProperties: false
		}).createSchema('Plan')
	}
};
let stale = 0;
for (const [name, schema] of Object.entries(schemas)) {
	const path = join(root, 'static', name);
	const text = `${JSON.stringify(schema, null, '\t')}\n`;
	if (process.argv.includes('--check')) {
		if (existsSync(path) && readFileSync(path, 'utf8') === text) continue;
		console.error(`static/${name} is not what the code says. Run: npm run schema`);
		stale += 1;
	} else writeFileSync(path, text);
}
if (stale > 0) process.exit(1);
