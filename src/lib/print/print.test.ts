import * as fc from 'fast-check';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { routeCards } from '../domain/checklist';
import { makePlan } from '../domain/plan';
import { formatLength } from '../domain/shared/units';
import { blankYard, examples } from '../domain/yard';
import { frameOf } from '../drawing';
import { verdictWords } from '../drawing/night-strip';
import { spotWords } from '../drawing/sky-view';
import { showWorking } from '../working';
import { grouped } from './grouped';
import { dazzling, isSpill, litRows, mapOf, mapOnPaper, whenNew } from './after-dark';
import Packet from './Packet.svelte';
import { planOnPaper } from './plan-on-paper';
import { fitRoute } from './route-on-paper';
import { detailPlan, fitPlan, papers, roomOn, scales } from './scale';
import { scheduleOf } from './schedule';
import { aimOf, money, planCode, wayOf } from './words';

describe('the scale', () => {
	// Arithmetic of the architect's scale: n inches to the foot is 1 to 12/n.
	test.each([
		['1/4', 48],
		['3/16', 64],
		['1/8', 96],
		['3/32', 128],
		['1/16', 192],
		['1/32', 384]
	])('%s in to the foot is 1:%i', (text, ratio) => {
		const [a, b] = text.split('/').map(Number);
		expect(12 / (a! / b!)).toBe(ratio);
		expect(scales.feet.find((scale) => scale.text === `${text} in = 1 ft`)?.ratio).toBe(ratio);
	});
	test('paper sizes: ISO 216 A4, and Letter of 8.5 by 11 inches', () => {
		expect(papers.a4).toMatchObject({ width: 210, height: 297 });
		expect(papers.letter.width / 25.4).toBeCloseTo(8.5, 9);
		expect(papers.letter.height / 25.4).toBeCloseTo(11, 9);
	});
	test('the largest that fits is taken; nothing is shrunk; parts cover all', () => {
		const side = fc.double({ min: 2, max: 900, noNaN: true });
		fc.assert(
			fc.property(
				side,
				side,
				fc.constantFrom('letter', 'a4'),
				fc.constantFrom('feet', 'metres'),
				(width, height, paper, units) => {
					const box = { minX: -3, minY: -7, maxX: width - 3, maxY: height - 7 };
					const fit = fitPlan(box, paper, units);
					const room = roomOn(paper, fit.orientation);
					for (const part of fit.parts) {
						expect(part.width).toBeLessThanOrEqual(room.width + 1e-9);
						expect(part.height).toBeLessThanOrEqual(room.height + 1e-9);
						expect(part.width * fit.scale.ratio).toBeCloseTo((part.box.maxX - part.box.minX) * 1000, 6);
					}
					expect(Math.max(...fit.parts.map((part) => part.box.maxX))).toBeCloseTo(box.maxX, 9);
					expect(Math.max(...fit.parts.map((part) => part.box.maxY))).toBeCloseTo(box.maxY, 9);
					for (const larger of scales[units].filter(({ ratio }) => ratio < fit.scale.ratio))
						for (const orientation of ['portrait', 'landscape'] as const) {
							const page = roomOn(paper, orientation);
							expect((width * 1000) / larger.ratio <= page.width && (height * 1000) / larger.ratio <= page.height).toBe(
								false
							);
						}
				}
			),
			{ numRuns: process.env.LONG ? 20000 : 400 }
		);
	});
});

describe('the drawing of a route', () => {
	test('is to scale and fits the sheet', () => {
		const side = fc.double({ min: 2, max: 150, noNaN: true });
		fc.assert(
			fc.property(
				side,
				side,
				fc.constantFrom('letter', 'a4'),
				fc.constantFrom('feet', 'metres'),
				(width, height, paper, units) => {
					const fit = fitRoute({ minX: 1, minY: -2, maxX: width + 1, maxY: height - 2 }, paper, units);
					const room = roomOn(paper, 'portrait');
					expect(fit.width).toBeLessThanOrEqual(room.width + 1e-9);
					expect(fit.height).toBeLessThanOrEqual(room.height + 1e-9);
					expect(fit.width * fit.scale.ratio).toBeCloseTo(width * 1000, 6);
					const inches = /^1 in = (\d+) ft$/.exec(fit.scale.text);
					if (inches) expect(fit.scale.ratio).toBe(Number(inches[1]) * 12);
				}
			),
			{ numRuns: process.env.LONG ? 5000 : 300, seed: 2 }
		);
	});
});

