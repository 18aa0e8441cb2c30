/** Bare lamps in eyes, and light to the sky, on yards of one lamp. */
import { describe, expect, it } from 'vitest';
import { candelaToward, sourceFrame } from '../photometry';
import { placeFixtures } from '../placement';
import { makeSite } from '../site';
import { examples } from '../yard';
import { meetsCrown } from './crowns';
import { emitterOf } from './emitter';
import { isBlocked, shadowsOf } from './shadows';
import { fixtureOf, lightOf, seatOf, siteWith, stripOf, treeOf, wallOf } from './small.testing';
import { sourcesOf } from './sources';
import { upwardOf } from './upward';

const seats = siteWith({ areas: [seatOf({ x: 5, y: 0 }, 0.5)] });
const wash = (at: { x: number; y: number }, height: number, aim: { x: number; y: number; z: number }, lumens = 400) =>
	fixtureOf({ body: 'wash', at, height, lumens, aim });

describe('glare', () => {
	it('a beam aimed at seated eyes 3 m away, worked by hand', () => {
		// Eyes 1.2 m up, straight on the axis: I0 = 400 × 0.81 × 5.81884 ÷ 2π = 300.05 cd.
		const { glare, findings } = lightOf(seats, [wash({ x: 8, y: 0 }, 1.2, { x: 5, y: 0, z: 1.2 })]);
		expect(glare).toHaveLength(1);
		expect(glare[0]).toMatchObject({ bare: true, eye: { kind: 'seat', id: 'seat', at: { x: 5, y: 0, z: 1.2 } } });
		expect(glare[0]!.candela).toBeCloseTo(300.05, 1);
		expect(findings.find(({ code }) => code === 'light.glare')).toMatchObject({
			rank: 'note',
			about: { kind: 'seating', id: 'seat' },
			rule: 'glare.level'
		});
	});
	it('not from more than 45° off the beam, not beyond 20 m, not through a wall, not from a shaded head below the eye', () => {
		const none = (fixture: ReturnType<typeof wash>, site = seats) => lightOf(site, [fixture]).glare;
		expect(none(wash({ x: 8, y: 0 }, 1.2, { x: 5, y: 3.1, z: 1.2 }))).toEqual([]);
		expect(none(wash({ x: 8, y: 0 }, 1.2, { x: 5, y: 2.9, z: 1.2 }))).toHaveLength(1);
		expect(none(wash({ x: 25.5, y: 0 }, 1.2, { x: 5, y: 0, z: 1.2 }))).toEqual([]);
		const behind = siteWith({
			areas: seats.areas,
			walls: [wallOf(4, 9, 2, { from: { x: 6, y: -3 }, to: { x: 6, y: 3 } })]
		});
		expect(none(wash({ x: 8, y: 0 }, 1.2, { x: 5, y: 0, z: 1.2 }), behind)).toEqual([]);
		expect(none(fixtureOf({ body: 'path', at: { x: 5.8, y: 0 }, height: 0.5 }))).toEqual([]);
	});
	it('a shaded head above the eye is bare within its rim', () => {
		// 0.3 m above seated eyes and 1 m off: 73° from straight down, inside 80°. 39.877 × cos = 0.3 ÷ √1.09 = 11.46 cd.
		const { glare } = lightOf(seats, [fixtureOf({ body: 'path', at: { x: 6, y: 0 }, height: 1.5 })]);
		expect(glare[0]!.candela).toBeCloseTo(11.46, 2);
		expect(glare[0]!.remedy).toBe(null);
	});
	it('drivers look ahead, either way; people on a walk look about', () => {
		const aside = wash({ x: 10, y: 2 }, 1.1, { x: 5, y: 2, z: 1.1 });
		const [drive, walk] = (['drive', 'walk'] as const).map((kind) =>
			lightOf(siteWith({ strips: [stripOf(kind, 5, 2, 4)] }), [aside])
		);
		// 5 m aside, and the drive's ends 2 m on: 68° off the way at the least.
		expect(walk!.glare[0]!.eye.at.y).toBeCloseTo(2, 6);
		expect(drive!.glare).toHaveLength(0);
		const ahead = lightOf(siteWith({ strips: [stripOf('drive', 5, 2, 6)] }), [
			wash({ x: 5, y: 9 }, 1.1, { x: 5, y: 0, z: 1.1 })
		]);
		expect(ahead.findings.find(({ code }) => code === 'light.glare')).toMatchObject({ rank: 'look' });
	});
	it('from a window only what stands before its wall', () => {
		const openings = [{ id: 'pane', kind: 'window' as const, start: 1, end: 2, sill: 0.9, head: 2 }];
		const site = siteWith({ walls: [wallOf(0, 3, 3, { of: 'house', openings })] });
		const seen = (y: number) => lightOf(site, [wash({ x: 1.5, y }, 1.5, { x: 1.5, y: 0, z: 1.5 })]).glare;
		expect(seen(4)).toMatchObject([{ eye: { kind: 'window', id: 'pane', at: { x: 1.5, z: 1.5 } } }]);
		expect(seen(-4)).toEqual([]);
	});
});

