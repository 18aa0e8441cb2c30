/**
 * Generic lamps, fixtures and materials, invented for planning: figures typical of what is sold, no maker's data.
 * Prices are in US dollars and are a starting point the person may change (`yard.power.prices`, by id).
 */
export interface Lamp {
	kind: 'led' | 'halogen';
	watts: number;
	/** Apparent power drawn on the low-voltage side. */
	voltAmps: number;
	lumens: number;
	/** Full angle at half the centre intensity (CIE S 017:2020, 17-27-077), degrees. */
	beamAngle: number;
	colourTemperature: number;
	ratedVolts: number;
	minVolts: number;
	maxVolts: number;
	/** Of a lamp of the person's own: what it throws, from its photometric file. */
	measured?: MeasuredLight;
}
/** Candela by direction, type C: degrees off the axis, planes round it, candela plane after plane. */
export interface MeasuredLight {
	name: string;
	vertical: readonly number[];
	horizontal: readonly number[];
	symmetry: 'rotational' | 'quadrant' | 'bilateral' | 'bilateral-90' | 'none';
	candela: readonly number[];
}
export interface FixtureModel {
	id: string;
	name: string;
	/** spot: aimed; wash: aimed and wide; path: shaded head, light downwards; step: set in or beside a riser; marker: low path head. */
	body: 'spot' | 'wash' | 'path' | 'step' | 'marker';
	mount: 'stake' | 'flush' | 'surface';
	strength: 'soft' | 'bright';
	lamp: Lamp;
	/** Diameter of the head seen from above, metres. */
	headDiameter: number;
	/** Of the lamp above the ground, metres. */
	lampHeight: number;
	price: number;
}
export interface TransformerModel {
	id: string;
	name: string;
	voltAmps: number;
	taps: number[];
	/** Secondary circuits, each with its own 25 A limit. */
	secondaries: number;
	/** Fraction by which terminal volts sag at rated load (from memory: 3 to 8 %). */
	regulation: number;
	/** Watts drawn with nothing connected, and efficiency at load (from memory). */
	idleWatts: number;
	efficiency: number;
	price: number;
}
export interface CableProduct {
	id: string;
	name: string;
	system: 'awg' | 'mm2';
	size: number;
	/** Metres on one roll. */
	length: number;
	price: number;
}
export interface Material {
	id: string;
	name: string;
	unit: string;
	price: number;
}

/** Volts within which an LED lamp for 12 V gives its light: often marked 9 to 15 V (from memory). */
const led = (watts: number, lumens: number, beamAngle: number, colourTemperature: number): Lamp => ({
	kind: 'led',
	watts,
	// Power factor 0.8: rule supply.load, from memory.
	voltAmps: Math.round((watts / 0.8) * 100) / 100,
	lumens,
	beamAngle,
	colourTemperature,
	ratedVolts: 12,
	minVolts: 9,
	maxVolts: 15
});
/** Halogen keeps to 10.8 to 12.0 V: rule cable.volts. */
const halogen = (watts: number, lumens: number, beamAngle: number): Lamp => ({
	kind: 'halogen',
	watts,
	voltAmps: watts,
	lumens,
	beamAngle,
	colourTemperature: 2800,
	ratedVolts: 12,
	minVolts: 10.8,
	maxVolts: 12
});

/** Beams kept in stock, narrow to wide, degrees. */
export const stockBeams = [15, 24, 36, 60] as const;

/** Watts and lumens of the spots. A faint one is for narrow places near by: a gable over a softly lit wall. */
const spotLed = { faint: [2, 140], soft: [4, 300], bright: [7, 560] } as const;
const spotHalogen = { faint: [10, 140], soft: [20, 300], bright: [35, 600] } as const;
/** Beams in which the faint ones come, degrees. */
const faintBeams = [15, 24, 36] as const;

