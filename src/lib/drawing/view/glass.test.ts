import { assert, integer, property, record } from 'fast-check';
import { expect, test } from 'vitest';
import { glassAt, glassSize } from './glass';

const size = record({ width: integer({ min: 300, max: 1400 }), height: integer({ min: 260, max: 1000 }) });

test('the glass is at least 112 px, within the board, and never under the finger', () => {
	expect(glassSize).toBeGreaterThanOrEqual(112);
	assert(
		property(size, integer({ min: 0, max: 1000 }), integer({ min: 0, max: 1000 }), ({ width, height }, a, b) => {
			const finger = { x: (a / 1000) * width, y: (b / 1000) * height };
			const at = glassAt(finger, width, height);
			const half = glassSize / 2;
			expect(at.x - half).toBeGreaterThanOrEqual(-1e-9);
			expect(at.x + half).toBeLessThanOrEqual(width + 1e-9);
			expect(at.y - half).toBeGreaterThanOrEqual(-1e-9);
			expect(at.y + half).toBeLessThanOrEqual(height + 1e-9);
			// A fingertip is about 15 mm across, 28 px each way (common practice, no source).
			expect(Math.hypot(at.x - finger.x, at.y - finger.y)).toBeGreaterThanOrEqual(half + 28);
		}),
		{ numRuns: 2000, seed: 3 }
	);
});

test('it stands above the finger where there is room', () => {
	const at = glassAt({ x: 200, y: 300 }, 400, 400);
	expect(at.x).toBe(200);
	expect(at.y).toBeLessThan(300 - glassSize / 2);
});
