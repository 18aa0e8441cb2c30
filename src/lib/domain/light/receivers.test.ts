/**
 * One case for each kind of receiver, worked by hand; the arithmetic is in the comments.
 *
 * All lamps count at 0.9 × 0.9 = 0.81 of their lumens (rule light.maintained). A shaded head of 150 lm with a 120° beam is
 * I0·cos γ up to 80°: I0 = Φ/(π(1 − cos² 80°)) = 121.5/(π × 0.969846) = 39.877 cd, and on the ground, h below it and a aside,
 * E = I0·h²/(h² + a²)². A wash of 100 lm with a 60° beam has n = ln 0.5/ln cos 30° = 4.81884 and on its axis
 * I0 = 81 × 5.81884/2π = 75.014 cd.
 */
import { describe, expect, it } from 'vitest';
import { showWorking } from '../shared/show-working';
import { fixtureOf, lightOf, receiverIn, seatOf, siteWith, stripOf, treeOf, wallOf } from './small.testing';

const path = (x: number, y: number, target?: Parameters<typeof fixtureOf>[0]['target']) =>
	fixtureOf({ body: 'path', at: { x, y }, height: 0.5, target });
const wash = (at: { x: number; y: number }, height: number, aim: { x: number; y: number; z: number }) =>
	fixtureOf({ body: 'wash', at, height, lumens: 100, aim });