describe('a crowded plan', () => {
	test('comes again, larger, in parts that leave no fixture out', () => {
		const plan = makePlan(examples.find(({ id }) => id === 'rural')!.yard);
		const box = frameOf(plan, true);
		const at = plan.fixtures.map((fixture) => fixture.at);
		const fit = fitPlan(box, 'letter', 'metres');
		const detail = detailPlan(box, at, { ...fit, scale: { ratio: 500, text: '' } }, 'letter', 'metres')!;
		expect(detail.scale.ratio).toBe(250);
		for (const { x, y } of at)
			expect(detail.parts.some(({ box }) => x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY)).toBe(
				true
			);
		expect(detailPlan(box, at, { ...fit, scale: { ratio: 250, text: '' } }, 'letter', 'metres')).toBeNull();
	});
});

describe('the fixture schedule', () => {
	test.each(examples.map(({ id }) => id))('%s: says every reason of every fixture', (id) => {
		const plan = makePlan(examples.find((example) => example.id === id)!.yard);
		const { groups, everywhere } = scheduleOf(plan);
		expect(groups.flatMap(({ rows }) => rows.map(({ fixture }) => fixture.id))).toEqual(
			plan.fixtures.map(({ id }) => id)
		);
		for (const { rows, shared } of groups)
			for (const { fixture, own } of rows)
				expect([...own, ...shared, ...everywhere].toSorted()).toEqual(
					[...new Set(fixture.reasons.map((reason) => reason.because))].toSorted()
				);
	});
});

describe('the map after dark on paper', () => {
	const plans = examples.map(({ id, yard }) => [id, makePlan(yard)] as const);
	test.each(plans)('%s: true in shape, room for words beside it', (_, plan) => {
		const { box, width, height } = mapOnPaper(plan);
		for (const paper of ['letter', 'a4'] as const) {
			const room = roomOn(paper, 'portrait');
			expect(width).toBeLessThanOrEqual(room.width - 60);
			expect(height).toBeLessThan(room.height / 1.5);
		}
		expect(width / height).toBeCloseTo((box.maxX - box.minX) / (box.maxY - box.minY), 9);
		// Cells reach past every edge, so that lines run out to it.
		const map = mapOf(plan, box);
		expect(map.x).toBeLessThanOrEqual(box.minX);
		expect(map.x + (map.columns - 1) * map.step).toBeGreaterThanOrEqual(box.maxX);
		expect(map.y).toBeLessThanOrEqual(box.minY);
		expect(map.y + (map.rows - 1) * map.step).toBeGreaterThanOrEqual(box.maxY);
	});
	// 90 % for age and 90 % of that for dirt: 1 ÷ 0.81.
	test('new lamps give 1.23 times as much', () => expect(whenNew).toBeCloseTo(1.2346, 4));
});

describe('words', () => {
	test('aims are told as seen from the street', () => {
		expect(wayOf(205, 205)).toBe('the street');
		expect(wayOf(25, 205)).toBe('the house');
		expect(wayOf(295, 205)).toBe('left');
		expect(wayOf(115, 205)).toBe('right');
		expect(aimOf({ aim: { bearing: 25, tilt: 20, point: { x: 0, y: 0, z: 0 } } }, 205)).toBe(
			'20° from upright, towards the house'
		);
		expect(aimOf({ aim: null }, 0)).toBe('');
	});
	test('money', () => {
		expect(money(12.5, '$')).toBe('$12.50');
		expect(money(12.5, 'EUR')).toBe('12.50 EUR');
	});
	test('the code changes with the answers and only with them', () => {
		const yard = examples[0]!.yard;
		expect(planCode(yard)).toBe(planCode(structuredClone(yard)));
		expect(planCode(yard)).not.toBe(planCode({ ...yard, name: 'Another' }));
	});
});

