/** The person's own hand in the plan: lights moved, turned, swapped, taken away, pinned and added. */
export { finish, placeByHand, type HandOutcome } from './place';
export { handFindings } from './findings';