const spot = (
	mount: 'stake' | 'flush',
	power: 'faint' | 'soft' | 'bright',
	kind: 'led' | 'halogen',
	beam: number,
	kelvin: 2700 | 3000
): FixtureModel => {
	const bright = power === 'bright';
	const lamp =
		kind === 'led'
			? led(spotLed[power][0], spotLed[power][1], beam, kelvin)
			: halogen(spotHalogen[power][0], spotHalogen[power][1], beam);
	return {
		id: `${mount === 'stake' ? 'spot' : 'well'}-${kind}-${lamp.watts}w-${beam}-${kind === 'led' ? kelvin : 'warm'}`,
		name: `${mount === 'stake' ? 'Spot on a stake' : 'Well light'}, ${kind === 'led' ? 'LED' : 'halogen'} ${lamp.watts} W, ${beam}° beam`,
		body: 'spot',
		mount,
		strength: bright ? 'bright' : 'soft',
		lamp,
		headDiameter: mount === 'stake' ? 0.08 : 0.12,
		lampHeight: mount === 'stake' ? 0.15 : 0,
		price: (mount === 'stake' ? 38 : 55) + (bright ? 12 : power === 'faint' ? -2 : 0) - (kind === 'halogen' ? 12 : 0)
	};
};
const simple = (
	body: FixtureModel['body'],
	mount: FixtureModel['mount'],
	strength: 'soft' | 'bright',
	lamp: Lamp,
	name: string,
	headDiameter: number,
	lampHeight: number,
	price: number
): FixtureModel => ({
	id: `${body}-${lamp.kind}-${lamp.watts}w-${lamp.kind === 'led' ? lamp.colourTemperature : 'warm'}`,
	name: `${name}, ${lamp.kind === 'led' ? 'LED' : 'halogen'} ${lamp.watts} W`,
	body,
	mount,
	strength,
	lamp,
	headDiameter,
	lampHeight,
	price
});

