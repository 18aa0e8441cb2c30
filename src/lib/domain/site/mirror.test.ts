import { expect, test } from 'vitest';
import { polygonArea, type Point } from '../shared/geometry';
import { examples, outlines, type Yard } from '../yard';
import { mirrored } from '../yard/mirror.testing';
import { randomYard } from '../yard/random.testing';
import { makeSite, type Site } from '.';

const round = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;
/** What must come out the same from both sides of the mirror. */
function shape(site: Site, flip: (p: Point) => Point, sign: 1 | -1): unknown {
	const place = (p: Point): string => {
		const { x, y } = flip(p);
		return `${round(x)} ${round(y)}`;
	};
	const [left, right] = sign === 1 ? (['left', 'right'] as const) : (['right', 'left'] as const);
	const side = (of: string): string => (of === 'left' ? left : of === 'right' ? right : of);
	return {
		house: round(polygonArea(site.house)),
		corners: site.house.map(place).sort(),
		walls: site.walls
			.map((wall) => {
				const ends = sign === 1 ? [wall.from, wall.to] : [wall.to, wall.from];
				const openings = wall.openings.map((o) =>
					(sign === 1 ? [o.start, o.end] : [wall.length - o.end, wall.length - o.start]).map(round)
				);
				const looks = { x: wall.outward.x * sign, y: wall.outward.y };
				return JSON.stringify([
					ends.map(place),
					round(wall.height),
					wall.light,
					openings.sort(),
					round(looks.x),
					round(looks.y)
				]);
			})
			.sort(),
		trees: site.trees.map((tree) => [tree.id, place(tree.at), round(tree.height), place(tree.seenFrom)]),
		strips: site.strips.map((strip) => [
			strip.id,
			round(strip.length),
			strip.centre.map(place),
			strip[left].map(place),
			strip[right].map(place),
			strip.bends.map((bend) => [round(bend.at), round(bend.turn * sign)]),
			strip.junctions.map((junction) => [round(junction.at), junction.with]),
			strip.crossings.map((crossing) => [place(crossing[left]), place(crossing[right])]),
			strip.runOffs.map((runOff) => [round(runOff.at), side(runOff.side)]),
			side(strip.lights),
			side(strip.rail),
			strip.meetsStreet
		]),
		areas: site.areas.map((area) => [area.id, place(area.centre), round(polygonArea(area.polygon))]),
		street: round(site.street),
		findings: site.findings
			.map((finding) =>
				// Of two that overlap, the right-hand one is named: it is the other one in the mirror.
				finding.code === 'site.openings-overlap' ? finding.code : `${finding.code} ${finding.about?.id}`
			)
			.sort()
	};
}
const width = (yard: Yard): number => (yard.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);

function bothSides(yard: Yard, name: string): void {
	const there = shape(makeSite(yard), (p) => p, 1);
	const back = shape(makeSite(mirrored(yard)), ({ x, y }) => ({ x: width(yard) - x, y }), -1);
	expect(back, name).toEqual(there);
}
test.each([...examples, ...outlines].map((start) => [start.id, start] as const))(
	'%s seen in a mirror gives its site in a mirror',
	(id, { yard }) => {
		bothSides(yard, id);
	}
);
test('so do random yards, awkward ones too', () => {
	const many = process.env.LONG ? 2000 : 120;
	for (let seed = 1; seed <= many; seed++) bothSides(randomYard(seed), `seed ${seed}`);
});
