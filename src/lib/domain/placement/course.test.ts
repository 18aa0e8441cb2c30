import { describe, expect, it } from 'vitest';
import { blankYard, type YardPoint } from '../yard';
import { makeSite, type Strip } from '../site';
import { courseOf, edgeOf, outerSide } from './course';
import published from './placement.published.json';

const feet = 0.3048;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A walk along a line of corners, as a person tells it. */
function stripAlong(line: readonly { x: number; y: number }[], width: number): Strip {
	const site = makeSite({
		...blankYard(),
		walks: [
			{
				id: 'walk',
				name: 'walk',
				width,
				line: line.map(({ x, y }): YardPoint => ({ along: x, out: y })),
				lights: 'both'
			}
		]
	});
	return site.strips[0]!;
}
/** An arc to the right that leaves the origin up the sheet, in `steps` chords. */
const arc = (radius: number, angle: number, steps: number) =>
	Array.from({ length: steps + 1 }, (_, i) => {
		const turned = radians((angle * i) / steps);
		return { x: radius * (1 - Math.cos(turned)), y: -radius * Math.sin(turned) };
	});

describe('a bend as the surveying handbooks have it', () => {
	const { angle, radius: radiusFeet, tangent, length } = published.horizontalCurve;
	const radius = radiusFeet * feet;
	const width = 4;
	const strip = stripAlong(arc(radius, angle, 50), width);
	const course = courseOf(strip);
	const middle = course.centre(course.length / 2);

	it('length of curve L = R Δ', () => {
		expect(course.length / feet).toBeCloseTo(length, 1);
	});
	it('the edges are as long as the arcs at R + w/2 and R − w/2', () => {
		// The arc turns right: its outside is the left edge.
		expect(edgeOf(course, 'left', 0).length).toBeCloseTo((radius + width / 2) * radians(angle), 1);
		expect(edgeOf(course, 'right', 0).length).toBeCloseTo((radius - width / 2) * radians(angle), 1);
		expect(edgeOf(course, 'left', 0.35).length).toBeCloseTo((radius + width / 2 + 0.35) * radians(angle), 1);
	});
	it('tangents of T = R tan(Δ/2) meet at E = R (sec(Δ/2) − 1) outside the middle of the arc, M inside is the chord', () => {
		// The tangent from the start runs straight up the sheet: the point of intersection is T along it.
		const meeting = { x: 0, y: -tangent * feet };
		const half = radians(angle / 2);
		const external = radius * (1 / Math.cos(half) - 1);
		expect(Math.hypot(middle.x - meeting.x, middle.y - meeting.y)).toBeCloseTo(external, 1);
		const end = course.centre(course.length);
		const chord = { x: end.x / 2, y: end.y / 2 };
		expect(Math.hypot(middle.x - chord.x, middle.y - chord.y)).toBeCloseTo(radius * (1 - Math.cos(half)), 2);
	});
	it('the outside of a turn to the right is on the left', () => {
		const tight = courseOf(stripAlong(arc(3, 90, 30), 1.2));
		expect(outerSide(tight, tight.length / 2)).toBe('left');
	});
});

describe('along an edge', () => {
	it('places map to the edge and back', () => {
		const course = courseOf(stripAlong(arc(6, 120, 40), 3));
		for (const side of ['left', 'right'] as const) {
			const edge = edgeOf(course, side, 0.35);
			for (let at = 0; at <= course.length; at += 0.37) expect(edge.abreast(edge.along(at))).toBeCloseTo(at, 6);
		}
	});
	it('on a straight all three are as long', () => {
		const line = [
			{ x: 0, y: 20 },
			{ x: 0, y: 3 }
		];
		const course = courseOf(stripAlong(line, 2));
		for (const side of ['left', 'right'] as const) expect(edgeOf(course, side, 0.3).length).toBeCloseTo(17, 9);
	});
});
