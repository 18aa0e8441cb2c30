import type { Symmetry } from '../table';
import { Refusal } from './reading';

export interface Planes {
	/** C of the planes in the order in which the file gives their intensities. */
	stored: number[];
	/** Where each of them goes in the table. */
	place: number[];
	horizontal: number[];
	symmetry: Symmetry;
}

/**
 * Which of the listed C-planes carry intensities, by the symmetry indicator: 0 all · 1 the first · 2 C0 to C180 · 3 C270 by C0 to C90 ·
 * 4 C0 to C90. The planes of 3 are kept as their mirror images, C90 to C270. Angles and their lines are those of the file.
 */
export function planesOf(isym: number, angles: readonly number[], lines: readonly number[], notes: string[]): Planes {
	const count = angles.length;
	if (angles[0] !== 0) throw new Refusal(lines[0]!, 'C angles', `they begin at ${angles[0]}° instead of 0°.`);
	if (isym === 1 || count === 1) {
		if (isym !== 1) notes.push('It has a single C-plane, so its light is taken as the same all round.');
		return { stored: [0], place: [0], horizontal: [0], symmetry: 'rotational' };
	}
	const expect = (index: number, angle: number): void => {
		if (angles[index] !== angle)
			throw new Refusal(
				lines[Math.min(index, count - 1)]!,
				'C angles',
				`symmetry indicator ${isym} wants C${angle} as plane ${index + 1} of ${count}; it is ${angles[index] ?? 'missing'}${angles[index] === undefined ? '' : '°'}.`
			);
	};
	if (isym === 0) {
		if (angles[count - 1]! <= 180)
			throw new Refusal(
				lines[count - 1]!,
				'C angles',
				`without symmetry they have to go round; they end at ${angles[count - 1]}°.`
			);
		return straight([...angles], 'none');
	}
	if (count % (isym === 2 ? 2 : 4) !== 0)
		throw new Refusal(
			4,
			'number of C-planes',
			`symmetry indicator ${isym} wants it to divide by ${isym === 2 ? 2 : 4}; it is ${count}.`
		);
	if (isym === 4) {
		expect(count / 4, 90);
		return straight(angles.slice(0, count / 4 + 1), 'quadrant');
	}
	expect(count / 2, 180);
	if (isym === 2) return straight(angles.slice(0, count / 2 + 1), 'bilateral');
	expect(count / 4, 90);
	expect((3 * count) / 4, 270);
	const stored = [...angles.slice((3 * count) / 4), ...angles.slice(0, count / 4 + 1)];
	const horizontal = stored.map((angle) => (540 - angle) % 360).reverse();
	return { stored, place: stored.map((_, i) => stored.length - 1 - i), horizontal, symmetry: 'bilateral-90' };
}

const straight = (angles: number[], symmetry: Symmetry): Planes => ({
	stored: angles,
	place: angles.map((_, i) => i),
	horizontal: angles,
	symmetry
});