describe('light above the horizontal', () => {
	it('none from a shaded head, all from one aimed straight up, half from one laid level', () => {
		const of = (fixture: ReturnType<typeof wash>) => lightOf(siteWith({}), [fixture]).upward;
		const head = fixtureOf({ body: 'path', at: { x: 5, y: 0 }, height: 0.5 });
		expect(of(head)).toEqual({ lumens: 0, share: 0, skyShare: 0 });
		expect(of(wash({ x: 5, y: 0 }, 0.1, { x: 5, y: 0, z: 9 }))).toMatchObject({ share: 1, skyShare: 1 });
		expect(of(wash({ x: 5, y: 0 }, 0.1, { x: 9, y: 0, z: 0.1 })).share).toBeCloseTo(0.5, 9);
	});
	it('a crown that fills the beam catches it, one out of its way does not', () => {
		const up = wash({ x: 5, y: 0 }, 0, { x: 5, y: 0, z: 9 });
		const of = (tree: ReturnType<typeof treeOf>) => lightOf(siteWith({ trees: [tree] }), [up]).upward.skyShare;
		// From 1 m below a crown 20 m wide hardly anything passes; one 20 m away catches nothing.
		expect(of(treeOf({ spread: 40, height: 5 }))).toBeLessThan(0.02);
		expect(of(treeOf({ at: { x: 40, y: 0 } }))).toBe(1);
	});
	it.each(examples.map(({ id, yard }) => [id, yard] as const))(
		'%s: 120 rays a lamp against 20,000 directions each weighed with its candela',
		(_, yard) => {
			const site = makeSite(yard);
			const sources = sourcesOf({ ...site, existing: [] }, placeFixtures(site, yard).fixtures, []);
			const shadows = shadowsOf(site);
			const rays = 20_000;
			let [all, up, sky] = [0, 0, 0];
			for (const { at, axis, photometry, lumens } of sources) {
				const frame = sourceFrame(axis);
				for (let k = 0; k < rays; k++) {
					const z = 1 - (2 * (k + 0.5)) / rays;
					const angle = k * Math.PI * (3 - Math.sqrt(5));
					const flat = Math.sqrt(1 - z * z);
					const way = { x: flat * Math.cos(angle), y: flat * Math.sin(angle), z };
					const part = (lumens / photometry.lumens) * candelaToward(photometry, frame, way) * ((4 * Math.PI) / rays);
					all += part;
					if (way.z <= 0 || part === 0) continue;
					up += part;
					const far = { x: at.x + 500 * way.x, y: at.y + 500 * way.y, z: at.z + 500 * way.z };
					if (meetsCrown(site.trees, at, way)) continue;
					if (!isBlocked(shadows, at.x, at.y, at.z, far.x, far.y, far.z)) sky += part;
				}
			}
			const own = upwardOf(sources.map(emitterOf), site, shadows);
			expect(all).toBeCloseTo(
				sources.reduce((sum, { lumens }) => sum + lumens, 0),
				-1
			);
			expect(Math.abs(own.share - up / all)).toBeLessThan(0.02);
			expect(Math.abs(own.skyShare - sky / all)).toBeLessThan(0.02);
		}
	);
});
