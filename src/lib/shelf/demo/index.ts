/** A shelf to try things with: 12 kits and 40 loose items of a shop that does not exist. */
import type { Contents, Shelf, ShelfLine } from '../../domain/kits/types';
import { sizeName } from '../../domain/circuit';
import { demoCables, demoConnectors, demoTransformers } from './goods';
import { demoKits } from './kits';
import { demoLamps } from './lamps';

const none: Contents = { fixtures: [], transformer: null, cable: [], connectors: 0 };
const kits = demoKits.map(({ code, name, price, stock, contents }, i): ShelfLine => ({
	code,
	kind: 'kit',
	name,
	cents: price * 100,
	stock,
	place: `Aisle 6, bay ${1 + Math.floor(i / 4)}`,
	contents
}));
const lamps = demoLamps.map(([code, name, kind, lamp, price, stock, bay]): ShelfLine => ({
	code,
	kind: 'fixture',
	name,
	cents: price * 100,
	stock,
	place: `Aisle 7, bay ${bay}`,
	contents: { ...none, fixtures: [{ product: code, fixture: { kind, lamp }, count: 1 }] }
}));
const transformers = demoTransformers.map(([code, name, transformer, price, stock]): ShelfLine => ({
	code,
	kind: 'transformer',
	name,
	cents: price * 100,
	stock,
	place: 'Aisle 8, bay 1',
	contents: { ...none, transformer }
}));
const cables = demoCables.map(([code, size, metres, length, price, stock]): ShelfLine => ({
	code,
	kind: 'cable',
	name: `${sizeName(size)} cable for direct burial, ${length}`,
	cents: price * 100,
	stock,
	place: 'Aisle 8, bay 2',
	contents: { ...none, cable: [{ size, metres, count: 1 }] }
}));
const connectors = demoConnectors.map(([code, connectors, price, stock]): ShelfLine => ({
	code,
	kind: 'connectors',
	name: `Connectors for direct burial, pack of ${connectors}`,
	cents: price * 100,
	stock,
	place: 'Aisle 8, bay 3',
	contents: { ...none, connectors }
}));

export const demoShelf: Shelf = {
	name: 'Fennel Lane Garden Shop',
	currency: '$',
	lines: [...kits, ...lamps, ...transformers, ...cables, ...connectors]
};