describe.each([...examples.map(({ id, yard }) => [id, yard] as const), ['blank', blankYard()] as const])(
	'the packet of %s',
	(_, yard) => {
		const plan = makePlan(yard);
		const html = render(Packet, {
			props: { plan, yard, paper: 'a4', onDate: '25 November 2026', program: '1.2.3' }
		}).body;
		const text = html
			.replace(/<style.*?<\/style>/gs, '')
			.replace(/<[^>]*>/g, ' ')
			.replace(/\s+/g, ' ');

		test('holds no broken value', () => {
			expect(text).not.toMatch(/\bNaN\b|undefined|\[object|Infinity/);
			expect(html).not.toMatch(/(width|height|viewBox|d)="[^"]*NaN/);
		});
		test('says every finding once, stops first', () => {
			const plain = (s: string) => s.replace(/\s+/g, ' ').replaceAll('&', '&amp;').replaceAll('<', '&lt;');
			const said = (rank: string) => grouped(plan.findings.filter((finding) => finding.rank === rank));
			const places = (rank: string) => said(rank).map((message) => text.indexOf(plain(message)));
			const [stops, looks, notes] = ['stop', 'look', 'note'].map(places);
			expect([...stops!, ...looks!, ...notes!].every((place) => place >= 0)).toBe(true);
			expect(Math.max(-1, ...stops!)).toBeLessThan(Math.min(Infinity, ...looks!, ...notes!));
			expect(Math.max(-1, ...looks!)).toBeLessThan(Math.min(Infinity, ...notes!));
		});
		test('has every step with its cautions and what it defers to', () => {
			const plain = (s: string) => s.replace(/\s+/g, ' ').replaceAll('&', '&amp;').replaceAll('<', '&lt;');
			for (const step of plan.checklist.parts.flatMap((part) => part.steps)) {
				const at = text.indexOf(plain(step.text));
				expect(at, step.text).toBeGreaterThan(-1);
				for (const beside of [...step.cautions, ...step.defers])
					expect(text.indexOf(plain(beside), at), beside).toBeGreaterThan(at);
			}
		});
		test('states the scale it is drawn to', () => {
			const { fit } = planOnPaper(plan, 'a4');
			expect(text).toContain(`Scale ${fit.scale.text}`);
			expect(html).toContain(`width="${fit.parts[0]!.width.toFixed(2)}mm"`);
		});
		test('has every stretch of every route card, and every piece of the cut list, each in a row', () => {
			const rows = html.split(/<\/tr>/).map((row) => row.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' '));
			const units = plan.site.units;
			const cards = routeCards(plan.site, plan.fixtures, plan.runs, plan.supply);
			for (const leg of cards.flatMap((card) => card.lines.flatMap((line) => line.legs))) {
				const ends = `${leg.from.label} → ${leg.to.label}`;
				const said = [ends, leg.way, ` ${formatLength(leg.length, units)} `];
				expect(
					rows.some((row) => said.every((part) => row.includes(part))),
					said.join('|')
				).toBe(true);
			}
			for (const { what, length } of plan.shopping.rolls.flatMap(({ cuts }) => cuts))
				expect(rows.some((row) => row.includes(what) && row.includes(formatLength(length, units)))).toBe(true);
		});
		test('after dark: what is not right is in the table, and everyone dazzled is told', () => {
			const at = html.indexOf('id="sheet-after-dark"');
			expect(at).toBeGreaterThan(html.indexOf('id="sheet-first-night"'));
			const sheet = html.slice(at, html.indexOf('id="sheet-hours"'));
			if (plan.fixtures.length === 0) return expect(sheet).toContain('Nothing is lit yet.');
			const { rows } = litRows(plan);
			const wrong = plan.light.receivers.filter(
				(one) => !isSpill(one) && one.kind !== 'crown' && !['right', 'no-aim'].includes(one.verdict)
			);
			for (const one of wrong) expect(rows).toContain(one);
			expect(sheet.split('<tr>').length - 2).toBe(rows.length);
			const { list } = dazzling(plan);
			for (const { remedy } of list) expect(text).toContain(remedy!.replaceAll('&', '&amp;'));
			const { width, height } = mapOnPaper(plan);
			expect(sheet).toContain(`width="${width.toFixed(2)}mm" height="${height.toFixed(2)}mm"`);
			expect(sheet).toMatch(/class="[^"]*fill-lux-5/);
		});
		test('hours and sensor: the year, its cost and how it comes about, where the sensor hangs and how early it is', () => {
			const at = html.indexOf('id="sheet-hours"');
			expect(at).toBeGreaterThan(html.indexOf('id="sheet-after-dark"'));
			const sheet = html.slice(at, html.indexOf('id="sheet-upkeep"'));
			const said = sheet.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
			const { dusk, site } = plan;
			expect(said).toContain(`${Math.round(dusk.hoursPerYear)} hours in ${dusk.year}`);
			expect(said).toContain(money(dusk.cost, dusk.currency));
			expect(said).toContain(showWorking(dusk.working.energy, site.units).line);
			expect(said).toContain(showWorking(dusk.working.cost, site.units).line);
			expect(said).toContain('If it blinks, or the lights stay off');
			if (!dusk.sensor) return expect(said).toContain('The sensor has no place yet');
			const { at: place, on, height, view } = dusk.sensor;
			expect(said).toContain(spotWords({ at: place, on, height, faces: view.faces }, site.units));
			expect(said).toContain(verdictWords(view));
			const rows = sheet.split('</tr>').map((row) =>
				row
					.replace(/<[^>]*>/g, ' ')
					.replace(/\s+/g, ' ')
					.trim()
			);
			const early = view.months.map((month) => String(Math.round(month.early!)));
			expect(rows).toContain(['On, minutes early', ...early].join(' '));
		});
		test('has a row for every fixture in the schedule, the stakes and the first night', () => {
			const rows = (label: string) => html.split(/<\/tr>/).filter((row) => new RegExp(`> ${label}<`).test(row)).length;
			for (const fixture of plan.fixtures) expect(rows(fixture.label)).toBeGreaterThanOrEqual(3);
		});
	}
);
