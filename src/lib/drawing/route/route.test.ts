import { describe, expect, test } from 'vitest';
import { routeCards } from '../../domain/checklist';
import { makePlan } from '../../domain/plan';
import { examples } from '../../domain/yard';
import { randomYard } from '../../domain/yard/random.testing';
import { drawRoute, routeFrame } from '.';

const plans = [
	...examples.map(({ id, yard }) => [id, makePlan(yard)] as const),
	...Array.from(
		{ length: process.env.LONG ? 200 : 5 },
		(_, i) => [`seed ${i + 1}`, makePlan(randomYard(i + 1))] as const
	)
];
describe.each(plans)('the routes of %s', (_, plan) => {
	const cards = routeCards(plan.site, plan.fixtures, plan.runs, plan.supply);
	for (const card of cards)
		test(`${card.name}: every point is on the sheet and named once, every stretch drawn, each mark its own key`, () => {
			const box = routeFrame(card);
			const { layers } = drawRoute(plan, card, { widthPx: 480, box });
			const marks = layers.flatMap((layer) => layer.marks);
			for (const { at, label } of card.points) {
				expect(at.x > box.minX && at.x < box.maxX && at.y > box.minY && at.y < box.maxY, label).toBe(true);
				const names = marks.filter((mark) => mark.kind === 'text' && mark.key === `point-${label}`);
				expect(names, label).toHaveLength(1);
				expect(names[0], label).toMatchObject({ text: label });
			}
			const legs = card.lines.flatMap((line) => line.legs);
			expect(marks.filter(({ key }) => key.startsWith('leg-'))).toHaveLength(legs.length);
			for (const layer of layers) expect(new Set(layer.marks.map(({ key }) => key)).size).toBe(layer.marks.length);
			expect(JSON.stringify(marks)).not.toMatch(/NaN|undefined|Infinity|null/);
		});
	test('letters are marked where the card has them', () => {
		for (const card of cards) {
			const { layers } = drawRoute(plan, card, { widthPx: 480, box: routeFrame(card) });
			const dots = layers.flatMap((layer) => layer.marks).filter(({ key }) => key.startsWith('dot-'));
			const wanted = card.points.filter(({ kind, branches }) => branches || !['light', 'transformer'].includes(kind));
			expect(dots.map(({ key }) => key)).toEqual(wanted.map(({ label }) => `dot-${label}`));
		}
	});
});
