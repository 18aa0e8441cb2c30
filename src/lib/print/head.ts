/** What each sheet carries at its head, so that a loose one finds its way back. */
export interface Head {
	name: string;
	code: string;
	onDate: string;
	/** Version of the program that made it. */
	program: string;
}
