/** Loose transformers, cable and connectors of the demo shelf: invented, usual in the trade (common practice, no source). */
import type { CableSize } from '../../domain/circuit';
import type { ShelfTransformer } from '../../domain/kits/types';
import { rules } from '../../domain/shared/rules';
import { metresPerFoot } from '../../domain/shared/units';

/** Sag at full load as the rule supply.regulation takes it. */
export const demoTransformer = (voltAmps: number, taps: number[], secondaries = 1): ShelfTransformer => ({
	voltAmps,
	taps,
	secondaries,
	regulation: rules['supply.regulation'].figures.taken
});
export const awg = (size: number): CableSize => ({ system: 'awg', size });
export const mm2 = (size: number): CableSize => ({ system: 'mm2', size });
/** Metres, free of what feet leave in the sixteenth decimal. */
export const feet = (length: number): number => Number((length * metresPerFoot).toFixed(7));

export const demoTransformers: readonly [string, string, ShelfTransformer, number, number][] = [
	['0301', 'Transformer, 60 VA, 12 V', demoTransformer(60, [12]), 58, 9],
	['0302', 'Transformer, 100 VA, 12 to 14 V', demoTransformer(100, [12, 13, 14]), 86, 7],
	['0303', 'Transformer, 150 VA, 12 to 15 V', demoTransformer(150, [12, 13, 14, 15]), 112, 5],
	['0304', 'Transformer, 300 VA, 12 to 15 V', demoTransformer(300, [12, 13, 14, 15]), 172, 3],
	['0305', 'Transformer, 600 VA, 12 to 15 V, two circuits', demoTransformer(600, [12, 13, 14, 15], 2), 295, 1]
];
export const demoCables: readonly [string, CableSize, number, string, number, number | null][] = [
	['0401', awg(16), feet(50), '50 ft', 18, 20],
	['0402', awg(16), feet(100), '100 ft', 32, 14],
	['0403', awg(14), feet(100), '100 ft', 46, 12],
	['0404', awg(12), feet(100), '100 ft', 72, 9],
	['0405', awg(12), feet(250), '250 ft', 162, 4],
	['0406', awg(10), feet(100), '100 ft', 115, 3],
	['0411', mm2(1.5), 25, '25 m', 35, 10],
	['0412', mm2(2.5), 25, '25 m', 53, 8],
	['0413', mm2(2.5), 50, '50 m', 102, 4]
];
export const demoConnectors: readonly [string, number, number, number | null][] = [
	['0501', 2, 6, null],
	['0502', 10, 24, 30]
];
