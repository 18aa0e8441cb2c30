/**
 * The demo shelf's kits. Each is a case that a shop meets: right for a usual yard, a walk too long for its one tap (K-103), short of cable
 * (K-101), full to the last volt-ampere and so over 80 % (K-108), halogen (K-109), without a transformer (K-110), one light too few (K-111).
 */
import type { Contents } from '../../domain/kits/types';
import { awg, demoTransformer, feet, mm2 } from './goods';
import { demoFixture } from './lamps';

export interface DemoKit {
	code: string;
	name: string;
	price: number;
	stock: number;
	contents: Contents;
}
/** Codes and counts of the lights; transformer; size and metres of the cable; connectors. */
function kit(
	code: string,
	[name, price, stock]: [string, number, number],
	lights: Record<string, number>,
	transformer: Contents['transformer'],
	[size, metres]: [Contents['cable'][number]['size'], number],
	connectors: number
): DemoKit {
	const fixtures = Object.entries(lights).map(([product, count]) => ({
		product,
		fixture: demoFixture(product),
		count
	}));
	return {
		code,
		name,
		price,
		stock,
		contents: { fixtures, transformer, cable: [{ size, metres, count: 1 }], connectors }
	};
}
const taps13 = [12, 13];
const taps14 = [12, 13, 14];
const taps15 = [12, 13, 14, 15];

export const demoKits: readonly DemoKit[] = [
	kit(
		'K-101',
		['Short walk kit, 4 path lights', 165, 6],
		{ '0201': 4 },
		demoTransformer(60, [12]),
		[awg(16), feet(40)],
		8
	),
	kit(
		'K-102',
		['Walk kit, 4 path lights', 179, 8],
		{ '0201': 4 },
		demoTransformer(60, taps14),
		[awg(16), feet(100)],
		10
	),
	kit(
		'K-103',
		['Long walk kit, 6 path lights', 279, 5],
		{ '0202': 6 },
		demoTransformer(60, [12]),
		[awg(16), feet(250)],
		14
	),
	kit(
		'K-104',
		['Drive kit, 6 low lights', 249, 4],
		{ '0205': 6 },
		demoTransformer(60, taps13),
		[awg(16), feet(150)],
		14
	),
	kit(
		'K-105',
		['Tree kit, 3 well lights', 219, 4],
		{ '0222': 3 },
		demoTransformer(60, taps14),
		[awg(14), feet(75)],
		10
	),
	kit(
		'K-106',
		['Walk and tree kit, 4 path lights, 3 well lights', 369, 3],
		{ '0201': 4, '0222': 3 },
		demoTransformer(100, taps15),
		[awg(14), feet(125)],
		20
	),
	kit(
		'K-107',
		['Front yard kit, 4 path lights, 2 spots, 3 wall washes', 429, 2],
		{ '0201': 4, '0215': 2, '0231': 3 },
		demoTransformer(100, taps14),
		[awg(14), feet(150)],
		24
	),
	kit(
		'K-108',
		['Grove kit, 8 well lights', 449, 2],
		{ '0223': 8 },
		demoTransformer(50, taps14),
		[awg(12), feet(150)],
		20
	),
	kit(
		'K-109',
		['Halogen walk kit, 4 path lights', 129, 3],
		{ '0204': 4 },
		demoTransformer(60, taps13),
		[awg(12), feet(100)],
		10
	),
	kit('K-110', ['Add-on, 2 path lights', 85, 10], { '0201': 2 }, null, [awg(16), feet(50)], 4),
	kit('K-111', ['Door kit, 2 path lights', 152, 7], { '0201': 2 }, demoTransformer(45, [12]), [awg(16), feet(100)], 6),
	kit(
		'K-112',
		['Walk kit, 4 path lights, 30 m cable', 189, 5],
		{ '0201': 4 },
		demoTransformer(60, taps14),
		[mm2(1.5), 30],
		10
	)
];
