/** What people call the columns of a list of goods, in English. Common practice, no source. */
import type { CableField, Field, LightField } from './fields';

type Named = Exclude<Field, `${LightField | CableField} ${number}`>;
/** In lower case, marks taken away; a heading's own name is always known. */
const said: Record<Named, string> = {
	type: 'item type, line type, goods, category',
	code: 'sku, stock code, stock no, stock number, item no, item number, item code, product code, product no, part no, part number, article no, article number, article, upc, barcode, ean, id',
	name: 'description, item name, product name, product, item, title, item description, product description, desc',
	price:
		'unit price, retail, retail price, sell price, selling price, our price, sale price, shelf price, price each, list price',
	currency: 'cur, money',
	stock:
		'qty, quantity, on hand, qty on hand, quantity on hand, in stock, stock level, stock qty, stock on hand, available, soh, qoh, how many',
	place: 'location, bay, aisle, bin, shelf, shelf place, bin location, aisle bay, aisle and bay, stock location, where',
	'shelf name': 'list, list name, shop',
	light: 'fixture, fixture kind, fixture type, light kind, light type, kind, kind of light, kind of fixture, luminaire',
	count:
		'lights, number of lights, no of lights, fixtures, number of fixtures, fixture count, light count, pieces, pcs, pack, pack size, per pack, units per pack, pack qty, qty per kit, quantity per kit, lights per kit, count per kit, per kit',
	'same as': 'loose code, light code, fixture code, fixture sku, light sku, same fixture as, same light as',
	source: 'lamp, lamp type, light source, bulb, bulb type, led or halogen, technology',
	watts: 'watt, w, wattage, watts each, watts per light, power',
	va: 'voltamps, volt amps, volt amperes, va each, apparent power',
	lumens: 'lm, lumen, lumens each, light output, lumen output, brightness',
	beam: 'beam angle, beam spread, angle, beam degrees',
	volts: 'voltage, v, volt range, voltage range, operating voltage, input voltage, works at',
	colour: 'color, colour temperature, color temperature, colour temp, color temp, cct, kelvin, k',
	'transformer va':
		'transformer, transformer watts, transformer size, transformer rating, transformer w, transformer volt amps, power supply',
	taps: 'tap, tap volts, transformer taps, output volts, output voltage, voltage taps',
	secondaries: 'circuits, secondary circuits, transformer circuits, outputs',
	regulation: 'sag, transformer regulation, voltage regulation',
	cable:
		'cable size, cable gauge, gauge, awg, wire, wire gauge, wire size, cable awg, wire awg, mm2, cable mm2, sq mm, size, cross section, conductor',
	'cable length':
		'length, wire length, roll length, feet, foot, ft, metres, meters, m, cable ft, cable feet, cable m, cable metres, cable meters, wire feet, wire ft',
	'cable pieces': 'rolls, coils, cables, number of cables, number of rolls, cable count',
	connectors: 'connector, connector count, number of connectors, splices, wire connectors, cable connectors'
};

/** Which field a phrase means. A Map: a heading may be called `__proto__`. */
export const fieldBySaying: ReadonlyMap<string, Named> = new Map(
	(Object.keys(said) as Named[]).flatMap((field) =>
		[field, ...said[field].split(', ')].map((phrase) => [phrase, field] as const)
	)
);
