/**
 * `npm run schema [-- --check]`: writes the JSON Schemas of a yard (from the zod schema) and of a plan (from its
 * TypeScript type) into static/; with --check only says whether they are up to date.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createGenerator } from 'ts-json-schema-generator';
import * as z from 'zod/mini';
import { yardSchema } from '../lib/domain/yard/schema';
import { pointWords, schemaWords, type SchemaWords } from '../lib/domain/yard/schema-words';

const root = join(import.meta.dirname, '..', '..');
interface Node {
	properties?: Record<string, Node>;
	items?: Node;
	anyOf?: Node[];
	oneOf?: Node[];
	[key: string]: unknown;
}
const said = new Set<string>();
const put = (node: Node, [title, description, unit]: SchemaWords): void => {
	Object.assign(node, { title, description, ...(unit && { unit }) });
};
/** Writes the words into the schema, each at its path; a point is known by its two properties. */
function withWords(node: Node, path: string): void {
	const own = schemaWords[path];
	if (own && !node.anyOf && !node.oneOf && node['const'] !== 'unsure') {
		put(node, own);
		said.add(path);
	}
	const isPoint = node.properties && 'along' in node.properties && 'out' in node.properties;
	for (const [key, child] of Object.entries(node.properties ?? {})) {
		if (isPoint && (key === 'along' || key === 'out')) put(child, pointWords[key]);
		else withWords(child, path === '' ? key : `${path}.${key}`);
	}
	if (node.items) withWords(node.items, `${path}.*`);
	for (const one of [...(node.anyOf ?? []), ...(node.oneOf ?? [])]) withWords(one, path);
}
const yard = z.toJSONSchema(yardSchema, { target: 'draft-7' }) as Node;
withWords(yard, '');
const unsaid = Object.keys(schemaWords).filter((path) => !said.has(path));
if (unsaid.length > 0) throw new Error(`schema-words.ts has words for what is not in the yard: ${unsaid.join(', ')}`);

const schemas: Record<string, unknown> = {
	'yard.schema.json': { title: 'Duskwright yard, version 1', ...yard },
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