const kelvins = [2700, 3000] as const;
const strengths = ['soft', 'bright'] as const;
export const fixtureModels: FixtureModel[] = [
	...(['stake', 'flush'] as const).flatMap((mount) =>
		strengths.flatMap((strength) =>
			stockBeams.flatMap((beam) => [
				...kelvins.map((kelvin) => spot(mount, strength, 'led', beam, kelvin)),
				spot(mount, strength, 'halogen', beam, 2700)
			])
		)
	),
	// After the others: whoever asks for a soft spot has one of those.
	...faintBeams.flatMap((beam) => [
		...kelvins.map((kelvin) => spot('stake', 'faint', 'led', beam, kelvin)),
		spot('stake', 'faint', 'halogen', beam, 2700)
	]),
	...kelvins.flatMap((kelvin) => [
		simple('wash', 'stake', 'soft', led(1, 70, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 34),
		simple('wash', 'stake', 'soft', led(2, 130, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 36),
		simple('wash', 'stake', 'soft', led(3, 220, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 38),
		simple('wash', 'stake', 'soft', led(5, 400, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 42),
		simple('wash', 'stake', 'bright', led(9, 760, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 56),
		simple('wash', 'stake', 'bright', led(12, 1050, 60, kelvin), 'Wall wash on a stake', 0.1, 0.15, 64),
		simple('path', 'stake', 'soft', led(2.5, 150, 120, kelvin), 'Path light', 0.2, 0.5, 36),
		simple('path', 'stake', 'bright', led(3.5, 220, 120, kelvin), 'Path light', 0.2, 0.5, 42),
		simple('marker', 'stake', 'soft', led(2, 110, 120, kelvin), 'Low path light for a drive', 0.15, 0.4, 34),
		simple('step', 'surface', 'soft', led(1.5, 70, 100, kelvin), 'Step light', 0.12, 0.15, 30)
	]),
	simple('wash', 'stake', 'soft', halogen(10, 140, 60), 'Wall wash on a stake', 0.1, 0.15, 28),
	simple('wash', 'stake', 'soft', halogen(20, 300, 60), 'Wall wash on a stake', 0.1, 0.15, 30),
	simple('wash', 'stake', 'bright', halogen(35, 600, 60), 'Wall wash on a stake', 0.1, 0.15, 36),
	simple('path', 'stake', 'soft', halogen(10, 130, 120), 'Path light', 0.2, 0.5, 26),
	simple('path', 'stake', 'bright', halogen(15, 210, 120), 'Path light', 0.2, 0.5, 30),
	simple('marker', 'stake', 'soft', halogen(8, 100, 120), 'Low path light for a drive', 0.15, 0.4, 24),
	simple('step', 'surface', 'soft', halogen(5, 60, 100), 'Step light', 0.12, 0.15, 22)
];

/** Usual sizes. Above 300 VA the secondary is split so that none passes 25 A (rule supply.secondary). */
export const transformers: TransformerModel[] = (
	[
		[60, 1, 65],
		[100, 1, 85],
		[150, 1, 110],
		[200, 1, 135],
		[300, 1, 170],
		[600, 2, 290],
		[900, 3, 420],
		[1200, 4, 560]
	] as const
).map(([voltAmps, secondaries, price]) => ({
	id: `transformer-${voltAmps}`,
	name: `Transformer, ${voltAmps} VA, taps 12 to 15 V`,
	voltAmps,
	taps: [12, 13, 14, 15],
	secondaries,
	regulation: 0.05,
	idleWatts: Math.round((2 + voltAmps * 0.012) * 10) / 10,
	efficiency: 0.9,
	price
}));

const foot = 0.3048;
export const cables: CableProduct[] = [
	...(
		[
			[16, 0.32],
			[14, 0.46],
			[12, 0.72],
			[10, 1.15],
			[8, 1.9]
		] as const
	).flatMap(([size, perFoot]) =>
		[50, 100, 250, 500].map((feet) => ({
			id: `cable-awg-${size}-${feet}ft`,
			name: `${size} AWG two-conductor cable for direct burial, ${feet} ft`,
			system: 'awg' as const,
			size,
			length: feet * foot,
			price: Math.round(perFoot * feet * (feet >= 250 ? 0.9 : 1))
		}))
	),
	...(
		[
			[1.5, 1.4],
			[2.5, 2.1],
			[4, 3.3],
			[6, 4.9],
			[10, 8.2]
		] as const
	).flatMap(([size, perMetre]) =>
		[25, 50, 100].map((metres) => ({
			id: `cable-mm2-${String(size).replace('.', '-')}-${metres}m`,
			name: `${size} mm² two-conductor cable for direct burial, ${metres} m`,
			system: 'mm2' as const,
			size,
			length: metres,
			price: Math.round(perMetre * metres * (metres >= 100 ? 0.9 : 1))
		}))
	)
];

export const materials: Material[] = [
	{ id: 'lamp-halogen', name: 'Spare halogen lamp, 12 V', unit: 'each', price: 5 },
	{ id: 'connector', name: 'Cable connector rated for direct burial', unit: 'each', price: 2.5 },
	{ id: 'end-cap', name: 'Sealing cap for a cut cable end', unit: 'each', price: 1 },
	{ id: 'photocell', name: 'Plug-in photocell', unit: 'each', price: 18 },
	{ id: 'timer', name: 'Timer for the transformer', unit: 'each', price: 20 },
	{ id: 'wall-anchor', name: 'Wall anchor and screw for outdoors', unit: 'each', price: 0.8 },
	{ id: 'post', name: 'Rot-proof post, 100 mm (4 in) square', unit: 'each', price: 22 },
	{ id: 'sleeve', name: 'Conduit sleeve, 20 mm (3/4 in), 3 m (10 ft) length', unit: 'each', price: 9 },
	{ id: 'joint-sand', name: 'Bag of sand, 20 kg (44 lb)', unit: 'bag', price: 6 },
	{ id: 'gravel', name: 'Bag of drainage gravel, 20 kg (44 lb)', unit: 'bag', price: 7 },
	{ id: 'cable-pin', name: 'Cable pin for lawn', unit: 'each', price: 0.25 },
	{ id: 'marker-tape', name: 'Warning tape for the trench, 30 m (100 ft)', unit: 'roll', price: 9 },
	{ id: 'in-use-cover', name: 'In-use cover for the receptacle', unit: 'each', price: 15 }
];
