import { run } from './search-run';
import type { Found, Problem, Purchase, SearchWish } from './search-types';

/**
 * What to buy of a shelf at the least cost, so that its setup passes and all is covered: of each product the lights of all needs it serves,
 * of each size the metres of all its runs (whole millimetres), the setup's transformer, the connectors.
 *
 * Gives the cheapest, then the cheapest of each other choice of kits (which kits, and how many of each), `wish.most` at the most, in this order:
 * 1. lower cost; 2. fewer different lines; 3. fewer pieces; 4. more of the first offer, in the shelf's order, of which they buy different
 * counts; 5. the setup with the lower transformer, then sizes run by run, then products need by need. By the same order the cheapest of a
 * choice of kits is the first of all its purchases. Left out is a choice of kits whose cheapest purchase would do with one kit less, all else as
 * it is: that is another choice with an idle kit. What `wish.atLeast` asks for is bought, used or not, and never counts as idle.
 *
 * Exact (see `searchFully` for when it is not), deterministic, and the same for any order of needs. Empty where nothing passes, where a
 * demand cannot be served, or where more of an offer is wished for than there is. `passes` and `hopeless` are asked once for each setup or part of one and problem;
 * they must not change their answers.
 */
export const search = (problem: Problem, wish: SearchWish): Purchase[] => searchFully(problem, wish).purchases;

/**
 * As `search`, and says what cannot be served and whether the answer is proven.
 *
 * Best-first branch and bound (Hart, Nilsson & Raphael 1968): kits are added one by one, each choice of them once; with the kits fixed the
 * rest falls apart into bounded covering knapsacks, one for each resource, and a setup is put together demand by demand. A branch
 * waits at a bound that no purchase in it goes below: for kits still to be added the dual prices of a linear program, for a setup begun the exact
 * knapsacks of what is chosen and the least of each demand left. The first purchases that come out and pass are therefore the cheapest.
 * The proof holds for any oracle until `limits.steps` branches have been looked at. Then the search goes
 * on in haste, deepest first, and `isProven` is false; a wish may set limits of its own. What is known already to be closed is no step. Seeded shops of 60 kits and 200 items with eight needs take a few
 * thousand, provided that `hopeless` tells of cable that is too thin; told only of loads they may take more than the limit.
 */
export const searchFully = (problem: Problem, wish: SearchWish): Found => run(problem, wish);
