/** The lights of the demo shelf, by stock code: invented, with figures that are usual in the trade (common practice, no source). */
import type { FixtureKind, ShelfFixture, ShelfLamp } from '../../domain/kits/types';

type Row = [
	code: string,
	name: string,
	kind: FixtureKind,
	lamp: ShelfLamp,
	price: number,
	stock: number | null,
	bay: number
];

const led = (watts: number, lumens: number, beam: number | null, colour = 2700): ShelfLamp => ({
	source: 'led',
	watts,
	// Power factor 0.8: rule supply.load.
	voltAmps: Math.round((watts / 0.8) * 100) / 100,
	lumens,
	beam,
	minVolts: 9,
	maxVolts: 15,
	colour
});
const halogen = (watts: number, lumens: number, beam: number | null): ShelfLamp => ({
	source: 'halogen',
	watts,
	voltAmps: watts,
	lumens,
	beam,
	minVolts: 10.8,
	maxVolts: 12,
	colour: 2800
});

export const demoLamps: readonly Row[] = [
	['0201', 'Path light, LED 2.5 W', 'path', led(2.5, 150, null), 34, 24, 1],
	['0202', 'Path light, LED 3.5 W', 'path', led(3.5, 220, null), 41, 16, 1],
	['0203', 'Path light, LED 2.5 W, 3000 K', 'path', led(2.5, 155, null, 3000), 36, 8, 1],
	['0204', 'Path light, halogen 10 W', 'path', halogen(10, 130, null), 24, 12, 1],
	['0205', 'Low light for a drive, LED 2 W', 'marker', led(2, 110, null), 32, 18, 1],
	['0206', 'Step light, LED 1.5 W', 'step', led(1.5, 70, null), 29, 20, 1],
	['0211', 'Spot on a stake, LED 2 W, 24°', 'spot', led(2, 140, 24), 35, 10, 2],
	['0212', 'Spot on a stake, LED 4 W, 15°', 'spot', led(4, 300, 15), 39, 6, 2],
	['0213', 'Spot on a stake, LED 4 W, 24°', 'spot', led(4, 300, 24), 39, 12, 2],
	['0214', 'Spot on a stake, LED 4 W, 36°', 'spot', led(4, 300, 36), 39, 14, 2],
	['0215', 'Spot on a stake, LED 4 W, 60°', 'spot', led(4, 300, 60), 39, 14, 2],
	['0216', 'Spot on a stake, LED 7 W, 24°', 'spot', led(7, 560, 24), 49, 6, 2],
	['0217', 'Spot on a stake, LED 7 W, 36°', 'spot', led(7, 560, 36), 49, 8, 2],
	['0218', 'Spot on a stake, LED 7 W, 60°', 'spot', led(7, 560, 60), 49, 8, 2],
	['0219', 'Spot on a stake, halogen 20 W, 36°', 'spot', halogen(20, 300, 36), 27, 9, 2],
	['0221', 'Well light, LED 4 W, 36°', 'well', led(4, 300, 36), 54, 8, 3],
	['0222', 'Well light, LED 4 W, 60°', 'well', led(4, 300, 60), 54, 12, 3],
	['0223', 'Well light, LED 5 W, 60°', 'well', led(5, 340, 60), 57, 16, 3],
	['0224', 'Well light, LED 7 W, 60°', 'well', led(7, 560, 60), 66, 6, 3],
	['0225', 'Well light, halogen 20 W, 60°', 'well', halogen(20, 300, 60), 41, 6, 3],
	['0231', 'Wall wash, LED 1 W', 'wash', led(1, 70, 60), 33, 12, 3],
	['0232', 'Wall wash, LED 2 W', 'wash', led(2, 130, 60), 35, 12, 3],
	['0233', 'Wall wash, LED 5 W', 'wash', led(5, 400, 60), 42, 8, 3],
	['0234', 'Wall wash, LED 9 W', 'wash', led(9, 760, 60), 56, 4, 3]
];
/** The same light wherever the demo shelf sells it. */
export function demoFixture(code: string): ShelfFixture {
	const row = demoLamps.find(([own]) => own === code);
	if (!row) throw new Error(`The demo shelf has no light ${code}.`);
	return { kind: row[2], lamp: row[3] };
}
