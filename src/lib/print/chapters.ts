/** The packet's chapters in their order. Their numbers stand in the contents, at their head and at the foot of each of their pages. */
export const chapters = [
	{ id: 'known', title: 'Good to know' },
	{ id: 'plan', title: 'Plan to scale' },
	{ id: 'schedule', title: 'Fixture schedule' },
	{ id: 'stake-out', title: 'Staking out' },
	{ id: 'routes', title: 'Where the cable goes' },
	{ id: 'cable', title: 'Cable schedule' },
	{ id: 'shopping', title: 'Shopping list' },
	{ id: 'install', title: 'Order of work' },
	{ id: 'first-night', title: 'First night' },
	{ id: 'after-dark', title: 'After dark' },
	{ id: 'hours', title: 'Hours and sensor' },
	{ id: 'upkeep', title: 'Upkeep' }
] as const;

export type ChapterId = (typeof chapters)[number]['id'];
export const numberOf = (id: ChapterId): number => chapters.findIndex((chapter) => chapter.id === id) + 1;
