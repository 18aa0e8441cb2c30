/** What a slip says: all of it worked out before, none of it chosen here. */
import type { Needs, OwnedVerdict, Shelf, Solution } from '../../domain/kits/types';
import type { Plan } from '../../domain/plan';
import type { QuickAssumption } from '../../domain/quick/types';

export interface SlipFacts {
	shelf: Shelf;
	/** What is bought. */
	solution: Solution;
	needs: Needs;
	/** What becomes of what the customer has. */
	owned: OwnedVerdict[];
	plan: Plan;
	assumptions: QuickAssumption[];
	/** Address that opens the yard elsewhere, as it goes into the code. */
	link: string;
	/** The same address without the yard, as a person reads it: `duskwright.example/open/`. */
	address: string;
	/** Tells two printouts apart. */
	code: string;
	/** When it was printed, as it is written down. */
	onDate: string;
}
