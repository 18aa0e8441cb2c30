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
export interface Shopping {
	items: ShoppingItem[];
	currency: string;
	total: number;
}
