/** Minutes from noon to a clock time: in the order in which they come in a night. */
const fromNoon = (clock: string): number =>
	(Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5)) + 12 * 60) % (24 * 60);

/** Do the halves of a split night meet, so that there is no pause? */
export const isAllNight = (evening: string, morning: string): boolean => fromNoon(morning) <= fromNoon(evening);
