/** Slow, plain ways to the same figures, and small made-up tables. Serve tests only. */
import { candelaToward, sourceFrame } from './frame';
import type { Vector } from './illuminance';
import type { CandelaTable, Symmetry } from './table';
import type { Photometry } from './types';

/**
 * Lumens by summing candela over small pieces of the sphere, in the frame of the yard and not in that of the source: equal steps of
 * height and of bearing make pieces of equal solid angle (Archimedes). Knows nothing of laws, tables or azimuths.
 */
export function sphereLumens(photometry: Photometry, axis: Vector, rows = 600, columns = 1200): number {
	const frame = sourceFrame(axis);
	let sum = 0;
	for (let i = 0; i < rows; i++) {
		const z = -1 + (2 * (i + 0.5)) / rows;
		const r = Math.sqrt(1 - z * z);
		for (let j = 0; j < columns; j++) {
			const bearing = (2 * Math.PI * (j + 0.5)) / columns;
			sum += candelaToward(photometry, frame, { x: r * Math.cos(bearing), y: r * Math.sin(bearing), z });
		}
	}
	return (sum * 4 * Math.PI) / (rows * columns);
}

/** Repeatable numbers from 0 to below 1 (mulberry32). */
export function seeded(seed: number): () => number {
	let state = seed;
	return () => {
		state = (state + 0x6d2b79f5) | 0;
		let t = Math.imul(state ^ (state >>> 15), 1 | state);
		t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
		return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
	};
}

export const steps = (from: number, to: number, step: number): number[] =>
	Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** A table of candela given by vertical angle and C, degrees. */
export function tableOf(
	law: (gamma: number, c: number) => number,
	vertical: number[],
	horizontal: number[] = [0],
	symmetry: Symmetry = 'rotational'
): CandelaTable {
	const candela = Float64Array.from(horizontal.flatMap((c) => vertical.map((gamma) => law(gamma, c))));
	return { vertical, horizontal, symmetry, candela };
}