describe('worked by hand', () => {
	it('a walk 0.9 m wide: one row, lanes 0.1, 0.4 and 0.7 m from the lamp', () => {
		const { receivers } = lightOf(siteWith({ strips: [stripOf('walk', 5, 0.9, 0.5)] }), [path(5.4, 0.25)]);
		const walk = receiverIn(receivers, 'walk');
		// 39.877 × 0.25 ÷ 0.26² = 147.47; ÷ 0.41² = 59.31; ÷ 0.74² = 18.21. Mean 74.99, over the least 4.119.
		expect(walk.points).toBe(3);
		expect(walk.most).toBeCloseTo(147.47, 1);
		expect(walk.least).toBeCloseTo(18.21, 2);
		expect(walk.average).toBeCloseTo(74.99, 1);
		expect(walk.evenness).toBeCloseTo(4.119, 3);
		expect(walk).toMatchObject({ name: 'the walk', verdict: 'right', aim: { low: 5, evenness: 5 } });
	});
	it('a drive 3 m wide: lanes 0.85, 1.85 and 2.85 m from a low head, the last beyond its rim', () => {
		const lamp = fixtureOf({ body: 'marker', at: { x: 6.85, y: 0.5 }, height: 0.4, lumens: 110 });
		const drive = receiverIn(lightOf(siteWith({ strips: [stripOf('drive', 5, 3, 1)] }), [lamp]).receivers, 'drive');
		// I0 = 110 × 0.81 ÷ 3.04686 = 29.243. × 0.16 ÷ 0.8825² = 6.008; ÷ 3.5825² = 0.3646; 0.4·tan 80° = 2.27 < 2.85: none.
		expect(drive.most).toBeCloseTo(6.008, 3);
		expect(drive.average).toBeCloseTo((6.008 + 0.3646) / 3, 3);
		expect(drive).toMatchObject({ least: 0, evenness: null, verdict: 'no-aim', aim: null });
	});
	it('two treads: the lamp beside the upper one hangs 0.15 m higher over the lower one', () => {
		const steps = [{ id: 'flight', start: 0.2, end: 1, treads: 2 }];
		const strip = stripOf('walk', 5, 0.9, 1.2, { steps });
		// From the street (y = 1.2): lower tread y = 0.8, upper y = 0.4.
		const lamp = path(5.55, 0.4, { kind: 'steps', id: 'flight' });
		const flight = receiverIn(lightOf(siteWith({ strips: [strip], street: 1.2 }), [lamp]).receivers, 'steps');
		// Upper, lanes 0.25, 0.55, 0.85 m off: 0.25 ÷ 0.3125², ÷ 0.5525², ÷ 0.9725² = 2.5600, 0.8190, 0.2643: mean 1.2144 → 48.43 lx.
		// Lower, h = 0.65 and 0.4 m along: 0.4225 ÷ 0.645², ÷ 0.885², ÷ 1.305² = 1.0156, 0.5394, 0.2481: mean 0.6010 → 23.97 lx.
		expect(flight.most).toBeCloseTo(48.43, 2);
		expect(flight.least).toBeCloseTo(23.97, 2);
		expect(flight.average).toBeCloseTo(36.2, 2);
		expect(flight).toMatchObject({ points: 2, verdict: 'right', aim: { low: 11 } });
	});
	it('a flight with one tread darker than is wanted falls short, whatever the average; the walk is judged without its flight', () => {
		const steps = [{ id: 'flight', start: 1, end: 2, treads: 4 }];
		const strip = stripOf('walk', 5, 0.9, 6, { steps });
		// One lamp beside the lowest tread and one light a long way off.
		const { receivers } = lightOf(siteWith({ strips: [strip], street: 6 }), [
			path(5.55, 4.875, { kind: 'steps', id: 'flight' }),
			path(5.55, 0.25)
		]);
		const flight = receiverIn(receivers, 'flight');
		expect(flight.average).toBeGreaterThan(11);
		expect(flight.least).toBeLessThan(11);
		expect(flight).toMatchObject({ verdict: 'short', points: 4 });
		// 12 rows of three, but for the two at 1.25 and 1.75 m.
		expect(receiverIn(receivers, 'walk').points).toBe(30);
	});
	it('the sensor by the way its window looks', () => {
		// A wash 1 m before it at its own height: 75.014 ÷ 1 = 75.01 lx out of the wall, cos 60° of that turned by 60°, none from behind.
		const lamp = wash({ x: 5, y: 1.5 }, 1.5, { x: 5, y: 0, z: 1.5 });
		const facing = (faces: number): number => {
			const sensor = { at: { x: 5, y: 0.5 }, height: 1.5, view: { faces } };
			return receiverIn(lightOf(siteWith({ street: 9, faces: 70 }), [lamp], sensor).receivers, 'sensor').most;
		};
		expect(facing(70)).toBeCloseTo(75.01, 1);
		expect(facing(130)).toBeCloseTo(75.01 / 2, 1);
		expect(facing(250)).toBe(0);
	});
	it('a place to sit with one point, 1 m from a lamp', () => {
		const { receivers } = lightOf(siteWith({ areas: [seatOf({ x: 5, y: 0.5 }, 0.2)] }), [path(6, 0.5)]);
		// 39.877 × 0.25 ÷ 1.25² = 6.380.
		expect(receiverIn(receivers, 'seating').average).toBeCloseTo(6.38, 3);
	});
	it('a wall of two cells, the lamp 1 m in front of the first', () => {
		const site = siteWith({ walls: [wallOf(0, 0.5, 0.28)] });
		const lamp = wash({ x: 0.125, y: 1 }, 0.14, { x: 0.125, y: 0, z: 0.14 });
		const wall = receiverIn(lightOf(site, [lamp]).receivers, 'wall');
		// 75.014 ÷ 1; and 0.25 m along: cos = 1 ÷ √1.0625, 75.014 × cos^5.81884 ÷ 1.0625 = 59.18. Mean 67.10.
		expect(wall.most).toBeCloseTo(75.01, 1);
		expect(wall.least).toBeCloseTo(59.18, 1);
		expect(wall.average).toBeCloseTo(67.1, 1);
		expect(wall).toMatchObject({ points: 2, verdict: 'too-bright', aim: { low: 5, high: 20, rule: 'wall.level' } });
	});
	it('openings are left out of a wall, and a gable is taken in up to its slope', () => {
		const openings = [{ id: 'door', kind: 'door' as const, start: 0, end: 0.9, sill: 0, head: 0.9 }];
		const lamp = wash({ x: 1, y: 1 }, 0.15, { x: 1, y: 0, z: 1 });
		const pointsOf = (more: object) =>
			receiverIn(lightOf(siteWith({ walls: [wallOf(0, 1.96, 1.12, more)] }), [lamp]).receivers, 'wall').points;
		// 7 × 4 cells of 0.28 m; the door takes 3 × 3.
		expect(pointsOf({})).toBe(28);
		expect(pointsOf({ openings })).toBe(19);
		// Tops at the columns 1.28, 1.60, 1.92, 2.24, 1.92, 1.60, 1.28 m; middles of rows at 0.14 + 0.28k below them: 5, 6, 7, 8, 7, 6, 5.
		expect(pointsOf({ peak: 2.24 })).toBe(44);
	});
	it('the boundary, and windows 1 m beyond it on two floors', () => {
		const lamp = wash({ x: 2, y: 0.5 }, 1.5, { x: 0, y: 0.5, z: 1.5 });
		const { receivers, findings } = lightOf(siteWith({}), [lamp]);
		// 2 m off: 75.014 ÷ 4 = 18.75.
		const edge = receiverIn(receivers, 'boundary/left');
		expect(edge).toMatchObject({ points: 1, verdict: 'spills', aim: { high: 2, rule: 'spill.boundary' } });
		expect(edge.average).toBeCloseTo(18.75, 2);
		// 3 m off: 75.014 ÷ 9 = 8.335; 2.7 m higher: cos = 3 ÷ √16.29, 75.014 × cos^5.81884 ÷ 16.29 = 0.819. Mean 4.577.
		const pane = receiverIn(receivers, 'window/left');
		expect(pane.points).toBe(2);
		expect(pane.most).toBeCloseTo(8.335, 2);
		expect(pane.least).toBeCloseTo(0.819, 3);
		// Behind the lamp nothing.
		expect(receiverIn(receivers, 'window/right')).toMatchObject({ most: 0, verdict: 'right' });
		// One finding for the two; the one about the street is its own.
		const said = findings.filter(({ code, message }) => code === 'light.spills' && message.includes('left'));
		expect(said).toMatchObject([{ rank: 'look', about: { kind: 'lot' } }]);
	});
	it('the crown of a tree, a lamp straight below: a quarter of the light square to the beam', () => {
		const site = siteWith({ trees: [treeOf()] });
		const { receivers, upward } = lightOf(site, [wash({ x: 5, y: 0 }, 0, { x: 5, y: 0, z: 5 })]);
		// Half-way up, 2 m high and 1 m out: cos = 2 ÷ √5, I = 75.014 × cos^4.81884 = 43.82; ÷ (4 × 5) = 2.191.
		const middle = receiverIn(receivers, 'tree/middle');
		expect(middle.average).toBeCloseTo(2.191, 3);
		expect(middle.least).toBeCloseTo(middle.most, 9);
		expect(upward).toMatchObject({ share: 1, lumens: 81 });
	});
	it('the sensor 1 m below a porch light and 1 m out from it; dusk says what comes of that, not this', () => {
		const porch = {
			id: 'porch',
			name: 'lantern',
			kind: 'porch-light' as const,
			at: { x: 5, y: 0.5 },
			height: 2.5,
			reach: 3
		};
		const sensor = { at: { x: 5, y: 1.5 }, height: 1.5, view: { faces: 180 } };
		const { receivers, findings } = lightOf(
			siteWith({ faces: 0, street: 9, existing: [porch] }),
			[path(9, 0.5)],
			sensor
		);
		// 1 lx at the edge: I = (9 + 6.25)^1.5 ÷ 2.5 = 23.82 cd; 1.414 m off at 45°: 23.82 × 0.7071 ÷ 2.
		const found = receiverIn(receivers, 'sensor');
		expect(found.average).toBeCloseTo(8.42, 2);
		expect(found).toMatchObject({ verdict: 'right', fromPlan: { average: 0, most: 0 } });
		const close = { ...sensor, at: { x: 5, y: 0.8 }, height: 2.5 };
		const bright = lightOf(siteWith({ faces: 0, street: 9, existing: [porch] }), [path(9, 0.5)], close);
		expect(receiverIn(bright.receivers, 'sensor').verdict).toBe('too-bright');
		expect([...findings, ...bright.findings].filter(({ about }) => about?.kind === 'power')).toEqual([]);
	});
});

