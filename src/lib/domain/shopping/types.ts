export interface ShoppingItem {
	/** Catalogue id or a stable id of ours. */
	id: string;
	/** Id of the catalogue's goods whose price this is, where it is not the line's own: a spare costs what the first one does. */
	priceOf?: string;
	group: 'fixtures' | 'supply' | 'cable' | 'connections' | 'crossing' | 'tools' | 'spares';
	name: string;
	quantity: number;
	/** 'each', 'roll of 30 m', 'bag'… */
	unit: string;
	unitPrice: number;
	cost: number;
	/** What it is for, how the quantity comes about. */
	why: string;
}
/** A piece of cable cut off a roll in one length. */
export interface CableCut {
	/** Id of the run, and of its nodes where the piece begins and ends. */
	run: string;
	from: string;
	to: string;
	/** What it is, as written on it: `run 1, transformer to C1`. */
	what: string;
	/** Metres, slack and rise included. */
	length: number;
}
/** A roll bought or in hand, and what is cut off it in this order. */
export interface CutRoll {
	/** Id of the shopping list's line: catalogue id, or that of the cable in hand. */
	item: string;
	/** As written on it: `roll 2`, `cable in hand`. */
	name: string;
	/** Size of its cable. */
	cable: string;
	/** Metres on it. */
	length: number;
	cuts: CableCut[];
	/** Metres left over, waste not taken off. */
	rest: number;
}
export interface Shopping {
	items: ShoppingItem[];
	/** Which piece of cable comes off which roll. */
	rolls: CutRoll[];
	currency: string;
	total: number;
}
