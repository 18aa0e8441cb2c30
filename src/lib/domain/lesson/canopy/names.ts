/** Trees of a garden with round crowns, as in a sentence. */
export const treeNames = ['a maple', 'a crab apple', 'a young oak', 'a cherry', 'a hornbeam', 'a walnut'] as const;