describe('what is said', () => {
	it('the working of each average gives the average', () => {
		const site = siteWith({ strips: [stripOf('walk', 5, 0.9, 6)], trees: [treeOf()], walls: [wallOf(1, 4, 2)] });
		for (const { average, working } of lightOf(site, [path(5.6, 0.3), path(5.6, 3)]).receivers) {
			expect(showWorking(working!).holds, working!.label).toBe(true);
			expect(working!.value).toBeCloseTo(average, 1);
		}
	});
	it('a dim and an uneven walk are notes in honest words, a walk without lights by choice is none', () => {
		const long = stripOf('walk', 5, 1.2, 12);
		const saidOf = (strip: typeof long, fixtures: ReturnType<typeof path>[]) =>
			lightOf(siteWith({ strips: [strip], street: 12 }), fixtures).findings.filter(({ about }) => about?.id === 'walk');
		expect(saidOf(long, [path(5.8, 6)])).toMatchObject([{ code: 'light.short', rank: 'note', rule: 'path.level' }]);
		const even = [0.5, 3, 5.5, 8, 10.5].flatMap((y) => [path(4.2, y), path(5.8, y)]);
		expect(saidOf(long, even.slice(0, 6))).toMatchObject([{ code: 'light.patchy', rank: 'note' }]);
		expect(saidOf({ ...long, lights: 'none' }, [path(5.8, 6)])).toEqual([]);
	});
	it('nothing is said of a yard without a lamp of the plan', () => {
		expect(lightOf(siteWith({ strips: [stripOf('walk', 5, 1, 9)] }), [])).toEqual({
			receivers: [],
			glare: [],
			upward: { lumens: 0, share: 0, skyShare: 0 },
			findings: [],
			assumptions: []
		});
	});
});
