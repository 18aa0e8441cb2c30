/** Eleven invented yards that are hard to light: each has a drawing here that was looked at, and holds until it is looked at again. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../../domain/plan';
import { readYard, writeYard } from '../../domain/yard';
import { drawPlan } from '../draw-plan';
import { svgOf } from '../svg.testing';

const folder = new URL('../../domain/yard/awkward/', import.meta.url);
const ids = readdirSync(folder)
	.filter((name) => name.endsWith('.json'))
	.map((name) => name.replace('.json', ''));

test('there are eleven', () => expect(ids).toHaveLength(11));

describe.each(ids)('%s', (id) => {
	const text = readFileSync(new URL(`${id}.json`, folder), 'utf8');
	const read = readYard(text);
	if (!read.ok) throw new Error(`${id}: ${read.problems.join('; ')}`);
	const plan = makePlan(read.yard);

	test('is written as the program writes it, and leaves nothing open and nothing impossible', () => {
		expect(JSON.stringify(JSON.parse(text))).toBe(JSON.stringify(JSON.parse(writeYard(read.yard))));
		expect(plan.missing).toEqual([]);
		expect(plan.site.findings).toEqual([]);
		expect(plan.findings.filter((finding) => finding.rank === 'stop')).toEqual([]);
	});
	test('feeds every fixture', () => {
		const fed = plan.runs.flatMap((run) => run.nodes.flatMap((node) => node.fixture ?? []));
		expect(fed.sort()).toEqual(plan.fixtures.map((fixture) => fixture.id).sort());
		expect(plan.fixtures.length).toBeGreaterThan(5);
	});
	test('is drawn as it was when it was looked at', async () => {
		await expect(svgOf(plan)).toMatchFileSnapshot(`${id}.snapshot.svg`);
	});
	test.each([360, 1280])('every fixture is on the drawing with its label, at %i px', (widthPx) => {
		const marks = drawPlan(plan, { widthPx }).layers.flatMap((layer) => layer.marks);
		for (const { label, id: fixture } of plan.fixtures) {
			expect(marks.some((mark) => mark.key === `fixture-${fixture}`)).toBe(true);
			expect(marks.some((mark) => mark.kind === 'text' && mark.text === label)).toBe(true);
		}
	});
});
