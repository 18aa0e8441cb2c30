/** Made-up lamps of the person's own. Serve tests only. */
import type { CandelaTable } from '../../photometry';
import type { OwnLamp } from '../../yard';

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const steps = (from: number, to: number, step: number): number[] =>
	Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

/** A table of candela by vertical angle and C, degrees. */
export function tableOf(
	law: (gamma: number, c: number) => number,
	vertical: number[],
	horizontal: number[] = [0],
	symmetry: CandelaTable['symmetry'] = 'rotational'
): CandelaTable {
	const candela = Float64Array.from(horizontal.flatMap((c) => vertical.map((gamma) => law(gamma, c))));
	return { vertical, horizontal, symmetry, candela };
}
export const lampOf = (
	{ vertical, horizontal, symmetry, candela }: CandelaTable,
	models: string[],
	more: Partial<OwnLamp> = {}
): OwnLamp => ({
	id: 'own',
	name: 'Test lamp',
	for: models,
	vertical: [...vertical],
	horizontal: [...horizontal],
	symmetry,
	candela: [...candela],
	...more
});
/** A flat disc that is equally bright from wherever it is seen (Lambert): `centre` × cos γ candela. */
export const disc = (centre: number): CandelaTable =>
	tableOf((gamma) => centre * Math.max(0, Math.cos(radians(gamma))), steps(0, 90, 1));
